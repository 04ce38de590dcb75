"""Dimensions of quantities: powers of metre, kilogram, second and kelvin.

There are few of them, and numbers are made by the thousand at each keystroke: each is worked out once.
"""

from fractions import Fraction
from functools import lru_cache

Dims = tuple[int | Fraction, ...]
PURE: Dims = (0, 0, 0, 0)


class DimensionError(TypeError):
    """A formula that adds, compares or names quantities of unlike dimensions: a fault of the formula, not of
    the reader."""


@lru_cache(maxsize=1024)
def of_power(dims: Dims, power: float) -> Dims:
    """Exact: the cube of a cube root is the whole again."""
    exact = Fraction(power).limit_denominator(1000)
    return tuple(_plain(d * exact) for d in dims)


@lru_cache(maxsize=1024)
def of_product(a: Dims, b: Dims) -> Dims:
    return tuple(_plain(x + y) for x, y in zip(a, b))


@lru_cache(maxsize=1024)
def of_quotient(a: Dims, b: Dims) -> Dims:
    return tuple(_plain(x - y) for x, y in zip(a, b))


def _plain(power: int | Fraction) -> int | Fraction:
    """As an int where it is one, which is hashed and compared faster."""
    return int(power) if power.denominator == 1 else power
