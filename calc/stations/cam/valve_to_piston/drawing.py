"""The valve over the piston to scale, and what is left over the crank's angle."""

import math

from calc.core.drawing import Area, Axis, Dimension, Drawing, Line, Plot, Series, box, placed
from calc.core.result import say
from calc.stations.cam.valve_to_piston.asked import CLAY, LOBE, In
from calc.stations.cam.valve_to_piston.nearest import Nearest, plain, read_rows, train_of, way_left
from calc.stations.cam.valve_to_piston.verdict import where
from calc.stations.shared.forms import COARSE, DEGREES

SIDE = 40  # degrees shown either side of top dead centre


def figures(i: In, found: Nearest) -> tuple[Drawing | Plot, ...]:
    return (_over_the_piston(i, found),) if i.how == CLAY else (_over_the_angle(i, found),)


def _over_the_angle(i: In, found: Nearest) -> Plot:
    angle, least = float(found.angle or 0), float(found.least)
    if i.how == LOBE:
        train = plain(train_of(i))
        ends = math.radians(SIDE)
        angles = [-ends + 2 * ends * n / 80 for n in range(81)]
        series = Series("", tuple((a, float(way_left(i.law, train, a))) for a in angles))
        low, high = -ends, ends
    else:
        read = [(float(a), float(w)) for a, w in read_rows(i)]
        low, high = read[0][0], read[-1][0]
        series = Series("", tuple(read), "points")
    taken = float(found.taken)
    return Plot(
        "Way left to the piston",
        say("Least {at}, where {w} is left.", at=where(found.angle), w=found.least),
        Axis("Crank, after top dead centre", DEGREES),
        Axis("Way left along the valve", COARSE),
        (
            series,
            Series(
                "needed, with lash, float and stretch",
                tuple((a, float(i.needed) + taken) for a in (low, high)),
                "limit",
            ),
        ),
        ((angle, least, "nearest"),),
    )


def _over_the_piston(i: In, found: Nearest) -> Drawing:
    """The valve's head over a flat crown, leaning as it does; the head 35 mm wide where none is told."""
    gap, lean, wide = float(i.clay), float(i.lean), 0.0175
    thick, stem = 0.0018, 0.004
    head = (
        (-wide, 0.0),
        (wide, 0.0),
        (wide, thick),
        (stem, 3.5 * thick),
        (stem, 0.03),
        (-stem, 0.03),
        (-stem, 3.5 * thick),
        (-wide, thick),
    )
    # the lowest edge hangs over the crown by what the clay shows
    up = gap + wide * math.sin(lean)
    (valve,) = placed((Area(head, ""),), (0.0, up), -lean)
    low = (wide * math.cos(lean), gap)
    return Drawing(
        "Valve over the piston where it is nearest",
        say("{t} of clay under the valve's head, {w} along the valve.", t=i.clay, w=found.least),
        (
            Area(box(-1.4 * wide, -0.5 * wide, 1.4 * wide, 0.0), "b"),
            valve,
            Line(((0.0, -0.3 * wide), (0.0, up + 0.035)), "centre"),
            Dimension((low[0], 0.0), low, i.clay, -0.25 * wide, "t"),
        ),
    )
