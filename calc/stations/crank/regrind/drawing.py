"""The worst journal across its axis: as it is worn, and the circle that it is ground to."""

import math

from calc.core.drawing import Area, Circle, Drawing, Label, Line, Points
from calc.core.result import say
from calc.core.working import Number
from calc.stations.crank.regrind.asked import EVEN, In
from calc.stations.crank.regrind.lot import STAY, Lot


def across(i: In, lot: Lot, bow: Number | None) -> Drawing:
    """What differs from the circle ground is drawn many times as large; the worn side is up."""
    j, R = lot.worst, float(lot.aim) / 2
    whole, worn = float(j.full) / 2, float(j.full - j.smallest) / (2 if i.wear == EVEN else 1)
    shift = 0.0 if bow is None else float(bow) / 2
    most = max(abs(whole + shift - R), abs(whole - worn - shift - R), 1e-6)
    times = max(1, int(0.28 * R / most))

    def outline(steps: int = 120) -> Points:
        points = []
        for k in range(steps):
            t = 2 * math.pi * k / steps
            flat = worn * max(0.0, math.sin(t)) ** 2 if i.wear != EVEN else worn
            r = R + times * (whole - flat - shift * math.sin(t) - R)
            points.append((r * math.cos(t), r * math.sin(t)))
        return tuple(points)

    name = f"{'Main' if lot.field == 'mains' else 'Rod journal'} {j.name}"
    stays = lot.state == STAY
    labels = (
        (Label((0, -0.45 * R), say("as made, {d}", d=lot.aim), target=(0.7 * R, -0.714 * R)),)
        if stays
        else (
            Label((0, 0.35 * R), say("{s} least stock", s=lot.stock), target=(0, R)),
            Label((0, -0.45 * R), say("ground to {d}", d=lot.aim), target=(0.7 * R, -0.714 * R)),
        )
    )
    return Drawing(
        f"{name}: worn, and as it was made" if stays else f"{name}: worn, and as it will be ground",
        say(
            "{name} across its axis, its worn side up: the outline as worn, smallest {a}, largest {b}, and"
            + (
                " the circle of {d}, the middle of its limits; it stays."
                if stays
                else " the circle of {d} that it is ground to about its old axis."
            ),
            name=name,
            a=j.smallest,
            b=j.largest,
            d=lot.aim,
        ),
        (
            Area(outline(), "a"),
            Circle((0, 0), R, style="band"),
            Line(((0, -1.45 * R), (0, 1.45 * R)), "centre"),
            Line(((-1.45 * R, 0), (1.45 * R, 0)), "centre"),
            *labels,
        ),
        say(
            "what differs drawn {n} times as thick" if stays else "what comes off drawn {n} times as thick",
            n=str(times),
        ),
    )
