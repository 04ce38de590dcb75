"""Leak of a narrow gap against the film summed up round it, the exact annulus, and its laws."""

from math import cos, log, pi

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad

from calc.formulas import annular_gap as gap
from tests.checks.formulas.annular_gap import CHECKS

LEAKS = [c for c in CHECKS if c.what.startswith("leak,")]


def summed(d, c, L, mu, p, eps):
    """Local film, cubed, round half the gap twice."""
    return quad(lambda t: (c * (1 + eps * cos(t))) ** 3, 0, pi, epsabs=0)[0] * 2 * (d / 2) * p / (12 * mu * L)


def annulus(inner, outer, L, mu, p):
    """Navier–Stokes in a concentric annulus: axial speed with a logarithm in it, integrated over the ring."""
    k = (outer**2 - inner**2) / log(outer / inner)

    def speed(r):
        return p / (4 * mu * L) * (outer**2 - r**2 + k * log(r / outer))

    return quad(lambda r: 2 * pi * r * speed(r), inner, outer, epsabs=0, epsrel=1e-7)[0]


@pytest.mark.parametrize("check", LEAKS, ids=lambda c: c.what)
def test_checks_are_what_the_film_summed_up_gives(check):
    i = check.inputs
    assert summed(
        i["d_mm"] * 1e-3, i["c_um"] * 1e-6, i["L_mm"] * 1e-3, i["mu_Pa_s"], i["p_MPa"] * 1e6, i["eps"]
    ) * 1e9 == pytest.approx(check.expected, abs=check.tolerance)


@pytest.mark.parametrize(
    "inner, outer, L, mu, p, exact", [(15.976, 16, 20, 0.01, 5, 180.820), (18, 18.012, 25, 0.03, 6, 8.14572)]
)
def test_checks_of_the_exact_annulus(inner, outer, L, mu, p, exact):
    assert annulus(inner / 2 * 1e-3, outer / 2 * 1e-3, L * 1e-3, mu, p * 1e6) * 1e9 == pytest.approx(
        exact, rel=2e-5
    )


def test_narrow_gap_meets_the_exact_annulus_as_it_narrows():
    """On the gap's middle the error goes with the square of c/d; at c/d = 0.01 it is far under a per cent."""
    for share, error in ((0.01, 1e-3), (0.003, 1e-4)):
        c = 16e-3 * share
        assert gap.leak(16e-3 + c, c, 20e-3, 0.01, 1e5, 0.0) == pytest.approx(
            annulus(8e-3, 8e-3 + c, 20e-3, 0.01, 1e5), rel=error
        )


positive = st.floats(0.1, 10)


@given(positive, positive, positive, positive, positive, st.floats(0, 1), st.floats(1.1, 4))
def test_laws(d, c, L, mu, p, eps, k):
    q = gap.leak(d, c, L, mu, p, eps)
    assert gap.leak(d, k * c, L, mu, p, eps) == pytest.approx(k**3 * q)
    assert (
        gap.leak(d, c, k * L, mu, p, eps)
        == pytest.approx(q / k)
        == pytest.approx(gap.leak(d, c, L, k * mu, p, eps))
    )
    assert (
        gap.leak(d, c, L, mu, k * p, eps)
        == pytest.approx(k * q)
        == pytest.approx(gap.leak(k * d, c, L, mu, p, eps))
    )
    assert q <= gap.leak(d, c, L, mu, p, 1.0) * (1 + 1e-12) and q == pytest.approx(
        summed(d, c, L, mu, p, eps)
    )
    assert gap.leak(d, c, L, mu, p, 1.0) == pytest.approx(2.5 * gap.leak(d, c, L, mu, p, 0.0))
    assert gap.clearance_for(c, 8.0, 1.0) == pytest.approx(2 * c)


def test_reynolds_number_is_that_of_the_hydraulic_diameter():
    d, c, q, rho, mu = 16e-3, 12e-6, 2e-7, 850.0, 0.01
    area, wetted = pi * d * c, 2 * pi * d
    assert gap.reynolds(q, d, rho, mu) == pytest.approx(rho * (q / area) * (4 * area / wetted) / mu)
