"""Press fits against the differential equation of the thick cylinder, its limits, and what must always be so."""

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.integrate import solve_bvp

from calc.formulas import press_fit as fit
from tests.checks.formulas.press_fit import GPA, MM, MPA, RINGS


def two_rings(bore, joint, outside, interference, e_i, nu_i, e_o, nu_o, strain_i=0.0, strain_o=0.0):
    """Radial displacement in both rings by scipy's boundary value solver: p, and hoop and radial stress as functions of radius.

    Works in mm and GPa so that the numbers are of like size. Each ring is stretched onto 0…1. Strains are free thermal ones.
    """
    r0, r1, r2 = bore / 2 / MM, joint / 2 / MM, outside / 2 / MM
    inner, outer = (r0, r1, e_i / GPA, nu_i, strain_i), (r1, r2, e_o / GPA, nu_o, strain_o)

    def radial(r, u, du, ring):
        _, _, e, nu, free = ring
        return e / (1 - nu**2) * (du + nu * u / r) - e * free / (1 - nu)

    def hoop(r, u, du, ring):
        _, _, e, nu, free = ring
        return e / (1 - nu**2) * (u / r + nu * du) - e * free / (1 - nu)

    def rates(s, y):
        out = []
        for (a, b, *_), (u, du) in ((inner, y[:2]), (outer, y[2:])):
            r = a + s * (b - a)
            out += [du * (b - a), (u / r**2 - du / r) * (b - a)]
        return np.array(out)

    def ends(ya, yb):
        return np.array(
            [
                radial(r0, ya[0], ya[1], inner),
                radial(r2, yb[2], yb[3], outer),
                radial(r1, yb[0], yb[1], inner) - radial(r1, ya[2], ya[3], outer),
                (ya[2] - yb[0] - interference / 2 / MM) * 100,
            ]
        )

    s = np.linspace(0, 1, 41)
    found = solve_bvp(rates, ends, s, np.zeros((4, s.size)), tol=1e-9, max_nodes=20000)
    assert found.success

    def stress(diameter, ring, first):
        a, b, *_ = ring
        r = diameter / 2 / MM
        y = found.sol((r - a) / (b - a))
        return hoop(r, y[first], y[first + 1], ring) * GPA, radial(r, y[first], y[first + 1], ring) * GPA

    return lambda d: stress(d, inner, 0), lambda d: stress(d, outer, 2)


def si(row):
    bore, joint, outside, interference, e_i, nu_i, e_o, nu_o = row
    return bore * MM, joint * MM, outside * MM, interference * MM, e_i * GPA, nu_i, e_o * GPA, nu_o


def pressure(bore, joint, outside, interference, e_i, nu_i, e_o, nu_o):
    return fit.contact_pressure(
        interference, joint, fit.joint_compliance(bore, joint, outside, e_i, nu_i, e_o, nu_o)
    )


@pytest.mark.parametrize("row", RINGS.values(), ids=RINGS)
def test_whole_stress_field_agrees_with_the_differential_equation(row):
    bore, joint, outside, *_ = rings = si(row)
    inner, outer = two_rings(*rings)
    p = pressure(*rings)
    assert -inner(joint)[1] == pytest.approx(p, rel=1e-6)
    for d in np.linspace(bore, joint, 7):
        assert fit.inner_stress(d, p, bore, joint) == pytest.approx(inner(d), rel=1e-5, abs=1e-5 * p)
    for d in np.linspace(joint, outside, 7):
        assert fit.outer_stress(d, p, joint, outside) == pytest.approx(outer(d), rel=1e-5, abs=1e-5 * p)
    assert fit.inner_bore_hoop(p, bore, joint) == pytest.approx(inner(bore)[0], rel=1e-6)
    assert fit.inner_joint_hoop(p, bore, joint) == pytest.approx(inner(joint)[0], rel=1e-6)
    assert fit.outer_joint_hoop(p, joint, outside) == pytest.approx(outer(joint)[0], rel=1e-6)
    assert fit.outer_outside_hoop(p, joint, outside) == pytest.approx(outer(outside)[0], rel=1e-6)


@pytest.mark.parametrize("rise_i, rise_o", [(180, 180), (330, 170), (-98, 0)])
def test_parts_of_unlike_temperature_agree_with_the_differential_equation(rise_i, rise_o):
    """Thermal strain inside the equation: the difference of the free strains acts just like interference."""
    bore, joint, outside, delta, *rest = si(RINGS["ring of 37 mm"])
    strain_i, strain_o = 11e-6 * rise_i, 21.5e-6 * rise_o
    inner, _ = two_rings(bore, joint, outside, delta, *rest, strain_i, strain_o)
    left = fit.interference_at(delta, joint, strain_i, strain_o)
    assert pressure(bore, joint, outside, left, *rest) == pytest.approx(-inner(joint)[1], rel=1e-6)


@pytest.mark.parametrize("row", RINGS.values(), ids=RINGS)
def test_first_yield_is_where_the_field_says(row):
    bore, joint, outside, *_ = si(row)
    across_inner = np.linspace(bore, joint, 400)
    across_outer = np.linspace(joint, outside, 400)
    p = fit.inner_yield_pressure(300 * MPA, bore, joint)
    assert max(fit.von_mises(*fit.inner_stress(d, p, bore, joint)) for d in across_inner) == pytest.approx(
        300 * MPA, rel=1e-9
    )
    p = fit.outer_yield_pressure(200 * MPA, joint, outside)
    assert max(fit.von_mises(*fit.outer_stress(d, p, joint, outside)) for d in across_outer) == pytest.approx(
        200 * MPA, rel=1e-9
    )


def test_hoop_alone_would_promise_too_much_of_the_wall():
    _, joint, outside, *_ = si(RINGS["iron ring in aluminium, thick wall"])
    p = fit.outer_yield_pressure(200 * MPA, joint, outside)
    assert fit.outer_joint_hoop(p, joint, outside) < 0.9 * 200 * MPA


def test_solid_plug_is_pressed_alike_everywhere():
    """Limit: no bore, no concentration: hoop = radial = −p. A pinhole, however small, doubles the hoop stress at its edge."""
    for d in (1 * MM, 10 * MM, 20 * MM):
        assert fit.inner_stress(d, 5.0, 0.0, 20 * MM) == pytest.approx((-5.0, -5.0))
    assert fit.inner_bore_hoop(5.0, 1e-6 * MM, 20 * MM) == pytest.approx(-10.0)


def test_thin_rings_follow_the_thin_shell():
    """Limit: hoop = p·R/t in a thin wall; and both thin rings share the interference as 1/(E·t)."""
    mean, t = 50 * MM, 0.02 * MM
    bore, outside = mean - 2 * t, mean + 2 * t
    p = pressure(bore, mean, outside, 0.01 * MM, 200 * GPA, 0.3, 100 * GPA, 0.3)
    assert fit.outer_joint_hoop(p, mean, outside) == pytest.approx(p * mean / 2 / t, rel=2e-3)
    assert p == pytest.approx(
        0.01 * MM / mean / (mean / 2 / t) / (1 / (200 * GPA) + 1 / (100 * GPA)), rel=2e-3
    )


def test_roughness_takes_from_the_interference_what_the_old_rule_says():
    """DIN 7190 (older issue), from memory: Rz 4 and 6 µm take 8 µm."""
    assert fit.roughness_loss(4e-6, 6e-6) == pytest.approx(8e-6)


def test_holding_force_is_friction_times_normal_force():
    """37 mm joint, 6 mm long, 20 MPa, µ 0.12: area 697.4 mm², 13.95 kN pressed, 1.674 kN held."""
    assert fit.holding_force(20 * MPA, 0.12, 37 * MM, 6 * MM) == pytest.approx(1673.8, abs=0.05)
    assert fit.holding_torque(20 * MPA, 0.12, 37 * MM, 6 * MM) == pytest.approx(1673.8 * 0.0185, abs=0.01)


sizes = st.floats(5.0, 80.0)
share = st.floats(0.05, 0.95)
interferences = st.floats(0.001, 0.3)
stiffness = st.floats(20.0, 250.0)
poisson = st.floats(0.0, 0.45)
alphas = st.floats(5e-6, 30e-6)


@st.composite
def fits(draw):
    """Any sensible pair of rings, in SI: bore, joint, outside, interference, E and ν of each."""
    joint = draw(sizes)
    return (
        joint * draw(share) * MM,
        joint * MM,
        joint / draw(share) * MM,
        draw(interferences) * MM,
        draw(stiffness) * GPA,
        draw(poisson),
        draw(stiffness) * GPA,
        draw(poisson),
    )


@given(fits())
def test_movements_of_both_parts_make_up_the_interference(f):
    """Compatibility: the wall opens and the ring closes by just δ together."""
    bore, joint, outside, delta, e_i, nu_i, e_o, nu_o = f
    p = pressure(*f)
    closed = fit.inner_joint_change(p, bore, joint, e_i, nu_i)
    opened = fit.outer_joint_change(p, joint, outside, e_o, nu_o)
    assert closed < 0 < opened
    assert opened - closed == pytest.approx(delta, rel=1e-9)


@given(fits())
def test_movements_at_the_free_faces_follow_from_hookes_law(f):
    bore, joint, outside, _, e_i, _, e_o, _ = f
    p = pressure(*f)
    assert fit.inner_bore_change(p, bore, joint, e_i) == pytest.approx(
        bore * fit.inner_stress(bore, p, bore, joint)[0] / e_i
    )
    assert fit.outer_outside_change(p, joint, outside, e_o) == pytest.approx(
        outside * fit.outer_stress(outside, p, joint, outside)[0] / e_o
    )


@given(fits(), st.floats(1.001, 5.0))
def test_more_interference_presses_more_and_a_thicker_wall_or_ring_too(f, more):
    bore, joint, outside, delta, *rest = f
    p = pressure(*f)
    assert pressure(bore, joint, outside, delta * more, *rest) == pytest.approx(p * more, rel=1e-9)
    assert pressure(bore, joint, outside * more, delta, *rest) > p
    assert pressure(bore / more, joint, outside, delta, *rest) > p


@given(fits())
def test_interference_and_pressure_are_each_others_reverse(f):
    bore, joint, outside, delta, *rest = f
    stiff = fit.joint_compliance(bore, joint, outside, *rest)
    assert fit.interference_for(fit.contact_pressure(delta, joint, stiff), joint, stiff) == pytest.approx(
        delta, rel=1e-12
    )


@given(fits(), st.floats(-0.3, 0.0))
def test_a_loose_ring_is_not_held_by_a_negative_pressure(f, gap):
    bore, joint, outside, _, *rest = f
    assert pressure(bore, joint, outside, gap * MM, *rest) == 0.0


@given(sizes, interferences, alphas, st.floats(73.0, 700.0))
def test_like_parts_of_like_temperature_keep_their_interference(joint, delta, alpha, temperature):
    strain = fit.free_strain(alpha, temperature, 293.15)
    assert fit.interference_at(delta * MM, joint * MM, strain, strain) == pytest.approx(delta * MM, rel=1e-12)
    # Exactly, the interference itself grows with the rings: what the first order leaves out.
    exact = (joint + delta) * (1 + strain) - joint * (1 + strain)
    assert exact == pytest.approx(delta * (1 + strain), rel=1e-6)
    assert abs(exact - delta) < 0.013 * delta


@given(sizes, interferences, alphas, alphas, st.floats(0.0, 0.2), st.floats(73.0, 293.15))
def test_a_head_heated_as_told_takes_the_ring_with_just_the_clearance(
    joint, delta, alpha_i, alpha_o, clearance, ring
):
    inner = fit.free_strain(alpha_i, ring, 293.15)
    outer = fit.outer_strain_for_clearance(delta * MM, clearance * MM, joint * MM, inner)
    assert fit.interference_at(delta * MM, joint * MM, inner, outer) == pytest.approx(
        -clearance * MM, abs=1e-12
    )
    hot = fit.temperature_for(outer, alpha_o, 293.15)
    assert fit.free_strain(alpha_o, hot, 293.15) == pytest.approx(outer, rel=1e-9, abs=1e-15)


@given(sizes, interferences, alphas, alphas)
def test_grip_ends_at_the_loosening_temperature(joint, delta, alpha_i, alpha_o):
    assume(alpha_o > alpha_i + 1e-6)
    rise = fit.loosening_rise(delta * MM, joint * MM, alpha_i, alpha_o)
    assert fit.interference_at(delta * MM, joint * MM, alpha_i * rise, alpha_o * rise) == pytest.approx(
        0.0, abs=1e-12
    )


@given(fits())
def test_equivalent_stress_lies_between_tresca_and_0_866_of_it(f):
    """Known bounds in plane stress, √3/2 · Tresca ≤ von Mises ≤ Tresca, with Tresca written out here."""
    bore, joint, outside, *_ = f
    p = pressure(*f)
    for stress in (fit.inner_stress(joint, p, bore, joint), fit.outer_stress(joint, p, joint, outside)):
        tresca = max(abs(stress[0] - stress[1]), abs(stress[0]), abs(stress[1]))
        assert 0.8660254 * tresca * (1 - 1e-9) <= fit.von_mises(*stress) <= tresca * (1 + 1e-9)
