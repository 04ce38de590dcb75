"""Throw and angle of each pin: the pin's diameter and the blocks' height drop out."""

from typing import NamedTuple

from calc.core.working import Number, asin, cos, greatest, least, sin, sqrt, step
from calc.reference import sources
from calc.stations.crank.throw_index.asked import CLOCK, PINS, RIGHT, In
from calc.stations.crank.throw_index.told import DEGREES, Out
from calc.stations.shared.forms import SIZE


class Pin(NamedTuple):
    """`angle` is how far the pin stands from level, against the clock; `error` the same less that of pin 1,
    positive where it is late as the crank runs. `shift` is how far its axis lies from its right place."""

    name: str
    throw: Number
    angle: Number
    error: Number
    shift: Number


class Pins(NamedTuple):
    each: list[Pin]
    worst: Pin  # by its angle
    turned: Number
    spread: Number
    longest: Number
    shortest: Number
    shift: Number
    diameter: Number
    long: Pin
    short: Pin


def pins_of(i: In) -> Pins:
    right = {"1", i.beside} if i.side == RIGHT else {*PINS} - {"1", i.beside}
    read = [_read(name, row, name in right) for name, row in zip(PINS, i.heights)]
    wanted = step("r", "Throw wanted", SIZE, (i.throw_low + i.throw_high) / 2)
    first = read[0][1]
    each = [
        _against_first(name, throw, angle, first, wanted, i.turns) for name, (throw, angle) in zip(PINS, read)
    ]
    worst = max(each, key=lambda pin: abs(float(pin.error)))
    long, short = (end(each, key=lambda pin: float(pin.throw)) for end in (max, min))
    index = Out.index(greatest(*(abs(pin.error) for pin in each[1:])), sources.SINE_OF_HEIGHT)
    throws = [pin.throw for pin in each]
    spread = Out.spread(greatest(*throws) - least(*throws))
    shift = Out.shift(greatest(*(pin.shift for pin in each)), sources.TWO_THROWS)
    return Pins(
        each,
        worst,
        index,
        spread,
        Out.longest(2 * greatest(*throws)),
        Out.shortest(2 * least(*throws)),
        shift,
        Out.diameter(2 * shift, sources.TWO_THROWS),
        long,
        short,
    )


def _read(name: str, row: tuple[Number, ...], right: bool) -> tuple[Number, Number]:
    """Throw, and angle against the clock; a pin on the left that stands high is turned with the clock."""
    top, bottom, level = row
    throw = step(f"r_{name}", f"Throw of pin {name}", SIZE, (top - bottom) / 2, sources.SINE_OF_HEIGHT)
    middle = step(f"m_{name}", f"Height of pin {name} if it lay level", SIZE, (top + bottom) / 2)
    off = asin((level - middle) / throw)
    angle = step(
        f"φ_{name}",
        f"Pin {name} against the clock from level",
        DEGREES,
        off if right else -off,
        sources.SINE_OF_HEIGHT,
    )
    return throw, angle


def _against_first(name: str, throw: Number, angle: Number, first: Number, wanted: Number, turns: str) -> Pin:
    late = angle - first if turns == CLOCK else first - angle
    error = step(f"δ_{name}", f"Pin {name} late against pin 1", DEGREES, late)
    shift = step(
        f"v_{name}",
        f"Axis of pin {name} from its place",
        SIZE,
        sqrt((throw * cos(error) - wanted) ** 2 + (throw * sin(error)) ** 2),
        sources.TWO_THROWS,
    )
    return Pin(name, throw, angle, error, shift)
