"""Probabilities of conformity and guards, from outside."""
from calc.core.conformance import accepted, probability_within, quantile
from tests.checks import Check

NORM = "scipy.stats.norm (JCGM 106, clause 7)"


def guarded(u, low, high, end):
    return accepted(u, low, high)[int(end)]


CHECKS = [
    Check("Conformity", "probability within", dict(reading=9.6, u=0.25, low=9.0, high=10.0), 0.937003, 5e-7, probability_within, NORM, "library"),
    Check("Conformity", "probability within", dict(reading=54.987, u=0.002, low=54.970, high=54.990), 0.933193, 5e-7, probability_within, NORM, "library"),
    Check("Conformity", "probability within, two standard uncertainties inside one limit", dict(reading=8.0, u=1.0, low=None, high=10.0), 0.977250, 5e-7, probability_within, NORM, "library"),
    Check("Conformity", "probability within", dict(reading=54.992, u=0.003, low=54.98, high=55.0), 0.996138, 5e-7, probability_within, NORM, "library"),
    Check("Conformity", "probability within, both limits near", dict(reading=85.498, u=0.004, low=85.49, high=85.505), 0.937191, 5e-7, probability_within, NORM, "library"),
    Check("Conformity", "probability within, on a limit", dict(reading=10.0, u=0.001, low=9.0, high=10.0), 0.5, 1e-12, probability_within, "half of a normal lies on either side", "limit"),
    Check("Conformity", "standard uncertainties to 95 % on one side", dict(probability=0.95), 1.644854, 5e-7, quantile, "scipy.stats.norm.ppf", "library"),
    Check("Conformity", "least reading accepted at 95 %", dict(u=0.003, low=54.98, high=55.0, end=0), 54.98493, 5e-6, guarded, "lower limit + 1.645·u (ISO 14253-1)", "standard"),
    Check("Conformity", "greatest reading accepted at 95 %", dict(u=0.003, low=54.98, high=55.0, end=1), 54.99507, 5e-6, guarded, "upper limit − 1.645·u (ISO 14253-1)", "standard"),
]
