"""The dial over one turn, and the middle journal off the axis of the ends."""

import math

from calc.core.drawing import Area, Axis, Circle, Drawing, Label, Line, Plot, Series, arc
from calc.core.kinds import ANGLE
from calc.core.result import say
from calc.core.working import Number, form
from calc.stations.crank.shaft_bow.asked import PLACES
from calc.stations.crank.shaft_bow.circle import Circle as Found
from calc.stations.shared.forms import SIZE

RADIUS = 27e-3  # of a main journal such as the example's


def over_a_turn(read: list[tuple[int, Number]], found: Found) -> Plot:
    def bow(degrees: int) -> float:
        t = math.radians(degrees)
        return float(found.mean) + float(found.towards) * math.cos(t) + float(found.across) * math.sin(t)

    return Plot(
        "Dial over one turn",
        say(
            "Readings round the journal, from largest to smallest {t}, and the bow in them, {b}, highest at"
            " {phi}.",
            t=found.total,
            b=found.whole,
            phi=found.high,
        ),
        Axis("Turned by", form(ANGLE, 0)),
        Axis("Dial", SIZE),
        (
            Series("bow", tuple((math.radians(d), bow(d)) for d in range(0, 361, 5))),
            Series("read", tuple((2 * math.pi * k / len(PLACES), float(y)) for k, y in read), "points"),
        ),
    )


def journal_off_axis(found: Found) -> Drawing:
    """Seen along the shaft; the bow is drawn many times as large."""
    e = float(found.bow)
    times = max(1, min(100_000, int(0.35 * RADIUS / max(e, 1e-9))))
    t, off = float(found.high), e * times
    middle = (off * math.cos(t), off * math.sin(t))
    far = 1.75 * RADIUS
    return Drawing(
        "Middle journal and the axis of the ends",
        say(
            "Seen along the crank: the middle journal's axis lies {e} off, towards {phi}.",
            e=found.bow,
            phi=found.high,
        ),
        (
            Area(arc(middle, RADIUS, 0, 2 * math.pi, 96), "a"),
            Circle((0, 0), RADIUS, style="hidden"),
            Line(((-1.5 * RADIUS, 0), (far, 0)), "centre"),
            Line(((0, -1.5 * RADIUS), (0, 1.5 * RADIUS)), "centre"),
            Line(((0, 0), (1.55 * RADIUS * math.cos(t), 1.55 * RADIUS * math.sin(t))), "band"),
            Label((far, 0.12 * RADIUS), "mark"),
            Label(
                (1.75 * RADIUS * math.cos(t), 1.75 * RADIUS * math.sin(t)), say("high: {phi}", phi=found.high)
            ),
        ),
        say("bow drawn {n} times as large", n=str(times)),
    )
