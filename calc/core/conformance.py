"""Is a size within its limits, when the reading is in doubt? ISO 14253-1's decision rules with the
probabilities of JCGM 106.

The doubt is taken as normal, and nothing else is held to be known of the size. Everything here counts in
standard uncertainties: `below` is how far the reading lies above its lower limit, `above` how far below its
upper one, negative outside; a limit that does not exist lies infinitely far. `standard(margin, u)` counts a
margin so.
"""

import math
from typing import SupportsFloat, overload

from calc.core.kinds import RATIO
from calc.core.working import Number, PureFunction, Value, constant, form

# What floats may leave of two equal sizes: m, and of numbers above one so much of them.
DUST = 1e-12
# The same as a share of the sizes that went into a sum, where how large they are is known.
ROUNDING = 1e-13
COVERAGE = 2  # k: expanded uncertainty U = k·u, about 95 % (GUM); so is every doubt behind a ±
# ISO 14253-1:2017: conformity is proven at a probability of 95 % unless agreed otherwise (from memory)
PROOF = 0.95


def past(size: SupportsFloat, limit: SupportsFloat) -> bool:
    """Is a number worked out from others more than its limit? Of a lower limit: is the limit past the
    number?"""
    return float(size) - float(limit) > DUST * max(1.0, abs(float(limit)))


def margins(
    value: float, low: float | None, high: float | None, dust: float = DUST
) -> tuple[float | None, float | None]:
    """How far a size lies above its lower and below its upper limit, negative outside, None where there is
    none. What floats may leave of two equal sizes is no distance: a size on its limit lies on it."""
    found = (None if low is None else value - low, None if high is None else high - value)
    below, above = (0.0 if x is not None and abs(x) <= dust else x for x in found)
    return below, above


def standard(margin: float | None, u: float) -> float:
    """A margin in standard uncertainties: ∞ where there is no limit (None); without doubt ±∞, a limit itself
    belonging to what it allows."""
    if margin is None:
        return math.inf
    return margin / u if u else -math.inf if margin < -DUST else math.inf


# Standard normal distribution function, accurate in both tails; of a plain or traced number.
phi = PureFunction("Φ", lambda x: 0.5 * math.erfc(-x / math.sqrt(2)))


def quantile(probability: float) -> float:
    """Number of standard uncertainties below which a normal value lies with that probability, 0.5 to 1 −
    10⁻¹⁵."""
    x, beyond = 0.0, 1 - probability
    while True:  # Newton from the left on a curve that bends down: each step falls short of the root
        step = (phi(-x) - beyond) * math.sqrt(2 * math.pi) * math.exp(x * x / 2)
        if step < 1e-14 * max(x, 1):
            return x + step
        x += step


@overload
def probability(below: float, above: float) -> float: ...
@overload
def probability(below: Number, above: Number) -> Number: ...
def probability(below: Value, above: Value) -> Value:
    """Probability that the true size lies within its limits: Φ(above) − Φ(−below) (JCGM 106, 7.3); plain or
    traced."""
    # of two numbers near 1 or near 0, take those near 0
    return phi(below) - phi(-above) if below < above else phi(above) - phi(-below)


def probability_within(reading: float, u: float, low: float | None, high: float | None) -> float:
    """The same from a reading, its standard uncertainty and its limits (None where there is none), in one
    unit."""
    return probability(
        standard(None if low is None else reading - low, u),
        standard(None if high is None else high - reading, u),
    )


def decide(below: float, above: float, proof: float = PROOF) -> str:
    """'in' where conformity is proven, 'out' where it is proven that one of the limits is passed, else
    'cannot tell'.

    That a doubt far wider than the limits leaves little probability between them does not prove that the size
    lies outside.
    """
    if probability(below, above) >= proof:
        return "in"
    return "out" if phi(-min(below, above)) >= proof else "cannot tell"


def accepted(
    u: float, low: float | None, high: float | None, proof: float = PROOF
) -> tuple[float | None, float | None] | None:
    """Least and greatest reading that is 'in' (None where there is no such limit), or None where no reading
    is."""
    guard = quantile(proof) * u
    if low is None or high is None:
        return None if low is None else low + guard, None if high is None else high - guard
    half, inner, outer = (high - low) / 2, 0.0, (high - low) / 2 - guard
    if probability_within(0, u, -half, half) < proof:
        return None
    # the farther limit takes a little off what the nearer one allows; halved to the last bit
    for _ in range(60):
        middle = (inner + outer) / 2
        inner, outer = (
            (middle, outer) if probability_within(middle, u, -half, half) >= proof else (inner, middle)
        )
    return low + half - inner, low + half + inner


def deciding_share(below: float, above: float, proof: float = PROOF) -> float:
    """The greatest multiple of the doubt with which that same reading would decide; 0 on a limit, above 1
    where it decides as it is, ∞ without limits or without doubt."""
    nearer, farther = sorted((below, above))
    one_sided = quantile(proof)
    if nearer <= 0 or math.isinf(farther):
        return abs(nearer) / one_sided
    # the farther limit counts as much as the nearer, or nothing
    few, many = (nearer / quantile((1 + proof) / 2), nearer / one_sided)
    for _ in range(60):
        middle = (few + many) / 2
        few, many = (
            (middle, many) if probability(nearer / middle, farther / middle) >= proof else (few, middle)
        )
    return few


def percent(share: float) -> Number:
    """A share in whole per cent, rounded down: what falls short of proof must not read as proof."""
    return constant("", "", form(RATIO, 0, "%"), math.floor(share * 100 + 1e-9) / 100)
