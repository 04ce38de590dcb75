"""The rod seen along the crank's throw, and from above: mandrel below, arbor above, its slope drawn
larger."""

from calc.core.drawing import Area, Dimension, Drawing, Label, Line, box
from calc.core.kinds import LENGTH
from calc.core.result import say
from calc.core.working import Number, constant, form
from calc.stations.rods.rod_align.slope import OVER


def views(u: Number, v: Number, span: Number, bend: Number, twist: Number) -> Drawing:
    """`u` and `v` are the slopes upright and laid over."""
    L = float(span)
    steepest = max(abs(float(u)), abs(float(v)), 1e-9)
    times = max(1, min(int(0.16 / steepest), 100_000))
    half, thick, tall = L / 2, L * 0.035, L * 0.9

    def bar(x: float, y: float, slope: float, hatch: str, long: float = 1.0) -> Area:
        return Area(
            tuple(
                (x + a * half * long, y + a * half * long * slope + b * thick)
                for a, b in ((-1, -1), (1, -1), (1, 1), (-1, 1))
            ),
            hatch,
        )

    across, top = L * 1.45, tall / 2
    su, sv = float(u) * times, float(v) * times
    return Drawing(
        "How the arbor stands",
        say(
            "Left, the rod upright: the arbor's end stands {f} off over {span}. Right, from above: it crosses"
            " the mandrel by {g} over {span}.",
            f=bend,
            g=twist,
            span=constant("", "", form(LENGTH, 0), OVER),
        ),
        (
            Area(box(-0.07 * L, 0, 0.07 * L, tall), ""),
            bar(0, 0, 0.0, "a", 0.8),
            bar(0, tall, su, "b"),
            Line(((-half, tall), (half, tall)), "hidden"),
            Line(((0, -0.12 * L), (0, tall + 0.2 * L)), "centre"),
            Dimension((-half, tall + abs(su) * half), (half, tall + abs(su) * half), span, 0.18 * L, "L"),
            bar(across, top, 0.0, "a", 0.8),
            bar(across, top, sv, "b"),
            Line(((across - half, top), (across + half, top)), "hidden"),
            Label((0, -0.3 * L), say("bend {f}", f=bend)),
            Label((across, -0.3 * L), say("twist {g}", g=twist)),
        ),
        say("slopes drawn {n} times as steep", n=str(times)),
    )
