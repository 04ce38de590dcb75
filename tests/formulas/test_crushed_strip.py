"""A crushed strip against scipy and numpy, and against a strip that keeps its section."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.interpolate import PchipInterpolator

from calc.formulas.crushed_strip import gap
from tests.checks.formulas.crushed_strip import CHECKS, SCALE

GAPS, WIDTHS = np.array(SCALE).T


def test_checks_are_what_numpy_and_scipy_find():
    straight, cubic = (row for row in CHECKS if row.kind == "library")
    assert 1 / np.interp(1.5708, WIDTHS[::-1], 1 / GAPS[::-1]) == pytest.approx(straight.expected, abs=5e-6)
    assert float(PchipInterpolator(WIDTHS[::-1], GAPS[::-1])(1.5708)) == pytest.approx(
        cubic.expected, abs=5e-6
    )
    # the constant section itself, a circle of 0.30 mm
    assert math.pi / 4 * 0.3**2 / 1.5708 == pytest.approx(0.045, abs=5e-5)


@given(st.floats(0.02, 0.3), st.floats(0.02, 0.3), st.floats(0.02, 0.3))
def test_a_strip_that_keeps_its_section_is_read_exactly(a, b, c):
    a, b, c = sorted((a, b, c))
    if c - a > 1e-3:
        assert gap(0.07 / b, ((a, 0.07 / a), (c, 0.07 / c))) == pytest.approx(b, rel=1e-9)


@pytest.mark.parametrize("mark", SCALE)
def test_on_a_mark_it_is_the_mark(mark):
    assert gap(mark[1], SCALE) == pytest.approx(mark[0], rel=1e-12)


@pytest.mark.parametrize("width", [2.831, 0.929])
def test_beyond_the_scale_there_is_no_answer(width):
    with pytest.raises(ValueError, match="beyond the scale"):
        gap(width, SCALE)
