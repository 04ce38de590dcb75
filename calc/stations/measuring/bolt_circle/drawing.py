"""The pitch circle, drawn to scale."""

import math

from calc.core.drawing import Dimension, Drawing, Label, Line, arc
from calc.core.result import say
from calc.core.working import Number
from calc.stations.measuring.bolt_circle.asked import In
from calc.stations.measuring.bolt_circle.places import Place


def pattern(i: In, holes: list[Place], chord: Number) -> Drawing:
    """The pattern to scale, the first holes numbered."""
    radius, hole, x, y = (float(n) for n in (i.pitch_circle / 2, i.hole / 2, i.centre_x, i.centre_y))
    turn, beyond = 2 * math.pi, radius + max(hole * 1.6, radius * 0.12)
    tick = max(hole * 1.3, radius * 0.03)
    inner = radius - tick - radius * 0.1
    aside = 0.1  # rad, so that a number does not stand on a centre line

    def at(angle: float, distance: float) -> tuple[float, float]:
        return x + distance * math.cos(angle), y + distance * math.sin(angle)

    def number_at(angle: float) -> tuple[float, float]:
        across, up = at(angle + aside, inner)
        return across, up - radius * 0.03

    return Drawing(
        "Pitch circle",
        say(
            "{n} holes evenly on a circle of {D}, neighbours {c} apart.", n=i.holes, D=i.pitch_circle, c=chord
        ),
        (
            Line(arc((x, y), radius, 0, turn, 96), "centre"),
            Line(((x - beyond, y), (x + beyond, y)), "centre"),
            Line(((x, y - beyond), (x, y + beyond)), "centre"),
            *(Line(arc((each.x, each.y), hole, 0, turn), "outline") for each in holes if hole),
            *(Line((at(each.angle, radius - tick), at(each.angle, radius + tick)), "thin") for each in holes),
            *(
                Label(number_at(each.angle), str(n))
                for n, each in enumerate(holes, 1)
                if len(holes) <= 24 or n <= 2
            ),
            Dimension((x - radius, y), (x + radius, y), i.pitch_circle, -beyond * 1.12, "D"),
        ),
    )
