"""Oil through a short hole against the fluids library and the profile of laminar flow, and what must always be so."""

from math import pi, sqrt

import fluids
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad
from scipy.optimize import brentq

from calc.formulas import small_hole


def test_wall_alone_is_the_parabola_summed_up_and_edge_alone_is_the_jet():
    r, L, mu, p = 0.6e-3, 2e-3, 0.5, 1e5
    assert small_hole.wall_flow(2 * r, L, mu, p) == pytest.approx(
        quad(lambda x: 2 * pi * x * p / (4 * mu * L) * (r**2 - x**2), 0, r)[0]
    )
    assert small_hole.edge_flow(2 * r, 850.0, p, 0.62) == pytest.approx(
        0.62 * pi * r**2 * sqrt(2 * p / 850.0)
    )


@given(st.floats(1e-9, 1e-2), st.floats(1e-9, 1e-2))
def test_in_series_less_flows_than_through_either_and_the_shares_make_one(wall, edge):
    q = small_hole.flow(wall, edge)
    assert 0 < q < min(wall, edge) * (1 + 1e-12)
    assert q / wall + (q / edge) ** 2 == pytest.approx(1.0)


def test_limits_of_thick_and_thin_oil():
    assert small_hole.flow(1e-9, 1.0) == pytest.approx(1e-9) and small_hole.flow(1.0, 1e-9) == pytest.approx(
        1e-9
    )


@pytest.mark.parametrize(
    "d, L, mu, rho, p, discharge",
    [
        (1.2e-3, 1.7e-3, 0.0233, 847.0, 1e5, 0.65),
        (0.3e-3, 3e-3, 1.5, 890.0, 3e5, 0.62),
        (1.5e-3, 2e-3, 0.006, 820.0, 6e4, 0.8),
    ],
)
def test_both_together_are_a_pipe_with_a_fitting(d, L, mu, rho, p, discharge):
    """fluids: laminar friction factor and a loss coefficient of 1/C² in one hole, searched for the speed that takes the whole pressure."""

    def taken(v):
        friction = fluids.K_from_f(
            fd=fluids.friction_laminar(fluids.Reynolds(V=v, D=d, rho=rho, mu=mu)), L=L, D=d
        )
        return fluids.dP_from_K(K=friction + 1 / discharge**2, rho=rho, V=v)

    speed = brentq(lambda v: taken(v) - p, 1e-9, 100, xtol=1e-14)
    q = small_hole.flow(small_hole.wall_flow(d, L, mu, p), small_hole.edge_flow(d, rho, p, discharge))
    assert q == pytest.approx(speed * pi / 4 * d**2, rel=1e-9)
    assert small_hole.reynolds(q, d, rho, mu) == pytest.approx(
        fluids.Reynolds(V=speed, D=d, rho=rho, mu=mu), rel=1e-9
    )
