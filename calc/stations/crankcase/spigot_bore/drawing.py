"""The seat from the cylinder's side: the hole, its studs, and the next one's edge."""

import math

from calc.core.drawing import Area, Circle, Dimension, Drawing, Line, arc, box
from calc.core.result import say
from calc.stations.crankcase.spigot_bore.asked import CIRCLE, In
from calc.stations.crankcase.spigot_bore.hole import Hole


def seat(i: In, hole: Hole) -> Drawing:
    R, d = float(hole.large) / 2, float(i.stud_hole)
    if i.pattern == CIRCLE:
        x = y = float(i.stud_circle) / 2 / math.sqrt(2)
    else:
        x, y = float(i.stud_along) / 2, float(i.stud_up) / 2
    edge = 1.25 * max(x, y, R)
    far = float(i.spacing)
    out = (x / math.hypot(x, y), y / math.hypot(x, y))
    reach = float(hole.reach)
    right = far - 0.6 * R
    return Drawing(
        "The hole and its studs",
        say(
            "The seat seen from the cylinder: a hole of {D}, four stud holes of {d} round it, {w} of wall"
            " to each; the next hole begins {l} further on.",
            D=hole.large,
            d=i.stud_hole,
            w=hole.wall,
            l=hole.land,
        ),
        (
            Area(box(-edge, -edge, right, edge), "a"),
            Circle((0, 0), R),
            Line(arc((0, 0), float(i.old_bore) / 2, 0, 2 * math.pi, 72), "hidden"),
            *(Circle((s * x, t * y), d / 2) for s in (-1, 1) for t in (-1, 1)),
            Line(
                arc((far, 0), R, math.pi - math.acos(min(1.0, 0.6)), math.pi + math.acos(min(1.0, 0.6)), 24)
            ),
            Line(((-1.05 * edge, 0), (right, 0)), "centre"),
            Line(((0, -1.05 * edge), (0, 1.05 * edge)), "centre"),
            Dimension((-R, 0), (R, 0), hole.large, -1.1 * edge, "D"),
            Dimension((out[0] * R, out[1] * R), (out[0] * reach, out[1] * reach), hole.wall, 0.0, "w"),
            Dimension((R, 0), (far - R, 0), hole.land, -1.1 * edge, "l"),
        ),
    )
