"""Outside numbers for Walther's line. Worked anew, by root finding on the equation as the standard writes it, in test_oil.py."""
from calc.formulas import oil
from tests.checks import Check

HAND = "ASTM D341 worked by hand with a table of logarithms' arithmetic, T in K"


def between(nu_40, nu_100, celsius):
    return oil.viscosity_between(celsius + 273.15, nu_40 * 1e-6, 313.15, nu_100 * 1e-6, 373.15) * 1e6


CHECKS = [
    *(Check("Oil", f"viscosity at {celsius} °C, mm²/s", dict(nu_40=a, nu_100=b, celsius=celsius), value, tolerance, between, HAND, "standard")
      for a, b, celsius, value, tolerance in ((100, 11.5, 70, 27.844, 0.0005), (100, 11.5, 120, 7.3424, 0.00005), (100, 11.5, 0, 1686.9, 0.05),
                                              (100, 11.1, 80, 19.465, 0.0005), (46, 6.8, 20, 133.84, 0.005))),
    Check("Oil", "viscosity at the point it was drawn through, mm²/s", dict(nu_40=160, nu_100=18, celsius=100), 18.0, 1e-9, between, "the line goes through its points", "limit"),
]
