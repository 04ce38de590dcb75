"""Is a size within its limits, when the reading is in doubt? ISO 14253-1's decision rules with the probabilities of JCGM 106.

The doubt is taken as normal. Expanded uncertainty U = k·u with k = 2 throughout, unless a function says otherwise.
"""
import math

COVERAGE = 2  # k: about 95 % (GUM)
PROOF = 0.95  # ISO 14253-1:2017: conformity is proven at a probability of 95 % unless agreed otherwise (from memory)
GUARD = 1.6448536269514722  # standard uncertainties to a one-sided 95 % of a normal


def phi(x: float) -> float:
    """Standard normal distribution function, accurate in both tails."""
    return 0.5 * math.erfc(-x / math.sqrt(2))


def probability_within(reading: float, u: float, low: float | None, high: float | None) -> float:
    """Probability that the true size lies within its limits: Φ((U−y)/u) − Φ((L−y)/u) (JCGM 106, 7.3). `u` is standard; a
    limit that does not exist is None. With u = 0 it is 1 or 0, a limit itself belonging to what it allows."""
    if u == 0:
        return float((low is None or reading >= low) and (high is None or reading <= high))
    below = 1.0 if high is None else phi((high - reading) / u)
    above = 1.0 if low is None else phi((reading - low) / u)
    return max(0.0, below + above - 1.0) if below < 1 or above < 1 else 1.0


def decide(probability: float, proof: float = PROOF) -> str:
    """'in', 'out' or 'cannot tell'."""
    return "in" if probability >= proof else "out" if 1 - probability >= proof else "cannot tell"
