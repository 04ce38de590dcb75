"""The plunger in its travel, cold, warming up and running."""

from calc.core.drawing import Area, Axis, Dimension, Drawing, Label, Line, Plot, Series, box
from calc.core.result import say
from calc.reference.materials import REFERENCE
from calc.stations.lifters.plunger_travel.asked import In
from calc.stations.lifters.plunger_travel.chain import Movement
from calc.stations.shared.forms import COARSE, DEGREES_C


def columns(i: In, moves: Movement) -> Drawing:
    """The plunger in its travel, three times: cold, warming up, running."""
    S = float(i.travel)
    wide, gap, thick = 0.55 * S, 1.5 * S, 0.35 * S
    shapes: list[Area | Line | Label | Dimension] = [
        Line(((-0.5 * gap, 0), (2.5 * gap, 0))),
        Line(((-0.5 * gap, -S), (2.5 * gap, -S))),
    ]
    stands = (i.preload, "cold"), (moves.warming, "warming up"), (moves.running, "running")
    for n, (depth, words) in enumerate(stands):
        x, y = n * gap, -min(max(float(depth), 0.0), S)
        shapes += [
            Area(box(x - wide / 2, y - thick, x + wide / 2, y), "b"),
            Line(((x, y), (x, 0.3 * S)), "centre"),
            Label((x, 0.75 * S), words),
            Label((x, 0.42 * S), say("{d}", d=depth)),
        ]
    shapes.append(Dimension((2.5 * gap, -S), (2.5 * gap, 0), i.travel, -0.3 * S, "S"))
    return Drawing(
        "Top of the plunger between its stops, upper and lower line",
        say(
            "Pressed in by {a} cold, {b} while warming up and {c} when running.",
            a=i.preload,
            b=moves.warming,
            c=moves.running,
        ),
        tuple(shapes),
    )


def warm_up(i: In, moves: Movement) -> Plot | None:
    """Depth of the plunger as the head warms up: all together, and with the case still cold.

    Growth is drawn as a straight line. A head that stays cold has nothing to show.
    """
    ends = cold, hot = float(REFERENCE), float(i.head_temperature)
    if abs(hot - cold) < 1:
        return None
    preload, travel = float(i.preload), float(i.travel)
    change, early = float(moves.change), float(moves.early)
    return Plot(
        "Plunger as the engine warms up",
        say("Pressed in by {r} when running; 0 is the upper stop.", r=moves.running),
        Axis("Head", DEGREES_C),
        Axis("Pressed in", COARSE),
        (
            Series("", ((cold, preload), (hot, preload + change))),
            Series("case still cold", ((cold, preload), (hot, preload + early)), "dashed"),
            Series("upper stop", tuple((t, 0.0) for t in ends), "limit"),
            Series("lower stop", tuple((t, travel) for t in ends), "limit"),
        ),
        ((hot, preload + change, "running"),),
    )
