"""Standard uncertainties of the sources that a shop meets, their sum, and the coverage factor (GUM, JCGM
100:2008).

Lengths in metres throughout, expansions 1/K, temperature differences K. `u` is a standard uncertainty, a
"half width" the ± of a rectangular distribution: anywhere between, equally likely.
"""

import math
from collections.abc import Iterable, Sequence
from functools import lru_cache

from calc.core.working import Value, least, sqrt

ENOUGH = 1e6  # degrees of freedom: more than these change no coverage factor in its first five digits


def mean(readings: Sequence[Value]) -> Value:
    """Arithmetic mean of one reading or more."""
    return sum(readings) / len(readings)


def spread(readings: Sequence[Value], middle: Value) -> Value:
    """Standard deviation of single readings about their mean, n − 1 in the divisor (GUM 4.2.2). Two readings
    or more."""
    return sqrt(sum((x - middle) ** 2 for x in readings) / (len(readings) - 1))


def of_mean(s: Value, n: Value) -> Value:
    """Standard uncertainty of the mean of n readings whose spread is s (GUM 4.2.3)."""
    return s / sqrt(n)


def rectangular(half_width: Value) -> Value:
    """Standard uncertainty of what lies anywhere between ± half_width (GUM 4.3.7)."""
    return sqrt(half_width**2 / 3)


def resolution(division: Value) -> Value:
    """Standard uncertainty of rounding to a division of the scale: half of it either way (GUM F.2.2.1)."""
    return rectangular(division / 2)


def unequal_warmth(length: Value, part_alpha: Value, difference: Value) -> Value:
    """Standard uncertainty from part and gauge that may differ by up to ± difference in temperature, m."""
    return length * part_alpha * rectangular(difference)


def room_warmth(
    length: Value, part_alpha: Value, gauge_alpha: Value, alpha_half_width: Value, off: Value
) -> Value:
    """Standard uncertainty from both lying up to ± off from 20 °C, m: they grow unlike, and neither
    coefficient is known better than ± alpha_half_width. The product of two doubts is kept, for it is all that
    is left where both are of one material (GUM H.1.7).
    """
    return (
        length
        * rectangular(off)
        * sqrt((part_alpha - gauge_alpha) ** 2 + 2 * rectangular(alpha_half_width) ** 2)
    )


def combined(parts: Iterable[Value]) -> Value:
    """Root of the sum of squares of independent standard uncertainties (GUM 5.1.2)."""
    return sqrt(sum(u**2 for u in parts))


def effective_freedom(total: Value, parts: Iterable[tuple[Value, Value]]) -> Value:
    """Welch and Satterthwaite's effective degrees of freedom (GUM G.4.1) from (u, degrees of freedom) of the
    parts that have any; parts that are sure of themselves are left out. `ENOUGH` at most."""
    unsure = [(u, freedom) for u, freedom in parts if u > 0]
    return least(1 / sum((u / total) ** 4 / freedom for u, freedom in unsure), ENOUGH) if unsure else ENOUGH


@lru_cache(maxsize=64)  # the same for all that a calculator is worked for at one key
def coverage_factor(probability: float, freedom: float) -> float:
    """k: the number of standard uncertainties either way within which a value of Student's t lies with that
    probability (GUM G.3).

    `freedom` from 1 up, fractions allowed; probability 0.5 to 0.9999. To 10⁻⁷ of its value.
    """
    low, high = 0.0, 1.0
    while _within(high, freedom) < probability:
        high *= 2
    while high - low > 1e-12 * high:
        middle = (low + high) / 2
        low, high = (middle, high) if _within(middle, freedom) < probability else (low, middle)
    return (low + high) / 2


def _within(t: float, freedom: float) -> float:
    """P(|T| ≤ t) = 1 − I_x(ν/2, ½) with x = ν/(ν + t²), t > 0."""
    return 1 - _incomplete_beta(freedom / 2, 0.5, freedom / (freedom + t * t), t * t / (freedom + t * t))


def _incomplete_beta(a: float, b: float, x: float, rest: float) -> float:
    """Regularised incomplete beta function I_x(a, b), 0 < x < 1, by its continued fraction; `rest` is 1 − x,
    given apart to keep its digits."""
    if x > (a + 1) / (a + b + 2):
        return 1 - _incomplete_beta(b, a, rest, x)
    front = (
        math.exp(math.lgamma(a + b) - math.lgamma(a) - math.lgamma(b) + a * math.log(x) + b * math.log(rest))
        / a
    )
    c, d = 1.0, 1 / (1 - (a + b) * x / (a + 1))
    value, m = d, 0
    while m < 10000:  # Lentz's way of working the fraction from its top; two of its terms a turn
        m += 1
        for term in (
            m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m)),
            -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1)),
        ):
            d = 1 / (1 + term * d)
            c = 1 + term / c
            value *= c * d
        if abs(c * d - 1) < 1e-15:
            break
    return front * value
