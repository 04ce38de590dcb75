"""Both planes from the same end, with the masses that go on them."""

import math

from calc.core.drawing import Circle, Drawing, Label, Line
from calc.core.result import say
from calc.stations.flywheel.balance_two_plane.asked import In
from calc.stations.flywheel.balance_two_plane.planes import Plane


def both_planes(i: In, a: Plane, b: Plane) -> Drawing:
    """Radii to scale, the planes beside each other."""
    rim = 1.15 * max(float(i.radius_a), float(i.radius_b))
    shapes: list = []
    for x, name, plane, radius in ((0.0, "A", a, float(i.radius_a)), (3.1 * rim, "B", b, float(i.radius_b))):
        at = (x + radius * math.cos(float(plane.place)), radius * math.sin(float(plane.place)))
        shapes += [
            Circle((x, 0), 1.15 * radius, "a"),
            Circle((x, 0), 0.12 * rim, ""),
            Line(((x - 1.1 * rim, 0), (x + 1.2 * rim, 0)), "centre"),
            Line(((x, -1.1 * rim), (x, 1.1 * rim)), "centre"),
            Circle(at, 0.07 * rim, "solid"),
            Label((x, -1.4 * rim), say("{n}: {m} at {p}", n=name, m=plane.mass, p=plane.place)),
        ]
    return Drawing(
        "Masses to add, both planes from the same end",
        say(
            "Plane A and plane B from the same end, angles from the mark on the right against the clock: {ma}"
            " at {pa} in A, {mb} at {pb} in B.",
            ma=a.mass,
            pa=a.place,
            mb=b.mass,
            pb=b.place,
        ),
        tuple(shapes),
    )
