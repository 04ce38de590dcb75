"""Sums of sizes, each anywhere within its tolerance: worst case, root sum of squares, the exact share within
limits, and a simulation.

A part's tolerance is its half width ± h about its middle (m); what a sum differs from the sum of the middles
by is its deviation. Shapes: "uniform", every size within the tolerance equally likely; "normal", the
tolerance is three standard deviations either way.
"""

import math
from array import array
from collections.abc import Callable, Iterable, Sequence
from functools import lru_cache
from random import Random

from calc.core.conformance import phi
from calc.core.working import Value, sqrt

SHAPES = ("uniform", "normal")
_PICO = 1e12  # widths are counted in picometres: sums of whole numbers are exact, and cancel without loss
SEED = 16


def worst(halves: Iterable[Value]) -> Value:
    """Half width of the sum when every part lies at the end that hurts."""
    return sum(halves)


def root_sum_square(halves: Iterable[Value]) -> Value:
    """Half width that the sum has when half widths are taken for equal multiples of standard deviations."""
    return sqrt(sum(h**2 for h in halves))


def standard_deviation(root: Value, shape: str) -> Value:
    """Of the sum, from its root sum of squares: ± h is three standard deviations of a normal part, √3 of a
    uniform one."""
    return root / 3 if shape == "normal" else sqrt(root**2 / 3)


def share_below(deviation: float, halves: Sequence[float], shape: str) -> float:
    """Probability that the sum's deviation is `deviation` or less; plain floats.

    Uniform parts: P = Σ (−1)^|S| (x − w(S))₊ⁿ / (n!·Πwᵢ) over all sets S of parts, x counted from the least
    sum, w = 2h: Irwin and Hall's distribution for unequal widths, in whole numbers. Normal parts: Φ. Up to 12
    parts (2ⁿ sets).
    """
    if shape == "normal":
        sd = float(standard_deviation(root_sum_square(halves), shape))
        return phi(deviation / sd) if sd else float(deviation >= 0)
    half = [h for each in halves if (h := round(each * _PICO))]
    x = round(deviation * _PICO) + sum(half)
    if x >= 2 * sum(half):
        return 1.0
    if x < 0:
        return 0.0
    n = len(half)
    terms = {0: 1}  # Σ (−1)^|S| of the sets with each sum of widths
    for h in half:
        for at, sign in list(terms.items()):
            if at + 2 * h < x:
                terms[at + 2 * h] = terms.get(at + 2 * h, 0) - sign
    sets = sum(sign * (x - at) ** n for at, sign in terms.items())
    return float(sets / (math.factorial(n) * math.prod(2 * h for h in half)))


def share_within(low: float, high: float, halves: Sequence[float], shape: str) -> float:
    """Probability that the sum's deviation lies from `low` to `high`, either infinite where there is no
    limit."""
    if not any(halves):  # nothing spreads: the sum lies at its middle
        return float(low < 1 / _PICO and high > -1 / _PICO)
    below = 0.0 if math.isinf(low) else share_below(low, halves, shape)
    above = 1.0 if math.isinf(high) else share_below(high, halves, shape)
    if shape == "normal" and low > 0:  # far in a tail: two numbers near 1 would cancel
        sd = float(standard_deviation(root_sum_square(halves), shape))
        return phi(-low / sd) - (0.0 if math.isinf(high) else phi(-high / sd))
    return max(0.0, above - below)


def half_width(share: float, halves: Sequence[float], shape: str) -> float:
    """Half width about the middle that holds that share of the sums."""
    low, high = 0.0, float(worst(halves)) * (3 if shape == "normal" else 1)
    for _ in range(40):
        middle = (low + high) / 2
        low, high = (middle, high) if share_within(-middle, middle, halves, shape) < share else (low, middle)
    return high


def simulate(halves: Sequence[float], shape: str, n: int, seed: int = SEED) -> list[float]:
    """n deviations of the sum, drawn part by part; the same numbers for the same seed on every machine."""
    sums = [0.0] * n
    for h, drawn in zip(halves, _drawn(len(halves), shape, n, seed)):
        sums = [s + h * x for s, x in zip(sums, drawn)]
    return sums


# drawing takes longer than all the rest, and the next keystroke asks for the same again
@lru_cache(maxsize=2)
def _drawn(parts: int, shape: str, n: int, seed: int) -> list["array[float]"]:
    """For each part n deviations in half widths."""
    # its sequence for a seed is promised to stay the same in all versions of Python
    draw = Random(seed).random
    if shape == "uniform":
        return [array("d", [2 * draw() - 1 for _ in range(n)]) for _ in range(parts)]
    return [array("d", _normal(draw, n)) for _ in range(parts)]


def _normal(draw: Callable[[], float], n: int) -> list[float]:
    """Box and Muller's way to two normal numbers at a time, three standard deviations being 1."""
    made: list[float] = []
    for _ in range((n + 1) // 2):
        radius, angle = math.sqrt(-2 * math.log(1 - draw())) / 3, 2 * math.pi * draw()
        made += (radius * math.cos(angle), radius * math.sin(angle))
    return made
