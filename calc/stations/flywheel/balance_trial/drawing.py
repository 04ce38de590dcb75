"""The part from its end: heavy spot and where the mass goes, to the radius at which it sits."""

import math

from calc.core.drawing import Circle, Drawing, Label, Line
from calc.core.result import say
from calc.stations.flywheel.balance_trial.asked import PHASE, In
from calc.stations.flywheel.balance_trial.influence import Found


def from_the_end(i: In, found: Found) -> Drawing:
    """To scale."""
    R, rt = float(i.radius), float(i.trial_radius)
    rim = 1.12 * max(R, rt)
    heavy, place = float(found.heavy), float(found.place)

    def at(radius: float, angle: float) -> tuple[float, float]:
        return (radius * math.cos(angle), radius * math.sin(angle))

    shapes: list = [
        Circle((0, 0), rim, "a"),
        Circle((0, 0), 0.2 * rim, ""),
        Line(((-1.1 * rim, 0), (1.25 * rim, 0)), "centre"),
        Line(((0, -1.1 * rim), (0, 1.1 * rim)), "centre"),
        Label((1.42 * rim, 0), "mark"),
        Line(((0, 0), at(0.8 * rim, heavy)), "band"),
        Circle(at(R, place), 0.07 * rim, "solid"),
        Label(at(1.5 * rim, place), say("add {m}", m=found.correction), target=at(R, place)),
    ]
    if i.method == PHASE:
        shapes.append(Circle(at(rt, float(i.trial_at)), 0.06 * rim, style="hidden"))
    return Drawing(
        "Where the mass goes, from the end",
        say(
            "The part from its end, angles from the mark on the right against the clock. The heavy spot lies"
            " at {h}; {m} goes opposite, at {a}. The trial mass stood where the dashed circle is.",
            h=found.heavy,
            m=found.correction,
            a=found.place,
        )
        if i.method == PHASE
        else say(
            "The part from its end, angles from the mark on the right against the clock. The heavy spot lies"
            " at {h}; {m} goes opposite, at {a}.",
            h=found.heavy,
            m=found.correction,
            a=found.place,
        ),
        tuple(shapes),
    )
