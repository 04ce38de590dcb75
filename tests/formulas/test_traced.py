"""The formulas keep their dimensions: worked with traced numbers they give the same value, in the right unit.

Adding unlike quantities anywhere in a formula raises DimensionError, so this is a dimensional check of every line.
"""

import inspect

import pytest

from calc.core.working import PURE, Number
from calc.formulas import (
    annular_gap,
    bolt_torque,
    fins,
    leak,
    past_yield,
    press_fit,
    rocking,
    rod_load,
    round_cap,
    screw_threads,
    seat_geometry,
    sections,
    small_hole,
    spring,
    valve_curtain,
    warm_reading,
)

LENGTH, AREA, VOLUME, TIME = (1, 0, 0, 0), (2, 0, 0, 0), (3, 0, 0, 0), (0, 0, 1, 0)
STRESS, FORCE, TORQUE, KELVIN = (-1, 1, -2, 0), (1, 1, -2, 0), (2, 1, -2, 0), (0, 0, 0, 1)
EXPANSION, COMPLIANCE, FLOW, MASS_FLOW = (0, 0, 0, -1), (1, -1, 2, 0), (3, 0, -1, 0), (0, 1, -1, 0)
THROUGHPUT, GAS = (2, 1, -3, 0), (2, 0, -2, -1)
STIFFNESS, DENSITY, MASS, FREQUENCY = (0, 1, -2, 0), (-3, 1, 0, 0), (0, 1, 0, 0), (0, 0, -1, 0)
VISCOSITY, ACCELERATION, VELOCITY = (-1, 1, -1, 0), (1, 0, -2, 0), (1, 0, -1, 0)

BORE, JOINT, OUTSIDE = (0.031, LENGTH), (0.038, LENGTH), (0.055, LENGTH)
P, E, NU, DELTA, MU = (30e6, STRESS), (110e9, STRESS), (0.3, PURE), (1e-4, LENGTH), (0.12, PURE)
HOT, COLD, ALPHA, STRAIN = (450.0, KELVIN), (293.15, KELVIN), (11e-6, EXPANSION), (0.004, PURE)
OUTER, INNER, WIDTH, FEED, SMALL = (
    (0.04, LENGTH),
    (0.0375, LENGTH),
    (1.5e-3, LENGTH),
    (1e-4, LENGTH),
    (1e-3, LENGTH),
)
UP, SEAT, LOW = (0.52, PURE), (0.79, PURE), (1.05, PURE)
V, T, Q, C = (2.5e-3, VOLUME), (60.0, TIME), (0.0625, THROUGHPUT), (1e-6, FLOW)
HIGH, AIR, R, GAIN = (150e3, STRESS), (101325.0, STRESS), (287.055, GAS), (1500.0, STRESS)
WIRE, COIL, TURNS, SHEAR, RATE = (
    (0.004, LENGTH),
    (0.027, LENGTH),
    (4.5, PURE),
    (79.3e9, STRESS),
    (28.65e3, STIFFNESS),
)
SPEED, THICK, HEAVY, SLOW = (75.0, FREQUENCY), (0.02, VISCOSITY), (850.0, DENSITY), (9600.0, ACCELERATION)
SHUT, FULL, TALL, LOW_SPRING = (258.0, FORCE), (512.0, FORCE), (0.0365, LENGTH), (0.0276, LENGTH)
AIR_FILM, CONDUCTS, PER_KELVIN = (60.0, (0, 1, -3, -1)), (150.0, (1, 1, -3, -1)), (2, 1, -3, -1)

CASES = [
    (press_fit.joint_compliance, (BORE, JOINT, OUTSIDE, E, NU, E, NU), COMPLIANCE),
    (press_fit.inner_shape, (BORE, JOINT), PURE),
    (press_fit.outer_shape, (JOINT, OUTSIDE), PURE),
    (press_fit.compliance, ((2.0, PURE), (3.0, PURE), E, NU, E, NU), COMPLIANCE),
    (press_fit.contact_pressure, (DELTA, JOINT, (5e-11, COMPLIANCE)), STRESS),
    (press_fit.interference_for, (P, JOINT, (5e-11, COMPLIANCE)), LENGTH),
    (press_fit.roughness_loss, (FEED, FEED), LENGTH),
    (press_fit.free_strain, (ALPHA, HOT, COLD), PURE),
    (press_fit.interference_at, (DELTA, JOINT, STRAIN, STRAIN), LENGTH),
    (press_fit.outer_strain_for_clearance, (DELTA, FEED, JOINT, STRAIN), PURE),
    (press_fit.temperature_for, (STRAIN, ALPHA, COLD), KELVIN),
    (press_fit.loosening_rise, (DELTA, JOINT, ALPHA, (21e-6, EXPANSION)), KELVIN),
    (press_fit.inner_bore_hoop, (P, BORE, JOINT), STRESS),
    (press_fit.inner_joint_hoop, (P, BORE, JOINT), STRESS),
    (press_fit.outer_joint_hoop, (P, JOINT, OUTSIDE), STRESS),
    (press_fit.outer_outside_hoop, (P, JOINT, OUTSIDE), STRESS),
    (press_fit.von_mises, (P, (-20e6, STRESS)), STRESS),
    (press_fit.inner_yield_pressure, (P, BORE, JOINT), STRESS),
    (press_fit.outer_yield_pressure, (P, JOINT, OUTSIDE), STRESS),
    (past_yield.grip_lost, (DELTA, P, JOINT, (1e-11, COMPLIANCE)), LENGTH),
    (press_fit.inner_bore_change, (P, BORE, JOINT, E), LENGTH),
    (press_fit.inner_joint_change, (P, BORE, JOINT, E, NU), LENGTH),
    (press_fit.outer_joint_change, (P, JOINT, OUTSIDE, E, NU), LENGTH),
    (press_fit.outer_outside_change, (P, JOINT, OUTSIDE, E), LENGTH),
    (press_fit.holding_force, (P, MU, JOINT, SMALL), FORCE),
    (press_fit.holding_torque, (P, MU, JOINT, SMALL), TORQUE),
    (seat_geometry.slant_width, (OUTER, INNER, SEAT), LENGTH),
    (seat_geometry.inner_for_width, (OUTER, WIDTH, SEAT), LENGTH),
    (seat_geometry.height, (OUTER, INNER, SEAT), LENGTH),
    (seat_geometry.depth_at, (INNER, OUTER, SEAT), LENGTH),
    (seat_geometry.face_diameter, (OUTER, SMALL, UP), LENGTH),
    (seat_geometry.axial_of_normal, (FEED, SEAT), LENGTH),
    (seat_geometry.edge_diameter, (OUTER, UP, INNER, SEAT), LENGTH),
    (seat_geometry.outer_shift, (FEED, SEAT, UP), LENGTH),
    (seat_geometry.inner_shift, (FEED, SEAT, LOW), LENGTH),
    (seat_geometry.feed_for_outer, (FEED, SEAT, UP), LENGTH),
    (seat_geometry.feed_for_inner, (FEED, SEAT, LOW), LENGTH),
    (seat_geometry.seat_feed_needed, (OUTER, INNER, (0.041, LENGTH), INNER, SEAT, UP, LOW), LENGTH),
    (seat_geometry.stem_rise, (FEED, FEED, SEAT), LENGTH),
    (seat_geometry.contact_outer, (OUTER, INNER), LENGTH),
    (seat_geometry.contact_inner, (OUTER, INNER), LENGTH),
    (seat_geometry.valve_face_inner, (OUTER, WIDTH, SEAT), LENGTH),
    (seat_geometry.overhang, (OUTER, INNER, SEAT), LENGTH),
    (seat_geometry.margin_left, (SMALL, FEED, SEAT), LENGTH),
    (seat_geometry.band_depth, (OUTER, SMALL, INNER, SEAT), LENGTH),
    (seat_geometry.contact_diameter, (SEAT, LOW, OUTER, INNER), LENGTH),
    (seat_geometry.gap_across, (WIDTH, SEAT, LOW), LENGTH),
    (leak.drift_pressure, (HIGH, (1.0, KELVIN), COLD), STRESS),
    (leak.pressure_loss, (HIGH, AIR, COLD, HOT), STRESS),
    (leak.leak_rate, (V, GAIN, T), THROUGHPUT),
    (leak.standard_flow, (Q, COLD, COLD, AIR), FLOW),
    (leak.conductance, (V, HIGH, AIR, T), FLOW),
    (leak.difference_after, (HIGH, C, V, T), STRESS),
    (leak.rate_at, (C, HIGH), THROUGHPUT),
    (leak.least_loss, (HIGH, (0.3, KELVIN), COLD, (100.0, STRESS)), STRESS),
    (leak.time_to_tell, (V, Q, GAIN), TIME),
    (leak.critical_ratio, ((1.4, PURE),), PURE),
    (leak.flow_function, ((0.7, PURE), (1.4, PURE)), PURE),
    (leak.mass_flow, ((1e-6, AREA), HIGH, AIR, COLD, MU, (1.4, PURE), R), MASS_FLOW),
    (leak.hole_area, (Q, HIGH, AIR, COLD, MU, (1.4, PURE), R), AREA),
    (leak.hole_diameter, ((1e-6, AREA),), LENGTH),
    (spring.index, (WIRE, COIL), PURE),
    (spring.rate, (SHEAR, WIRE, COIL, TURNS), STIFFNESS),
    (spring.rate_of, (SHUT, FULL, TALL, LOW_SPRING), STIFFNESS),
    (spring.load_at, (TALL, SHUT, LOW_SPRING, RATE), FORCE),
    (spring.free_length, (SHUT, TALL, RATE), LENGTH),
    (spring.solid_length, (WIRE, TURNS), LENGTH),
    (spring.wahl, ((6.75, PURE),), PURE),
    (spring.shear_stress, (FULL, WIRE, COIL, (1.22, PURE)), STRESS),
    (spring.endurance_share, (P, P, (398e6, STRESS), (534e6, STRESS), (1200e6, STRESS)), PURE),
    (spring.active_mass, (WIRE, COIL, TURNS, (7850.0, DENSITY)), MASS),
    (spring.surge_frequency, (RATE, (0.04, MASS)), FREQUENCY),
    (bolt_torque.thread_lever, (SMALL, OUTER, MU), LENGTH),
    (bolt_torque.lever, (SMALL, OUTER, OUTSIDE, MU, MU), LENGTH),
    (bolt_torque.friction_of, (MU, OUTER, SMALL, INNER, OUTSIDE), PURE),
    (bolt_torque.twist, (OUTER, SMALL), PURE),
    (bolt_torque.together, (P, MU), STRESS),
    (annular_gap.eccentric, ((0.4, PURE),), PURE),
    (annular_gap.alike, (FEED, (2e-4, LENGTH)), LENGTH),
    (leak.behind_an_orifice, ((600e3, STRESS), HIGH, AIR), PURE),
    (annular_gap.leak, (OUTER, FEED, SMALL, THICK, P, (0.4, PURE)), FLOW),
    (annular_gap.reynolds, (C, OUTER, HEAVY, THICK), PURE),
    (annular_gap.plunger_area, (OUTER,), AREA),
    (annular_gap.sink_speed, (C, OUTER), VELOCITY),
    (annular_gap.clearance_for, (FEED, T, (20.0, TIME)), LENGTH),
    (small_hole.wall_flow, (SMALL, WIRE, THICK, P), FLOW),
    (small_hole.edge_flow, (SMALL, HEAVY, P, (0.65, PURE)), FLOW),
    (small_hole.flow, (C, (3e-6, FLOW)), FLOW),
    (small_hole.reynolds, (C, SMALL, HEAVY, THICK), PURE),
    (rod_load.pin_acceleration, (OUTER, SPEED), ACCELERATION),
    (rod_load.top_acceleration, (SLOW, OUTER, (0.137, LENGTH)), ACCELERATION),
    (rod_load.joint_pull, ((0.6, MASS), (0.3, MASS), SLOW, (7700.0, ACCELERATION)), FORCE),
    (rod_load.bolt_give, (OUTER, (5e-5, AREA), INNER, (4e-5, AREA), E), (0, -1, 2, 0)),
    (rod_load.ends_give, (OUTER, (5e-5, AREA), (4e-5, AREA), E), (0, -1, 2, 0)),
    (screw_threads.hole_shear_area, (SMALL, OUTER, (0.008, LENGTH), (0.0073, LENGTH)), AREA),
    (screw_threads.bolt_shear_area, (SMALL, OUTER, (0.0072, LENGTH), (0.0069, LENGTH)), AREA),
    (screw_threads.drill_for, ((0.008, LENGTH), SMALL, (0.75, PURE), (1.3, PURE)), LENGTH),
    (screw_threads.share_of_thread, ((0.008, LENGTH), SMALL, (0.007, LENGTH), (1.3, PURE)), PURE),
    (screw_threads.best_wire, (SMALL,), LENGTH),
    (screw_threads.lead_tangent, (SMALL, (0.0072, LENGTH)), PURE),
    (screw_threads.wire_factor, ((0.05, PURE),), PURE),
    (screw_threads.over_wires, ((0.0072, LENGTH), SMALL, (0.0006, LENGTH), (3.0, PURE)), LENGTH),
    (
        screw_threads.pitch_diameter_over_wires,
        ((0.0082, LENGTH), SMALL, (0.0006, LENGTH), (3.0, PURE)),
        LENGTH,
    ),
    (warm_reading.at_reference, (OUTER, ALPHA, ALPHA, HOT, COLD, COLD), LENGTH),
    (warm_reading.temperature_doubt, (OUTER, ALPHA, ALPHA, (1.0, KELVIN), (2.0, KELVIN)), LENGTH),
    (warm_reading.expansion_doubt, (OUTER, ALPHA, STRAIN, HOT, COLD), LENGTH),
    (fins.fin_number, (AIR_FILM, CONDUCTS, SMALL, BORE), PURE),
    (fins.fin_efficiency, (LOW,), PURE),
    (fins.fin_area, (SMALL, BORE, OUTER), AREA),
    (fins.overall_efficiency, (UP, (0.2, AREA), (0.25, AREA)), PURE),
    (fins.shed, (TURNS, SMALL, BORE, WIRE, OUTER, AIR_FILM, CONDUCTS), PER_KELVIN),
    (fins.warmed, ((6.4, PER_KELVIN), (40.0, PER_KELVIN)), PER_KELVIN),
    (fins.unwarmed, ((6.0, PER_KELVIN), (40.0, PER_KELVIN)), PER_KELVIN),
    (fins.hydraulic_diameter, (WIRE, BORE), LENGTH),
    (fins.coefficient_for, ((2.0, PER_KELVIN), TURNS, SMALL, BORE, WIRE, OUTER, CONDUCTS), (0, 1, -3, -1)),
    (valve_curtain.first_stage_lift, (WIDTH, SEAT), LENGTH),
    (valve_curtain.curtain_low, (SMALL, OUTER, WIDTH, SEAT), AREA),
    (valve_curtain.curtain_high, (WIRE, OUTER, WIDTH, SEAT), AREA),
    (valve_curtain.curtain, (SMALL, OUTER, WIDTH, SEAT), AREA),
    (valve_curtain.curtain, (WIRE, OUTER, WIDTH, SEAT), AREA),
    (valve_curtain.crossover_lift, ((1e-4, AREA), OUTER, WIDTH, SEAT), LENGTH),
    (valve_curtain.crossover_lift, ((9e-4, AREA), OUTER, WIDTH, SEAT), LENGTH),
    (rocking.rocking_factor, (OUTER, INNER), PURE),
    (round_cap.cap_depth, ((56e-6, VOLUME), (6.4e-3, AREA)), LENGTH),
    (sections.oval_area, (OUTER, INNER), AREA),
    (sections.oval_perimeter, (OUTER, INNER), LENGTH),
    (sections.d_area, (OUTER, INNER, SMALL), AREA),
    (sections.d_perimeter, (OUTER, INNER, SMALL), LENGTH),
    (bolt_torque.running, ((400e6, STRESS), (0.3, PURE), (380e6, STRESS)), STRESS),
]


@pytest.mark.parametrize(
    "formula, inputs, dims", CASES, ids=[f"{f.__module__.split('.')[-1]}.{f.__name__}" for f, _, _ in CASES]
)
def test_traced_number_has_the_value_and_the_dimensions(formula, inputs, dims):
    plain = formula(*(value for value, _ in inputs))
    traced = formula(*(Number(value, of) for value, of in inputs))
    assert isinstance(traced, Number)
    assert traced.value == pytest.approx(plain, rel=1e-12)
    assert traced.dims == dims


YIELD, WEAK, SOFT = (400e6, STRESS), (100e6, STRESS), (70e9, STRESS)
BY_TRIAL = [  # found by trial, as plain floats
    (leak.middle_pressure, ((600e3, STRESS), AIR, (2.0, PURE)), STRESS),
    (annular_gap.aside, (FEED, (2e-4, LENGTH), (5e-5, LENGTH)), PURE),
    (past_yield.outer_plastic_pressure, (WEAK, JOINT, OUTSIDE), STRESS),
    (past_yield.inner_plastic_pressure, (YIELD, BORE, JOINT), STRESS),
    (past_yield.outer_set, (P, JOINT, OUTSIDE, (80e6, STRESS), SOFT), LENGTH),
    (past_yield.inner_set, (P, BORE, JOINT, (170e6, STRESS), E), LENGTH),
    (
        past_yield.pressure_past_yield,
        (DELTA, BORE, JOINT, OUTSIDE, (7.4e-11, COMPLIANCE), YIELD, WEAK, E, SOFT),
        STRESS,
    ),
    (past_yield.plastic_pressure, (BORE, JOINT, OUTSIDE, YIELD, WEAK), STRESS),
    (past_yield.taken_up, (P, BORE, JOINT, OUTSIDE, (7.4e-11, COMPLIANCE), YIELD, WEAK, E, SOFT), LENGTH),
]


@pytest.mark.parametrize("formula, inputs, dims", BY_TRIAL, ids=[f.__name__ for f, _, _ in BY_TRIAL])
def test_what_is_found_by_trial_scales_with_its_units(formula, inputs, dims):
    """Counted in millimetres and megapascals (tonnes, seconds) it is the same quantity; Numbers are taken as floats."""
    plain = formula(*(value for value, _ in inputs))
    assert formula(*(Number(value, of) for value, of in inputs)) == plain > 0

    def scale(of):
        return 1e3 ** of[0] * 1e-3 ** of[1]

    assert formula(*(value * scale(of) for value, of in inputs)) == pytest.approx(
        plain * scale(dims), rel=1e-7
    )


def test_no_formula_is_left_out():
    """All but those for drawings, which return several numbers, and those found by trial."""
    drawn = (
        {press_fit.inner_stress, press_fit.outer_stress, seat_geometry.section}
        | {past_yield._where, past_yield._place, annular_gap._passes}
        | {f for f, _, _ in BY_TRIAL}
    )
    formulas = {
        f
        for module in (
            annular_gap,
            bolt_torque,
            fins,
            leak,
            past_yield,
            press_fit,
            rocking,
            rod_load,
            round_cap,
            screw_threads,
            seat_geometry,
            sections,
            small_hole,
            spring,
            valve_curtain,
            warm_reading,
        )
        for _, f in inspect.getmembers(module, inspect.isfunction)
        if f.__module__ == module.__name__
    }
    assert formulas - drawn == {f for f, _, _ in CASES}
