"""Torque and preload against the mechanics of the wedge, worked exactly, and against the stress integrated over the section."""

from math import atan, cos, pi, radians, sqrt, tan

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad

from calc.formulas import bolt_torque

PITCHES, FRICTION = st.floats(0.5e-3, 3e-3), st.floats(0.05, 0.3)


@given(PITCHES, st.floats(7, 14), FRICTION, FRICTION, st.floats(1.1, 1.6))
def test_lever_against_the_exact_wedge(pitch, turns, thread, head, over):
    """T/F = d₂/2·tan(φ + ρ′) + D_b/2·µ with tan φ = P/(π·d₂) and tan ρ′ = µ/cos(flank, in the section square to the thread)."""
    d2 = turns * pitch
    bearing = over * d2
    slope = atan(pitch / (pi * d2))
    rubs = atan(thread / cos(atan(tan(radians(30)) * cos(slope))))
    exact = d2 / 2 * tan(slope + rubs) + bearing / 2 * head
    assert bolt_torque.lever(pitch, d2, bearing, thread, head) == pytest.approx(exact, rel=0.02)


@given(PITCHES, st.floats(7, 14), FRICTION, st.floats(1.1, 1.6), st.floats(1.02, 1.2))
def test_friction_behind_a_nut_factor_makes_that_nut_factor_again(pitch, turns, friction, over, outside):
    d2 = turns * pitch
    bearing, diameter = over * d2, outside * d2
    nut_factor = bolt_torque.lever(pitch, d2, bearing, friction, friction) / diameter
    assert bolt_torque.friction_of(nut_factor, diameter, pitch, d2, bearing) == pytest.approx(
        friction, rel=1e-9
    )


def test_shear_is_that_of_a_section_which_yields_all_over():
    """Pull F on π·d²/4; torque = ∫ τ·r·2πr dr with τ the same everywhere."""
    d, arm = 8e-3, 1.1e-3
    torque_of_unit_shear, _ = quad(lambda r: 2 * pi * r * r, 0, d / 2)
    tension_of_unit_pull = 1 / (pi * d * d / 4)
    assert bolt_torque.twist(d, arm) == pytest.approx(arm / torque_of_unit_shear / tension_of_unit_pull)


def test_pull_and_twist_together_are_von_mises():
    """σ_v² = σ² + 3τ²."""
    assert bolt_torque.together(400e6, 0.0) == 400e6
    assert bolt_torque.together(400e6, 0.5) == pytest.approx(sqrt(400e6**2 + 3 * 200e6**2))


@given(st.floats(0, 900e6), st.floats(50e6, 900e6), st.floats(0.05, 0.6))
def test_running_keeps_half_the_twist_of_tightening(tension, tightened, twist):
    """Against the principal stresses of that pull and half of that shear: σ_v² = σ₁² − σ₁·σ₂ + σ₂²."""
    shear = twist * tightened / 2
    swing = sqrt((tension / 2) ** 2 + shear**2)
    first, second = tension / 2 + swing, tension / 2 - swing
    assert bolt_torque.running(tension, twist, tightened) == pytest.approx(
        sqrt(first**2 - first * second + second**2)
    )
