"""Pin by pin: throw, stroke, and angle against the first."""

from calc.core.conformance import past
from calc.core.result import Table, say
from calc.core.working import constant
from calc.stations.crank.throw_index.asked import In
from calc.stations.crank.throw_index.pins import Pin, Pins
from calc.stations.crank.throw_index.told import DEGREES
from calc.stations.shared.forms import SIZE


def pin_by_pin(i: In, pins: Pins) -> Table:
    return Table(
        "Pin by pin",
        ("Pin", "Throw", "Stroke", "Out of its angle", "Its axis off its place by"),
        tuple(
            (pin.name, pin.throw, constant("", "", SIZE, 2 * float(pin.throw)), _angle(pin), pin.shift)
            for pin in pins.each
        ),
        tuple(_state(i, pin) for pin in pins.each),
    )


def _angle(pin: Pin):
    if pin.name == "1":
        return "the first"
    size = constant("", "", DEGREES, abs(float(pin.error)))
    return (
        say("{d} {way}", d=size, way="late" if float(pin.error) > 0 else "early")
        if float(pin.error)
        else size
    )


def _state(i: In, pin: Pin) -> str:
    error = abs(float(pin.error))
    if past(error, i.worst) or past(i.throw_low, pin.throw) or past(pin.throw, i.throw_high):
        return "fail"
    return "attention" if past(error, min(i.good, i.worst, key=float)) else "pass"
