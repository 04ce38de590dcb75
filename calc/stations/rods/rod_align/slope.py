"""Slope of the small end's axis against the big end's in one plane, apart from the gauge's own where the rod
was read turned."""

from typing import NamedTuple

from calc.core.kinds import RATIO
from calc.core.working import Number, form, step
from calc.declare.calculator import Output
from calc.reference import sources
from calc.stations.shared.forms import SIZE

OVER = 0.1  # m: bend and twist are told over 100 mm


class Slope(NamedTuple):
    rod: Number
    gauge: Number  # its own error over the span


def slope_of(
    symbol: str,
    words: str,
    readings: tuple[Number, Number],
    turned: Number | None,
    span: Number,
    gauge: Output,
) -> Slope:
    """`readings` are those of the left and of the right end; `turned` is right less left with the rod turned
    end for end. `gauge` names the gauge's own error, 0 where the rod was not turned."""
    left, right = readings
    own = difference = step(f"d_{symbol}", f"Right less left, {words}", SIZE, right - left)
    if turned is None:
        error = gauge(0.0)
    else:
        own = step(
            f"D_{symbol}",
            f"The rod's share of it, {words}",
            SIZE,
            (difference - turned) / 2,
            sources.REVERSAL,
        )
        error = gauge((difference + turned) / 2, sources.REVERSAL)
    return Slope(step(f"m_{symbol}", f"Slope, {words}", form(RATIO, 6), own / span, sources.TWO_AXES), error)
