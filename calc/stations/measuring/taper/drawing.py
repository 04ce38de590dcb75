"""The cone, its axis level."""

import math

from calc.core.drawing import Area, Dimension, Drawing, Label, Line, arc
from calc.core.result import say
from calc.core.working import Number
from calc.stations.measuring.taper.asked import In


def cone(i: In, small: Number, side: Number) -> Drawing:
    """The cone to scale, its axis level."""
    R, r, L, a = float(i.large) / 2, float(small) / 2, float(i.length), float(side)
    reach = L * 0.12
    return Drawing(
        "Taper",
        say(
            "A cone {L} long from {D} down to {d}; a side stands at {a} to the axis.",
            L=i.length,
            D=i.large,
            d=small,
            a=side,
        ),
        (
            Area(((0, -R), (L, -r), (L, r), (0, R)), "", "cut"),
            Line(((-reach, 0), (L + reach, 0)), "centre"),
            Line(((L, r), (L * 0.1, r)), "thin"),
            Line(arc((L, r), L * 0.75, math.pi - a, math.pi), "thin"),
            Label((L * 0.28, r - max(R * 0.2, reach * 0.5)), say("α {a}", a=side)),
            Dimension((0, -R), (0, R), i.large, reach, "D"),
            Dimension((L, r), (L, -r), small, reach, "d"),
            Dimension((0, -R), (L, -R), i.length, -max(reach, R * 0.2), "L"),
        ),
    )
