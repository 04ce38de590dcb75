"""Flat sections against their integrals and limits."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad

from calc.formulas.sections import d_area, d_perimeter, oval_area, oval_perimeter

lengths = st.integers(100, 900).map(lambda tenths: tenths / 10e3)


def width_at(y, w, h, r):
    """Width of a D at a height over its middle, mm."""
    half, centre = w / 2, h / 2 - w / 2
    if y >= centre:
        return 2 * math.sqrt(max(half**2 - (y - centre) ** 2, 0))
    return 2 * (half - r + math.sqrt(max(r**2 - (y + h / 2 - r) ** 2, 0))) if y < r - h / 2 else w


@pytest.mark.parametrize("w, h, r", [(36, 32, 0), (36, 32, 5), (30, 50, 15), (40, 20, 0), (25, 25, 12.5)])
def test_d_has_the_area_of_its_slices(w, h, r):
    points = sorted({r - h / 2, h / 2 - w / 2} - {-h / 2, h / 2})
    assert d_area(w, h, r) == pytest.approx(
        quad(width_at, -h / 2, h / 2, (w, h, r), points=points)[0], rel=1e-7
    )


@given(lengths, lengths)
def test_d_with_the_largest_corners_is_the_slot(w, h):
    """Limit: a D whose lower corners are as round as its roof."""
    w, h = sorted((w, h))
    assert d_area(w, h, w / 2) == pytest.approx(oval_area(w, h), rel=1e-12)
    assert d_perimeter(w, h, w / 2) == pytest.approx(oval_perimeter(w, h), rel=1e-12)
