"""Sine bar, pitch circle and cone against sympy's geometry, numpy's roots of unity, and what must always be so."""

from math import degrees, hypot, pi, radians

import numpy as np
import pytest
import sympy
from hypothesis import given
from hypothesis import strategies as st

from calc.core.working import Number
from calc.formulas import trigonometry as trig

LENGTH, PURE = (1, 0, 0, 0), (0, 0, 0, 0)
angles = st.floats(0.001, 59.0).map(radians)
lengths = st.floats(1.0, 500.0)


@given(lengths, angles)
def test_sine_bar_there_and_back(length, angle):
    assert trig.sine_angle(length, trig.sine_height(length, angle)) == pytest.approx(angle, rel=1e-9)


@given(lengths, angles)
def test_sensitivity_is_the_slope_of_the_height(length, angle):
    """Central difference, numpy's gradient."""
    step = 1e-5
    heights = [trig.sine_height(length, angle + k * step) for k in (-1, 0, 1)]
    assert trig.sine_sensitivity(length, angle) == pytest.approx(np.gradient(heights, step)[1], rel=1e-6)


@given(st.integers(2, 60), lengths)
def test_holes_are_the_roots_of_unity(holes, circle):
    """Neighbours of z^N = 1, by numpy's polynomial roots, scaled."""
    roots = sorted(np.roots([1, *[0] * (holes - 1), -1]), key=np.angle)
    assert trig.chord(circle, holes) == pytest.approx(circle / 2 * abs(roots[1] - roots[0]), rel=1e-9)
    assert trig.hole_pitch(holes) == pytest.approx(
        (np.angle(roots[1]) - np.angle(roots[0])) % (2 * pi), rel=1e-9
    )


@given(st.integers(3, 60), lengths)
def test_chord_is_shorter_than_the_arc_and_comes_near_it(holes, circle):
    arc = pi * circle / holes
    assert trig.chord(circle, holes) < arc
    assert trig.chord(circle, holes) == pytest.approx(arc, rel=(pi / holes) ** 2 / 6)


@given(lengths, st.floats(0.01, 0.9), lengths)
def test_cone_there_and_back(large, share, length):
    small = large * share
    ratio = trig.cone_ratio(large, small, length)
    assert trig.ratio_of_angle(trig.side_angle(ratio)) == pytest.approx(ratio, rel=1e-12)
    assert trig.small_end(large, ratio, length) == pytest.approx(small, rel=1e-9)


@pytest.mark.parametrize(
    "small, tangent, roller, blocks",
    [
        (sympy.Integer(24), sympy.Rational(1, 20), sympy.Integer(10), sympy.Integer(30)),
        (sympy.Integer(50), sympy.Rational(7, 48), sympy.Integer(12), sympy.Integer(25)),
        (sympy.Integer(20), sympy.Rational(3, 4), sympy.Integer(8), sympy.Integer(15)),
    ],
)
def test_rollers_touch_plate_and_flank_where_sympy_says(small, tangent, roller, blocks):
    """A circle that rests at a height and touches the flank as a line: its centre by sympy's distances, exactly."""
    r = roller / 2
    flank = sympy.Line(sympy.Point(small / 2, 0), sympy.Point(small / 2 + tangent, 1))
    x = sympy.Symbol("x", positive=True)
    for height, reading in ((0, trig.over_rollers), (blocks, None)):
        # distance of the centre (x, height + r) from the flank, signed outwards: (x − small/2 − tangent·y)/√(1 + tangent²)
        centre = sympy.solve((x - small / 2 - tangent * (height + r)) / sympy.sqrt(1 + tangent**2) - r, x)[0]
        assert sympy.simplify(flank.distance(sympy.Point(centre, height + r)) - r) == 0
        side = float(sympy.atan(tangent))
        low = trig.over_rollers(float(small), side, float(roller))
        got = low if reading else trig.over_raised_rollers(low, side, float(blocks))
        assert got == pytest.approx(float(2 * centre + roller), rel=1e-12)
        contact = flank.projection(sympy.Point(centre, height + r))
        assert trig.roller_contact(side, float(roller), float(height)) == pytest.approx(
            float(contact.y), rel=1e-12
        )


@given(lengths, angles, st.floats(1, 30), st.floats(1, 100))
def test_readings_over_rollers_give_the_angle_back(small, side, roller, blocks):
    low = trig.over_rollers(small, side, roller)
    high = trig.over_raised_rollers(low, side, blocks)
    assert trig.side_angle_over_rollers(low, high, blocks) == pytest.approx(side, rel=1e-6)


def test_a_straight_pin_reads_its_diameter_and_two_rollers():
    assert trig.over_rollers(20.0, 0.0, 6.0) == 32.0
    assert trig.over_raised_rollers(32.0, 0.0, 50.0) == 32.0


@pytest.mark.parametrize(
    "given_degrees, text",
    [
        (0, "0° 0′ 0.0″"),
        (5.5, "5° 30′ 0.0″"),
        (45.51, "45° 30′ 36.0″"),
        (59.999999, "60° 0′ 0.0″"),
        (-0.5, "−0° 30′ 0.0″"),
        (-1e-9, "0° 0′ 0.0″"),
        (12 + 34 / 60 + 56.7 / 3600, "12° 34′ 56.7″"),
        (0.99 / 60, "0° 0′ 59.4″"),
    ],
)
def test_degrees_minutes_seconds(given_degrees, text):
    assert trig.degrees_minutes_seconds(radians(given_degrees)).replace("\u00a0", " ") == text


@given(st.floats(-400, 400))
def test_degrees_minutes_seconds_read_back(angle):
    from calc.core.kinds import ANGLE
    from calc.core.reading import read

    text = trig.degrees_minutes_seconds(radians(angle))
    assert degrees(read(text, ANGLE).value) == pytest.approx(angle, abs=0.051 / 3600)


@pytest.mark.parametrize(
    "formula, inputs, dims",
    [
        (trig.sine_height, ((0.1, LENGTH), (0.3, PURE)), LENGTH),
        (trig.sine_angle, ((0.1, LENGTH), (0.03, LENGTH)), PURE),
        (trig.sine_sensitivity, ((0.1, LENGTH), (0.3, PURE)), LENGTH),
        (trig.hole_pitch, ((6.0, PURE),), PURE),
        (trig.chord, ((0.12, LENGTH), (6.0, PURE)), LENGTH),
        (trig.cone_ratio, ((0.03, LENGTH), (0.024, LENGTH), (0.06, LENGTH)), PURE),
        (trig.side_angle, ((0.1, PURE),), PURE),
        (trig.ratio_of_angle, ((0.05, PURE),), PURE),
        (trig.small_end, ((0.03, LENGTH), (0.1, PURE), (0.06, LENGTH)), LENGTH),
        (trig.over_rollers, ((0.024, LENGTH), (0.05, PURE), (0.01, LENGTH)), LENGTH),
        (trig.over_raised_rollers, ((0.044, LENGTH), (0.05, PURE), (0.03, LENGTH)), LENGTH),
        (trig.side_angle_over_rollers, ((0.044, LENGTH), (0.047, LENGTH), (0.03, LENGTH)), PURE),
        (trig.roller_contact, ((0.05, PURE), (0.01, LENGTH), (0.03, LENGTH)), LENGTH),
    ],
)
def test_traced_numbers_keep_value_and_dimensions(formula, inputs, dims):
    traced = formula(*(Number(value, of) for value, of in inputs))
    assert traced.dims == dims and traced.value == pytest.approx(
        formula(*(value for value, _ in inputs)), rel=1e-12
    )


def test_hypotenuse_is_the_bar():
    """Pythagoras: height and base of the sine bar make its length."""
    assert hypot(trig.sine_height(100.0, 0.7), trig.sine_sensitivity(100.0, 0.7)) == pytest.approx(100.0)
