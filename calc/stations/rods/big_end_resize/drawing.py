"""The big end seen along the crank: the bore as cut and bolted up, and the circle that it is honed to."""

import math

from calc.core.drawing import Area, Drawing, Label, Line, arc
from calc.core.result import say
from calc.core.working import Number
from calc.formulas import split_bore
from calc.stations.rods.big_end_resize.rod import Rod


def section(rod: Rod, wanted: Number) -> Drawing:
    R = float(wanted) / 2
    rod_half, cap_half, times = _stock_enlarged(rod, R)
    outer = 1.32 * R
    shank = 0.34 * R
    r, c, p = rod.stocks
    return Drawing(
        f"Rod {rod.name}: what the hone takes off",
        say(
            "Big end of rod {n}, small end up: the bore as cut, and the circle of {w} that it is honed to."
            " {r} come off in the rod, {c} in the cap, {p} on each side at the parting line.",
            n=rod.name,
            w=wanted,
            r=r,
            c=c,
            p=p,
        ),
        (
            Area((*arc((0, 0), outer, 0, math.pi), *reversed(rod_half)), "a"),
            Area((*arc((0, 0), outer, 0, -math.pi), *cap_half), "b"),
            Line(((-shank, 1.28 * R), (-0.8 * shank, 1.75 * R)), "outline"),
            Line(((shank, 1.28 * R), (0.8 * shank, 1.75 * R)), "outline"),
            Line(arc((0, 0), R, 0, 2 * math.pi, 96), "band"),
            Line(((0, -1.45 * R), (0, 1.8 * R)), "centre"),
            Line(((-1.5 * R, 0), (1.5 * R, 0)), "centre"),
            Label((0, 0.52 * R), say("{s} in the rod", s=r), target=(0, R)),
            Label((0, -0.58 * R), say("{s} in the cap", s=c), target=(0, -R)),
            Label((0.05 * R, 0.12 * R), say("{s} at the sides", s=p), target=(R, 0)),
        ),
        say("stock drawn {n} times as thick; outside of the rod is the example's", n=str(times)),
    )


def _stock_enlarged(rod: Rod, R: float) -> tuple[list, list, int]:
    """Points of both halves of the bore about its new centre, with what lies inside the circle of R drawn so
    many times as thick."""
    c = float(rod.centre)
    a, b = map(float, rod.cuts)
    halves = split_bore.surface(rod.bore, a, b, 96)
    thickest = max(abs(R - math.hypot(x, y - c)) for half in halves for x, y in half)
    times = max(1, math.floor(0.16 * R / max(thickest, 1e-6)))

    def drawn(x: float, y: float) -> tuple[float, float]:
        r = math.hypot(x, y - c)
        return x / r * (R - times * (R - r)), (y - c) / r * (R - times * (R - r))

    rod_half, cap_half = ([drawn(*place) for place in half] for half in halves)
    return rod_half, cap_half, times
