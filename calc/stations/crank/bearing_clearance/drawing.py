"""The bearing seen along the crank: housing, both shells and the journal, the clearance drawn larger."""

import math

from calc.core.drawing import Area, Dimension, Drawing, Line, arc
from calc.core.result import say
from calc.core.working import Number


def section(housing: float, wall: Number, journal: Number, tight: Number, wall_round: float) -> Drawing:
    R, w = housing / 2, float(wall)
    inside = R - w
    gap = max(float(tight) / 2, 0.0)
    times = max(1, math.floor(0.06 * R / gap)) if gap > 1e-7 else 1
    r = inside - gap * times
    outer = R + max(wall_round, 0.12 * R)

    def half(rim: float, bore: float, side: int, hatch: str) -> Area:
        return Area(
            (*arc((0, 0), rim, 0, side * math.pi), *reversed(arc((0, 0), bore, 0, side * math.pi))), hatch
        )

    return Drawing(
        "Bearing, its clearance enlarged",
        say(
            "Bearing seen along the crank: two shells of {w} in their housing, the joint level, and the"
            " journal of {d} in the middle with {c} of clearance on the diameter.",
            w=wall,
            d=journal,
            c=tight,
        ),
        (
            half(outer, R, 1, "a"),
            half(outer, R, -1, "a"),
            half(R, inside, 1, "b"),
            half(R, inside, -1, "b"),
            Area(arc((0, 0), r, 0, 2 * math.pi), "c"),
            Line(((R, 0), (outer, 0))),
            Line(((-R, 0), (-outer, 0))),
            Line(((0, -1.1 * outer), (0, 1.1 * outer)), "centre"),
            Line(((-1.1 * outer, 0), (1.1 * outer, 0)), "centre"),
            Dimension((-r, 0), (r, 0), journal, -1.25 * outer, "d"),
        ),
        say("clearance drawn {n} times as wide", n=str(times)),
    )
