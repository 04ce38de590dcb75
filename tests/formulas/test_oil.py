"""Walther's line against the equation solved by scipy, its points, and what must always be so."""

import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.optimize import fsolve

from calc.core.kinds import KINEMATIC_VISCOSITY, TEMPERATURE
from calc.core.working import constant, form
from calc.formulas import oil
from tests.checks.formulas.oil import CHECKS

FIVE = [c for c in CHECKS if c.kind == "standard"]


@pytest.mark.parametrize("check", FIVE, ids=lambda c: c.what)
def test_checks_are_on_the_line_that_scipy_draws(check):
    """A and B solved together from both points, then the viscosity that satisfies the equation is searched for."""

    def both(x):
        return [
            math.log10(math.log10(nu + 0.7)) - x[0] + x[1] * math.log10(t)
            for nu, t in ((check.inputs["nu_40"], 313.15), (check.inputs["nu_100"], 373.15))
        ]

    a, b = fsolve(both, (9, 3.5), xtol=1e-13)
    (found,) = fsolve(
        lambda z: math.log10(z[0]) - a + b * math.log10(check.inputs["celsius"] + 273.15), [1.2], xtol=1e-13
    )  # z = log(ν + 0.7)
    assert 10**found - 0.7 == pytest.approx(check.expected, abs=check.tolerance)


def test_line_reaches_down_to_thin_liquids_and_to_the_cold():
    """The two logarithms written out: as thin as 0.4 mm²/s, and at 1 K."""
    for nu in (0.4, 1.0, 1.5):
        assert oil.walther(nu * 1e-6) == pytest.approx(
            math.log(math.log(nu + 0.7) / math.log(10)) / math.log(10)
        )
    assert oil.log_temperature(1.0) == 0


def test_constants_of_two_lines():
    """A and B of the two oils, to the digits that the hand calculation had."""
    for nu_40, nu_100, a, b in ((100, 11.1, 9.20341, 3.56675), (46, 6.8, 9.41799, 3.68444)):
        slope = oil.slope(nu_40 * 1e-6, 313.15, nu_100 * 1e-6, 373.15)
        assert (oil.height(nu_40 * 1e-6, 313.15, slope), slope) == (
            pytest.approx(a, abs=1e-5),
            pytest.approx(b, abs=1e-5),
        )


def test_traced_numbers_give_what_floats_give():
    nu, t = form(KINEMATIC_VISCOSITY, 2), form(TEMPERATURE, 0)
    numbers = [
        constant(s, s, shape, value)
        for s, shape, value in (
            ("T", t, 343.15),
            ("a", nu, 100e-6),
            ("b", t, 313.15),
            ("c", nu, 11.5e-6),
            ("d", t, 373.15),
        )
    ]
    assert float(oil.viscosity_between(*numbers)) == pytest.approx(
        oil.viscosity_between(*map(float, numbers)), rel=1e-14
    )
    assert float(oil.viscosity_between(*numbers)) == pytest.approx(27.844e-6, abs=5e-10)


@pytest.mark.parametrize(
    "call, words",
    [
        (lambda: oil.walther(0.3e-6), "0.3 mm²/s or less"),
        (lambda: oil.walther(0.0), "0.3 mm²/s or less"),
        (lambda: oil.log_temperature(0.0), "0 K"),
        (lambda: oil.log_temperature(-5.0), "0 K"),
        (lambda: oil.slope(10e-6, 313.15, 100e-6, 373.15), "thinner as it gets warmer"),
        (lambda: oil.slope(100e-6, 373.15, 10e-6, 313.15), "thinner as it gets warmer"),
        (lambda: oil.slope(100e-6, 313.15, 10e-6, 313.15), "thinner as it gets warmer"),
        (lambda: oil.slope(10e-6, 313.15, 10e-6, 373.15), "thinner as it gets warmer"),
    ],
)
def test_what_is_off_the_line_is_refused(call, words):
    with pytest.raises(ValueError, match=words):
        call()


def test_grades_get_thinner_and_thicker_grades_are_thicker():
    for name, at_40, at_100 in oil.GRADES.values():
        assert at_40 > at_100 > 2, name
    sae = [oil.GRADES[f"sae-{n}"][2] for n in (30, 40, 50)]
    assert 9.3 <= sae[0] < 12.5 <= sae[1] < 16.3 <= sae[2] < 21.9  # SAE J300's limits at 100 °C, from memory
    for id, low, high in (
        ("sae-10w-30", 9.3, 12.5),
        ("sae-10w-40", 12.5, 16.3),
        ("sae-15w-40", 12.5, 16.3),
        ("sae-20w-50", 16.3, 21.9),
    ):
        assert low <= oil.GRADES[id][2] < high
    for id, grade in (("iso-vg-10", 10), ("iso-vg-46", 46)):
        assert oil.GRADES[id][1] == pytest.approx(grade, rel=0.1)  # ISO 3448: within a tenth at 40 °C


@given(st.floats(3, 500), st.floats(2.1, 400), st.floats(250, 450), st.floats(250, 450))
def test_warmer_is_thinner_and_the_points_may_be_swapped(a, b, t, u):
    thick, thin = max(a, b), min(a, b)
    assume(thick > thin * 1.01 and abs(t - u) > 0.1)
    points = (thick * 1e-6, 313.15, thin * 1e-6, 373.15)
    try:
        cold, warm = (oil.viscosity_between(x, *points) for x in sorted((t, u)))
    except OverflowError:
        assume(False)
    assert cold > warm > 0.3e-6 * (1 - 1e-9)
    assert oil.viscosity_between(t, *points[2:], *points[:2]) == pytest.approx(
        oil.viscosity_between(t, *points), rel=1e-6
    )


def test_density_falls_as_the_oil_grows():
    """A volume that grows by 7 % over 100 K holds its mass."""
    assert oil.density_at(880.0, 388.15, 288.15) * 1.07 == pytest.approx(880.0)
    assert oil.density_at(880.0, 288.15, 288.15) == 880.0
