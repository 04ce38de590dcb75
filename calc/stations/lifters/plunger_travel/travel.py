"""What is left of a plunger's travel, and the pushrod that leaves enough of it."""

from typing import NamedTuple

from calc.core.conformance import past
from calc.core.working import Number, constant, greatest, step
from calc.stations.lifters.plunger_travel.asked import In
from calc.stations.lifters.plunger_travel.chain import Movement
from calc.stations.lifters.plunger_travel.told import Out
from calc.stations.shared.forms import COARSE


class Left(NamedTuple):
    """To both stops at worst, below cold and running, and what the plunger may be pressed in cold."""

    cold: Number
    running: Number
    top: Number
    bottom: Number
    preload_least: Number
    preload_most: Number


class Pushrod(NamedTuple):
    """The one to fit, what it is longer than the one fitted, and the shims that do the same."""

    wanted: Number
    longer: Number
    shim: Number


def left_of(i: In, moves: Movement) -> Left:
    cold, running = Out.left_cold(i.travel - i.preload), Out.left_running(i.travel - moves.running)
    sunk = step("z_p", "Plunger goes down as the valve sinks, by", COARSE, i.sinking / i.ratio)
    up = step("d_u", "Goes up from cold, at most", COARSE, greatest(-moves.change, -moves.early, 0.0))
    down = step("d_l", "Goes down from cold, at most", COARSE, greatest(moves.change, moves.early, 0.0))
    return Left(
        cold,
        running,
        Out.top(i.preload - up - i.wear),
        Out.bottom(cold - down - sunk),
        Out.preload_least(up + i.wear + i.least_top),
        Out.preload_most(i.travel - down - sunk - i.least_bottom),
    )


def pushrod_of(i: In, left: Left) -> Pushrod:
    """Into the middle of what may be; where the one at hand serves, no other is named."""
    low, high = left.preload_least, left.preload_most
    serves = not past(low, i.preload) and not past(i.preload, high)
    aim = step("p_w", "Pressed in cold, wanted", COARSE, i.preload if serves else (low + high) / 2)
    longer = Out.longer(aim - i.preload)
    return Pushrod(
        Out.pushrod_wanted(i.pushrod + longer), longer, Out.shim(shim_for(greatest(-longer, 0.0), i.ratio))
    )


def shim_for(shorter: Number | float, ratio: Number | float) -> Number | float:
    """Shims under the rocker stand that do what a pushrod shorter by that much does.

    The shaft goes up and the rocker turns about the stem's tip.
    """
    return shorter / (1 + 1 / ratio)


def length(value: float) -> Number:
    """A length in a sentence."""
    return constant("", "", COARSE, value)
