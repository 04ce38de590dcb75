"""Dial readings at even angles as mean, bow and oval: least squares, which at even angles are Fourier's
sums."""

import math
from typing import NamedTuple

from calc.core.kinds import COUNT, RATIO
from calc.core.working import Number, constant, form, greatest, least, sqrt, step
from calc.formulas.planar import Vector
from calc.reference import sources
from calc.stations.crank.shaft_bow.asked import PLACES
from calc.stations.crank.shaft_bow.told import Out
from calc.stations.shared.forms import FINE

EIGHTHS = len(PLACES)


class Circle(NamedTuple):
    """`slip` is the row whose reading lies farthest from mean, bow and oval, and `rest` by how much (m)."""

    whole: Number
    bow: Number
    high: Number
    oval: Number
    total: Number
    mean: Number
    towards: Number
    across: Number
    rest: float
    slip: int


def circle_of(read: list[tuple[int, Number]]) -> Circle:
    """`read` are readings by their eighth of a turn: eight of them, or every other."""
    y = dict(read)
    whole = len(read) == EIGHTHS
    n = constant("n", "Readings", form(COUNT, 0), len(read))
    mean = step("y_0", "Mean", FINE, sum(y.values()) / n)
    a, b = _once(y, whole)
    c, d = _twice(y, whole)
    off = Vector(a, b)
    bow = Out.bow(off.size(), sources.HARMONICS)
    swing = abs(c) if d is None else sqrt(c**2 + d**2)
    left = {k: abs(float(v) - _fitted(k, mean, a, b, c, d)) for k, v in read}
    slip = max(left, key=lambda k: left[k])
    return Circle(
        Out.whole(2 * bow),
        bow,
        Out.high(off.direction(), sources.HARMONICS),
        Out.oval(4 * swing, sources.HARMONICS),
        Out.total(greatest(*y.values()) - least(*y.values())),
        mean,
        a,
        b,
        left[slip],
        slip,
    )


def _once(y: dict[int, Number], whole: bool) -> tuple[Number, Number]:
    """What goes round once with the shaft: towards the mark, and a quarter of a turn on."""
    if whole:
        s = constant("s", "Sine of 45°", form(RATIO, 5), math.sqrt(0.5))
        a = (y[0] - y[4] + s * (y[1] + y[7] - y[3] - y[5])) / 4
        b = (y[2] - y[6] + s * (y[1] + y[3] - y[5] - y[7])) / 4
    else:
        a, b = (y[0] - y[4]) / 2, (y[2] - y[6]) / 2
    return (
        step("a_1", "Axis off towards the mark", FINE, a, sources.HARMONICS),
        step("b_1", "Axis off a quarter of a turn on", FINE, b, sources.HARMONICS),
    )


def _twice(y: dict[int, Number], whole: bool) -> tuple[Number, Number | None]:
    """What goes round twice, and comes of an oval; four readings see the part along the mark alone."""
    c = step("a_2", "Oval along the mark", FINE, (y[0] - y[2] + y[4] - y[6]) / 4, sources.HARMONICS)
    if not whole:
        return c, None
    return c, step("b_2", "Oval between", FINE, (y[1] - y[3] + y[5] - y[7]) / 4, sources.HARMONICS)


def _fitted(k: int, mean: Number, a: Number, b: Number, c: Number, d: Number | None) -> float:
    t = 2 * math.pi * k / EIGHTHS
    oval = float(c) * math.cos(2 * t) + (0.0 if d is None else float(d) * math.sin(2 * t))
    return float(mean) + float(a) * math.cos(t) + float(b) * math.sin(t) + oval
