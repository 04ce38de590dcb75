"""The throws seen along the crank, turned level, their angles drawn many times as large."""

import math

from calc.core.drawing import Circle, Drawing, Label, Line
from calc.core.result import say
from calc.core.working import Number
from calc.stations.crank.throw_index.asked import PINS, RIGHT, In
from calc.stations.crank.throw_index.pins import Pins


def throws(i: In, pins: Pins) -> Drawing:
    r = float(pins.long.throw)
    right = {"1", i.beside} if i.side == RIGHT else {*PINS} - {"1", i.beside}
    steepest = max(*(abs(float(pin.angle)) for pin in pins.each), 1e-6)
    times = max(1, min(100_000, int(0.3 / steepest)))
    shapes: list = [Circle((0, 0), 0.75 * r, ""), Line(((-1.2 * r, 0), (1.2 * r, 0)), "centre")]
    heights: dict[bool, list[float]] = {True: [], False: []}
    for pin in pins.each:
        way = 1 if pin.name in right else -1
        angle = float(pin.angle) * times
        x, y = way * r * math.cos(angle), way * r * math.sin(angle)
        shapes += [Line(((0, 0), (x, y)), "outline"), Circle((x, y), 0.045 * r, "solid")]
        level = _clear(y, heights[way > 0], 0.24 * r)
        shapes.append(Label((way * 1.55 * r, level), _named(pin.name, pin.error), target=(x, y)))
    return Drawing(
        "Throws from the end, turned level",
        say(
            "Four throws from the end of the crank, pin 1 on the {side}; pin {n} is farthest out of its"
            " angle, by {d}.",
            side=i.side,
            n=pins.worst.name,
            d=pins.turned,
        ),
        tuple(shapes),
        say("angles drawn {n} times as large", n=str(times)),
    )


def _named(name: str, error: Number):
    return say("pin {n}", n=name) if name == "1" else say("{n}: {e}", n=name, e=error)


def _clear(y: float, taken: list[float], apart: float) -> float:
    """A height near y at which words stand clear of those that stand already."""
    while any(abs(y - other) < apart for other in taken):
        y += apart / 2 if y >= 0 else -apart / 2
    taken.append(y)
    return y
