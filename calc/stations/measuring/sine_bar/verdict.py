"""Do the blocks set the angle wanted, and which do?"""

import math

from calc.core.result import Judged, Table, say
from calc.core.working import Number, constant
from calc.formulas import trigonometry as trig
from calc.formulas.gauge_blocks import INCH, METRIC
from calc.formulas.trigonometry import degrees_minutes_seconds
from calc.stations.measuring.sine_bar.asked import ARC_SECONDS, In


def verdict_on_blocks(i: In, height: Number, angle_set: Number, off: Number) -> Judged:
    """Of the blocks that are given."""
    if _is_off(i, off):
        return (
            "fail",
            say("Blocks set {a}, not the angle wanted", a=degrees_minutes_seconds(angle_set)),
            say(
                "They are {d} off. For {a} put {h} under the roll.",
                d=off,
                a=degrees_minutes_seconds(i.angle),
                h=height,
            ),
        )
    return (
        "pass",
        say("Blocks set {a}", a=degrees_minutes_seconds(angle_set)),
        say("That is {d} off the angle wanted. Clamp, and prove it with an indicator along the work.", d=off),
    )


def verdict_on_whole_micrometres(i: In, stack: Number, off: Number, per_second: Number) -> Judged:
    """Of the nearest height in whole micrometres."""
    if _is_off(i, off):
        return (
            "fail",
            say("Whole micrometres leave it {d} off", d=off),
            "Take a longer sine bar, or allow more.",
        )
    if float(i.angle) > math.pi / 4:
        return (
            "attention",
            say("Put {h} under the roll: steep", h=stack),
            say(
                "A second of arc is only {s} of blocks here. Set {c} against the other face if the work"
                " allows it.",
                s=per_second,
                c=degrees_minutes_seconds(math.pi / 2 - float(i.angle)),
            ),
        )
    return (
        "pass",
        say("Put {h} under the roll", h=stack),
        "Wring the blocks clean and dry. Clamp, and prove the angle with an indicator along the work.",
    )


def _is_off(i: In, off: Number) -> bool:
    return abs(float(off)) > float(i.allowed)


def blocks_to_wring(length: float, angle: Number, height: float) -> Table | None:
    """The height out of two common sets of blocks, and how far off the angle is, if either makes it."""
    rows = []
    for blocks in (METRIC, INCH):
        picked = blocks.pick(height)
        if picked is None:
            continue
        total = blocks.nearest(height)
        left = constant("", "", ARC_SECONDS, trig.sine_angle(length, total * blocks.step) - float(angle))
        rows.append(
            (
                blocks.name,
                " + ".join(map(blocks.write, picked)),
                f"{blocks.write(total)} {blocks.unit.symbol}",
                left,
            )
        )
    if not rows:
        return None
    return Table("Blocks to wring together", ("Set", "Blocks", "Height", "Angle off by"), tuple(rows))
