"""The part from its end: heavy spot, holes, and what the arbor puts in."""

import math

from calc.core.drawing import Circle, Drawing, Label, Line
from calc.core.result import say
from calc.core.working import constant
from calc.stations.flywheel.balance.asked import RIM, In
from calc.stations.flywheel.balance.parts import Found
from calc.stations.shared.forms import TENTHS_OF_DEGREE


def from_the_end(i: In, found: Found) -> Drawing:
    """To scale; the holes in a rim are drawn as deep as they are."""
    R = float(i.radius)
    outside = R if i.how == RIM else R + 1.6 * float(i.drill)
    heavy = float(found.heavy)
    shapes: list = [
        Circle((0, 0), outside, "a"),
        Circle((0, 0), 0.2 * outside, ""),
        Line(((-1.1 * outside, 0), (1.25 * outside, 0)), "centre"),
        Line(((0, -1.1 * outside), (0, 1.1 * outside)), "centre"),
        Label((1.42 * outside, 0), "mark"),
        Line(((0, 0), (0.6 * outside * math.cos(heavy), 0.6 * outside * math.sin(heavy))), "band"),
    ]
    for n, (hole, angle) in enumerate(zip(found.holes, found.angles), 1):
        c, s = math.cos(float(angle)), math.sin(float(angle))
        if i.how == RIM:
            half, deep, tip = float(i.drill) / 2, R - float(hole.shoulder), R - float(hole.tip)
            edge = ((R, half), (deep, half), (tip, 0), (deep, -half), (R, -half))
            shapes.append(Line(tuple((x * c - y * s, x * s + y * c) for x, y in edge), "outline"))
        else:
            shapes.append(Circle((R * c, R * s), float(i.drill) / 2, ""))
        far = outside * (1.3 if abs(s) > 0.35 else 1.75)
        shapes.append(
            Label(
                (far * c, far * s),
                say("hole {n}: {a}", n=str(n), a=constant("", "", TENTHS_OF_DEGREE, angle)),
                target=(R * c, R * s),
            )
        )
    return Drawing(
        "Heavy spot and holes, from the end",
        say(
            "The part from its end, angles from the mark on the right against the clock. The heavy spot, {u},"
            " lies at {phi}; the holes are drawn where they are drilled.",
            u=found.left,
            phi=found.heavy,
        ),
        tuple(shapes),
    )
