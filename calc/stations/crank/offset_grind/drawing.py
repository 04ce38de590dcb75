"""One throw seen along the crank: main journal, the old rod journal, and the new one further out."""

import math

from calc.core.drawing import Circle, Dimension, Drawing, Label, Line
from calc.core.result import say
from calc.core.working import Number
from calc.stations.crank.offset_grind.asked import In


def throw(i: In, then: Number, offset: Number, index: Number) -> Drawing:
    """To scale. `then` is the new throw, `index` its angle from the old."""
    r, new, R = float(i.throw), float(then), float(i.main) / 2
    old_pin, new_pin, turn = float(i.pin) / 2, float(i.new_pin) / 2, float(index)
    middle = (-new * math.sin(turn), new * math.cos(turn))
    side = max(R, old_pin)
    return Drawing(
        "A throw, seen along the crank",
        say(
            "Main journal of {m}, the old rod journal of {a} at a throw of {r}, and within it the new one"
            " of {b}, its axis {e} further out.",
            m=i.main,
            a=i.pin,
            r=i.throw,
            b=i.new_pin,
            e=offset,
        ),
        (
            Circle((0, 0), R, ""),
            Circle((0, r), old_pin, style="hidden"),
            Circle(middle, new_pin, "a"),
            Line(((-1.2 * R, 0), (1.2 * R, 0)), "centre"),
            Line(((0, -1.15 * R), (0, r + 1.2 * old_pin)), "centre"),
            Line(((-0.4 * old_pin, r), (0.4 * old_pin, r)), "thin"),
            Line(((middle[0] - 0.4 * old_pin, middle[1]), (middle[0] + 0.4 * old_pin, middle[1])), "thin"),
            Dimension((side, 0), (side, r), i.throw, -0.5 * side, "r_1"),
            Dimension((-side, 0), (-side, middle[1]), then, 0.5 * side, "r_2"),
            Label((0, -0.55 * R), say("main journal")),
            Label((0, r + 0.45 * new_pin), say("new")),
        ),
    )
