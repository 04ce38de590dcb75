"""Blocks that set an angle under a sine bar, the angle that given blocks set, and how far a micrometre turns it."""

import math

from calc.core.drawing import Area, Dimension, Drawing, Label, Line, arc, box
from calc.core.kinds import ANGLE, LENGTH
from calc.core.reading import quantity
from calc.core.result import Table, impossible, note, say
from calc.core.working import constant, form
from calc.declare.calculator import Answer, Inputs, Limit, Number, Output, Outputs, answer, calculator, given
from calc.formulas import trigonometry as trig
from calc.formulas.gauge_blocks import INCH, METRIC
from calc.reference import sources
from calc.stations.shared.forms import COARSE, FINE, FINE_DEGREES

ARC_SECONDS = form(ANGLE, 1, "″")
STEEPEST = quantity("60°", ANGLE)
dms = trig.degrees_minutes_seconds


class Out(Outputs):
    height = Output("Blocks for the angle", "h", FINE, main=True)
    angle_set = Output("Angle that the blocks set", "α_set", FINE_DEGREES, main=True)
    off = Output("Off the angle wanted", "Δα", ARC_SECONDS)
    per_second = Output("Height for one second of arc", "h_1", form(LENGTH, 3, "µm", "µin"))


class In(Inputs):
    length: Number = given(
        "Sine bar, roll to roll",
        "L",
        COARSE,
        hard="20 to 1000 mm",
        usual="100 to 300 mm",
        hint="As engraved on the bar.",
        example="100 mm",
    )
    angle: Number = given(
        "Angle wanted",
        "α",
        FINE_DEGREES,
        hard=(
            "0 to 60°",
            "steeper than that a micrometre of blocks turns it too far: set what is left to 90° instead",
        ),
        usual="0 to 45°",
        hint="In degrees, or in degrees, minutes and seconds: 5° 30' 15\".",
        example="5.5°",
    )
    blocks: Number | None = given(
        "Blocks under the roll", "h_b", FINE, hard="0 to 900 mm", hint="To learn which angle they set."
    )
    allowed: Number = given(
        "Angle may be off by",
        "Δ",
        ARC_SECONDS,
        hard="0.1 to 3600″",
        fold=True,
        assumed=("10″", "common practice, no source"),
        hint="A good bar on good blocks holds 5 to 10 seconds; common practice, no source.",
    )


@calculator(
    "sine-bar",
    "Sine bar",
    In,
    Out,
    purpose="Which blocks set this angle, and which angle do these blocks set?",
    finds=("sine bar", "sine plate", "gauge block stack", "setting an angle", "angle blocks"),
    sources=(sources.TRIANGLE, sources.PRACTICE),
)
def sine_bar(i: In) -> Answer:
    """Right triangle with the bar as its long side: h = L·sin α. The plate is taken as flat, the rolls as alike.

    Without blocks given, those that whole micrometres can make are judged.
    """
    height = Out.height(trig.sine_height(i.length, i.angle), sources.TRIANGLE)
    most = constant("", "", FINE, trig.sine_height(float(i.length), STEEPEST))
    if i.blocks is not None and float(i.blocks) > float(most):
        raise impossible(
            "blocks",
            "are {b}, which stands a bar of {L} steeper than 60°; give {most} at most",
            b=i.blocks,
            L=i.length,
            most=most,
        )
    stack = (
        constant("h_b", "Blocks, in whole micrometres", FINE, round(float(height), 6))
        if i.blocks is None
        else i.blocks
    )
    angle_set = Out.angle_set(trig.sine_angle(i.length, stack), sources.TRIANGLE)
    off = Out.off(angle_set - i.angle)
    per_second = Out.per_second(
        trig.sine_sensitivity(i.length, i.angle)
        * constant("1″", "A second of arc", ARC_SECONDS, quantity("1″", ANGLE)),
        sources.TRIANGLE,
    )

    if abs(float(off)) > float(i.allowed):
        verdict = (
            (
                "fail",
                say("Blocks set {a}, not the angle wanted", a=dms(angle_set)),
                say("They are {d} off. For {a} put {h} under the roll.", d=off, a=dms(i.angle), h=height),
            )
            if i.blocks is not None
            else (
                "fail",
                say("Whole micrometres leave it {d} off", d=off),
                "Take a longer sine bar, or allow more.",
            )
        )
    elif i.blocks is not None:
        verdict = (
            "pass",
            say("Blocks set {a}", a=dms(angle_set)),
            say(
                "That is {d} off the angle wanted. Clamp, and prove it with an indicator along the work.",
                d=off,
            ),
        )
    elif float(i.angle) > math.pi / 4:
        verdict = (
            "attention",
            say("Put {h} under the roll: steep", h=stack),
            say(
                "A second of arc is only {s} of blocks here. Set {c} against the other face if the work"
                " allows it.",
                s=per_second,
                c=dms(math.pi / 2 - float(i.angle)),
            ),
        )
    else:
        verdict = (
            "pass",
            say("Put {h} under the roll", h=stack),
            "Wring the blocks clean and dry. Clamp, and prove the angle with an indicator along the work.",
        )
    picked = _picked(float(i.length), i.angle, height)
    return answer(
        height,
        angle_set,
        off,
        per_second,
        verdict=verdict,
        limits=(Limit("the angle", off, low=-float(i.allowed), high=float(i.allowed)),),
        remarks=(
            note("The angle wanted is {dms}.", dms=dms(i.angle)),
            (
                note(
                    "A height as small as this cannot be wrung up. Put the same larger stack under both"
                    " rolls, and the difference more under one."
                )
                if picked is None
                else None
            ),
        ),
        tables=(picked,),
        figures=(_drawing(float(i.length), float(angle_set), i.length, stack, angle_set),),
    )


def _picked(length, angle, height) -> Table | None:
    """The height out of two common sets of blocks, and how far off that leaves the angle; None where neither can make it."""
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
    return (
        Table("Blocks to wring together", ("Set", "Blocks", "Height", "Angle off by"), tuple(rows))
        if rows
        else None
    )


def _drawing(L, a, length, stack, angle_set) -> Drawing:
    """The bar on its rolls, one of them on blocks, to scale."""
    roll, thick = L * 0.07, L * 0.1
    cos, sin = math.cos(a), math.sin(a)

    def at(along, up):
        return along * cos - up * sin, roll + along * sin + up * cos

    bar = (
        at(-roll, roll * 0.7),
        at(L + roll, roll * 0.7),
        at(L + roll, roll * 0.7 + thick),
        at(-roll, roll * 0.7 + thick),
    )
    ends = at(0, 0), at(L, 0)
    h = L * sin
    return Drawing(
        "Sine bar",
        say(
            "A bar of {L} between its rolls, {h} of blocks under one of them, stands at {a}.",
            L=length,
            h=stack,
            a=angle_set,
        ),
        (
            Area(bar, "", "cut"),
            *(Line(arc(c, roll, 0, 2 * math.pi), "outline") for c in ends),
            *((Area(box(L * cos - roll * 1.3, 0, L * cos + roll * 1.3, h), "a"),) if h > L * 0.002 else ()),
            Line(((-roll * 2, 0), (L * 1.6, 0)), "outline"),
            Line(ends, "centre"),
            Line(((0, roll), (L * 0.45, roll)), "thin"),
            Line(arc((0, roll), L * 0.4, 0, a), "thin"),
            Label((L * 0.3, roll * 0.35), say("α {a}", a=angle_set)),
            Dimension(*ends, length, thick * 1.9, "L"),
            Dimension((L * cos + roll * 1.3, h), (L * cos + roll * 1.3, 0), stack, L * 0.08, "h"),
        ),
    )
