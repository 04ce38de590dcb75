"""Springs against the elastic wire itself: energy of the twisted wire, stress in a curved bar, waves in a chain of masses."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad
from scipy.linalg import eigh_tridiagonal
from scipy.optimize import brentq

from calc.formulas import spring
from tests.checks.formulas.spring import CHECKS, GPA, MM, SIZES, rate, surge

ROUND = (
    st.floats(2.0, 6.0),
    st.floats(18.0, 45.0),
    st.floats(2.5, 10.0),
    st.floats(77.0, 82.0),
)  # wire, mean diameter, turns, GPa


@pytest.mark.parametrize("name", SIZES)
def test_rate_is_that_of_the_energy_in_the_twisted_wire(name):
    """Castigliano: deflection = ∂/∂F ∫ T²/(2·G·J) along the wire, T = F·D/2, J by integrating r² over the section."""
    wire, mean, active, modulus = SIZES[name]
    polar = quad(lambda r: 2 * np.pi * r**3, 0, wire * MM / 2)[0]
    give = quad(lambda s: (mean * MM / 2) ** 2 / (modulus * GPA * polar), 0, np.pi * mean * MM * active)[0]
    assert spring.rate(modulus * GPA, wire * MM, mean * MM, active) == pytest.approx(1 / give, rel=1e-9)


@pytest.mark.parametrize("name, expected", [("of 4 mm wire", 392.53), ("of 3.6 mm wire", 567.41)])
def test_surge_is_the_lowest_tone_of_a_chain_of_masses(name, expected):
    wire, mean, active, modulus = SIZES[name]
    n = 4000
    mass = 7850 * np.pi * (wire * MM) ** 2 / 4 * np.pi * mean * MM * active / n
    stiff = rate(wire, mean, active, modulus) * 1000 * n
    lowest = eigh_tridiagonal(
        np.full(n - 1, 2 * stiff / mass),
        np.full(n - 2, -stiff / mass),
        eigvals_only=True,
        select="i",
        select_range=(0, 0),
    )[0]
    assert surge(7850.0, wire_mm=wire, mean_mm=mean, active=active, modulus_GPa=modulus) == pytest.approx(
        lowest**0.5 / (2 * np.pi), rel=1e-6
    )
    assert lowest**0.5 / (2 * np.pi) == pytest.approx(expected, abs=0.005)


def test_surge_has_the_closed_form_of_handbooks():
    """f = d/(2π·D²·n)·√(G/(2ρ)): the same without rate and mass."""
    wire, mean, active, modulus = (x * y for x, y in zip(SIZES["of 4 mm wire"], (MM, MM, 1, GPA)))
    closed = wire / (2 * np.pi * mean**2 * active) * (modulus / (2 * 7850)) ** 0.5
    assert spring.surge_frequency(
        spring.rate(modulus, wire, mean, active), spring.active_mass(wire, mean, active, 7850)
    ) == pytest.approx(closed, rel=1e-12)


def test_share_of_endless_life_is_how_far_the_stresses_may_grow():
    amplitude, mean, amplitude_borne, mean_borne, strength = 167.0, 505.0, 398.0, 534.0, 1206.0

    def over(grow):
        """Above the line through (mean_borne, amplitude_borne) and (strength, 0)?"""
        return amplitude * grow - amplitude_borne * (strength - mean * grow) / (strength - mean_borne)

    share = 1 / brentq(over, 0.1, 10)
    assert share == pytest.approx(next(c.expected for c in CHECKS if "167 MPa" in c.what), abs=5e-8)
    assert spring.endurance_share(amplitude, mean, amplitude_borne, mean_borne, strength) == pytest.approx(
        share, rel=1e-9
    )


@pytest.mark.parametrize("index", [4, 6.75, 12, 20])
def test_wahls_factor_lies_just_above_that_of_the_standard(index):
    """EN 13906-1 (from memory): (C + 0.5)/(C − 0.75)."""
    assert 1 < spring.wahl(index) / ((index + 0.5) / (index - 0.75)) < 1.02


@given(*ROUND, st.floats(30.0, 60.0), st.floats(0.5, 20.0))
def test_two_loads_give_back_the_spring(wire, mean, active, modulus, free, apart):
    k = spring.rate(modulus * GPA, wire * MM, mean * MM, active)
    high, low = free - 5.0, free - 5.0 - apart
    loads = [spring.load_at(h * MM, 0.0, free * MM, k) for h in (high, low)]
    assert spring.rate_of(*loads, high * MM, low * MM) == pytest.approx(k, rel=1e-9)
    assert spring.free_length(loads[0], high * MM, k) == pytest.approx(free * MM, rel=1e-9)
    assert spring.load_at(low * MM, loads[0], high * MM, k) == pytest.approx(loads[1], rel=1e-9)


@given(*ROUND, st.floats(1.01, 1.5))
def test_thicker_wire_is_stiffer_by_the_fourth_power_and_a_wider_coil_softer_by_the_third(
    wire, mean, active, modulus, more
):
    k = rate(wire, mean, active, modulus)
    assert rate(wire * more, mean, active, modulus) == pytest.approx(k * more**4, rel=1e-9)
    assert rate(wire, mean * more, active, modulus) == pytest.approx(k / more**3, rel=1e-9)
    assert surge(
        7850.0, wire_mm=wire, mean_mm=mean, active=active * more, modulus_GPa=modulus
    ) == pytest.approx(
        surge(7850.0, wire_mm=wire, mean_mm=mean, active=active, modulus_GPa=modulus) / more, rel=1e-9
    )


@given(st.floats(1.5, 30.0), st.floats(1.5, 30.0))
def test_tighter_coil_has_the_larger_factor(a, b):
    tight, wide = sorted((a, b))
    assert spring.wahl(tight) >= spring.wahl(wide) > 1
