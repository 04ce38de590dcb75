"""The three shims that bring the float nearest to the middle of its limits, and what these can reach."""

from typing import NamedTuple

from calc.core.working import Number, constant, step
from calc.stations.crankcase.end_float.asked import SOLD, In
from calc.stations.crankcase.end_float.sets import best_three, one_to_add, picometres
from calc.stations.crankcase.end_float.told import COUNT, Out
from calc.stations.crankcase.end_float.warm import change_of
from calc.stations.shared.forms import SIZE


class Add(NamedTuple):
    """Two that are there, and the least and greatest thickness of a third to get."""

    first: Number
    second: Number
    least: float
    most: float


class Fitting(NamedTuple):
    """`room` is the float without any shim, `left` the float that is judged: that read again, or that with
    the best three; `serves` tells whether those lie within the limits."""

    room: Number
    in_all: Number
    three: tuple[Number, Number, Number]
    float_then: Number
    left: Number
    serves: bool
    sets: Number
    least: Number
    most: Number
    change: Number
    warm: Number
    add: Add | None


def fitting_of(i: In) -> Fitting:
    shims = [row[0] for row in i.shims if row is not None]
    trial = [row[0] for row in i.trial if row is not None]
    again = i.stock == SOLD
    room = step("F", "Float with no shim at all", SIZE, sum(trial[1:], trial[0]) + i.float_read)
    in_all = Out.in_all(room - (i.low + i.high) / 2)
    low, high = picometres(room) - picometres(i.high), picometres(room) - picometres(i.low)
    sizes = [picometres(shim) for shim in shims]
    found = best_three(sizes, again, low, high, picometres(in_all), [picometres(t) for t in trial])
    first, second, third = (shims[n] for n in found.best)
    three = Out.first(first), Out.second(second), Out.third(third)
    float_then = Out.float_then(room - three[0] - three[1] - three[2])
    serves = low <= sum(sizes[n] for n in found.best) <= high
    left = float_then if i.after is None else i.after
    change = change_of(i)
    return Fitting(
        room,
        in_all,
        three,
        float_then,
        left,
        serves,
        Out.sets(constant("", "", COUNT, float(found.fitting))),
        Out.least(room - _in_all(found.thickest)),
        Out.most(room - _in_all(found.thinnest)),
        change,
        Out.warm(left + change),
        None if serves else _add(shims, again, low, high),
    )


def _in_all(picos: int) -> Number:
    return constant("", "", SIZE, picos * 1e-12)


def _add(shims: list[Number], again: bool, low: int, high: int) -> Add | None:
    found = one_to_add([picometres(s) for s in shims], again, low, high)
    if found is None:
        return None
    (a, b), least, most = found
    return Add(shims[a], shims[b], least * 1e-12, most * 1e-12)
