"""Threads: a wire against the true helicoid, stripping against its limits, drills there and back. The numbers of others are in screw_threads_checks.py."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq, minimize

from calc.formulas import screw_threads as screw
from calc.reference.standards.threads import THREADS, external, internal

threads = st.sampled_from(sorted(THREADS)).map(THREADS.get)


@pytest.mark.parametrize(
    "name, wire", [("M10x1.5", 0.866e-3), ("M3x0.5", 0.29e-3), ("M24x3", 1.73e-3), ("M10x1.5", 0.95e-3)]
)
def test_a_wire_lies_on_the_true_helicoid(name, wire):
    """The wire's axis is a straight line across the groove at the lead angle; its least distance to the flank, sought by scipy, must be its radius."""
    thread = THREADS[name]
    P, r0 = thread.P, thread.pitch_diameter / 2
    slope = math.atan(P / (2 * math.pi * r0))

    def gap(rho):
        """Least distance between the wire's axis, at radius rho, and the flank above it."""

        def apart(at):
            r, turn = at[0] * r0, at[1]
            # the groove's middle is at z = 0, where the flank is P/4 away at the pitch line
            flank = (
                r * math.cos(turn),
                r * math.sin(turn),
                P * turn / (2 * math.pi) + P / 4 + (r - r0) * math.tan(math.pi / 6),
            )
            x, y, z = flank[0] - rho, flank[1], flank[2]
            along = y * math.cos(slope) + z * math.sin(slope)
            return (x * x + y * y + z * z - along * along) / r0**2

        found = minimize(
            apart, (1.0, 0.0), method="Nelder-Mead", options={"xatol": 1e-10, "fatol": 1e-17, "maxiter": 2000}
        )
        return math.sqrt(found.fun) * r0

    rho = brentq(lambda x: gap(x) - wire / 2, r0, r0 + 1.5 * wire, xtol=1e-10)
    ours = screw.over_wires(
        thread.pitch_diameter, P, wire, screw.wire_factor(screw.lead_tangent(P, thread.pitch_diameter))
    )
    assert 2 * rho + wire == pytest.approx(ours, abs=0.5e-6)
    assert screw.over_wires(thread.pitch_diameter, P, wire, 3) < ours


@given(threads, st.floats(0.51, 1.0))
def test_readings_over_wires_go_back(thread, share):
    factor, wire = screw.wire_factor(screw.lead_tangent(thread.P, thread.pitch_diameter)), share * thread.P
    reading = screw.over_wires(thread.pitch_diameter, thread.P, wire, factor)
    assert screw.pitch_diameter_over_wires(reading, thread.P, wire, factor) == pytest.approx(
        thread.pitch_diameter, rel=1e-12
    )
    assert 3 < factor < 3.03


@given(threads, st.floats(1e-3, 0.05))
def test_stripping_areas_stay_under_the_whole_cylinder_and_grow_with_length(thread, length):
    bolt, hole = (
        (external(thread, "6g"), internal(thread, "6H"))
        if thread.system == "metric"
        else (external(thread, "2A"), internal(thread, "2B"))
    )
    n = screw.hole_shear_area(thread.P, length, bolt.major.low, hole.pitch.high)
    s = screw.bolt_shear_area(thread.P, length, bolt.pitch.low, hole.minor.high)
    assert 0.4 < s / (math.pi * thread.minor * length) < 0.8 < 0.75 + n / (math.pi * thread.d * length) < 1.75
    assert s < n  # the bolt's thread breaks on the smaller cylinder: of like metals it strips first
    assert screw.hole_shear_area(thread.P, 2 * length, bolt.major.low, hole.pitch.high) == pytest.approx(
        2 * n
    )


@given(threads)
def test_stripping_areas_of_a_thread_without_play_are_those_of_the_basic_profile(thread):
    """Without play or tolerance the flank is P·7/8 thick at the nominal diameter and P·3/4 at the basic bore (ISO 68-1)."""
    basic = thread.d - 0.75 * math.sqrt(3) / 2 * thread.P, thread.d - 1.25 * math.sqrt(3) / 2 * thread.P
    assert screw.hole_shear_area(thread.P, thread.P, thread.d, basic[0]) == pytest.approx(
        math.pi * thread.d * thread.P * 7 / 8
    )
    assert screw.bolt_shear_area(thread.P, thread.P, basic[0], basic[1]) == pytest.approx(
        math.pi * basic[1] * thread.P * 3 / 4
    )


@given(threads, st.floats(0.3, 1.0), st.sampled_from([screw.FULL_CUT, screw.FULL_HEIGHT, screw.FULL_FORMED]))
def test_drills_go_there_and_back(thread, share, full):
    assert screw.share_of_thread(
        thread.d, thread.P, screw.drill_for(thread.d, thread.P, share, full), full
    ) == pytest.approx(share)


def test_a_full_height_drills_to_the_basic_bore():
    for thread in THREADS.values():
        assert screw.drill_for(thread.d, thread.P, 1, screw.FULL_HEIGHT) == pytest.approx(
            thread.minor, abs=5.1e-7
        )
