"""Sizes that advice names, rounded in each unit system to the side on which they serve: what is read here and
typed again is in order.

To the nearest digit, half of them would not be.
"""

import math
from collections.abc import Callable
from fractions import Fraction
from typing import SupportsFloat

from calc.core.conformance import DUST
from calc.core.working import Form, Number
from calc.core.writing import from_unit, stated, to_unit

Turn = Callable[[Fraction], int]  # up or down to a whole number


class Told(Number):
    """A number that is written in its own words in each unit system, which `write` makes of the system."""

    __slots__ = ("write",)

    def __init__(self, value: SupportsFloat, write: Callable[[str], str]) -> None:
        super().__init__(value)
        self.write = write

    def text(self, system: str = "metric") -> str:
        return self.write(system)


def at_least(value: SupportsFloat, shape: Form) -> Told:
    """`value` or a little more."""
    return _told(float(value), shape, math.ceil, -DUST)


def at_most(value: SupportsFloat, shape: Form) -> Told:
    """`value` or a little less."""
    return _told(float(value), shape, math.floor, DUST)


def rounded(value: float, shape: Form, system: str, turn: Turn) -> Fraction:
    """A value in that system's unit, turned up or down to the digits with which it is written."""
    places = shape.places(system)
    return Fraction(turn(Fraction(repr(to_unit(value, shape.unit(system)))) * 10**places), 10**places)


def _told(value: float, shape: Form, turn: Turn, dust: float) -> Told:
    def text(system: str) -> str:
        unit = shape.unit(system)
        return stated(
            from_unit(float(rounded(value + dust, shape, system, turn)), unit), unit, shape.places(system)
        )

    return Told(value, text)
