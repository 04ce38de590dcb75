"""The profile of a turned face against the envelope of the edge's own shape, worked on a fine grid."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.formulas.turned_profile import feed_for, height_at, profile
from tests.checks.formulas.turned_profile import ARC, CHECKS, EDGE


def envelope(feed, nose, angle, points=200_001):
    """Height and Ra of what is left between passes, all in one unit: nothing but the edge's shape, laid side by side."""
    x = np.linspace(0, feed, points)

    def arc(u):
        return nose - np.sqrt(np.maximum(nose**2 - u**2, 0))

    reach = nose * math.sin(angle)
    u = feed - x
    end = np.where(u <= reach, arc(u), nose * (1 - math.cos(angle)) + (u - reach) * math.tan(angle))
    left = np.minimum(arc(x), end)
    mean = np.trapezoid(left, x) / feed
    return left.max(), np.trapezoid(np.abs(left - mean), x) / feed


@pytest.mark.parametrize("checks", [CHECKS[0:2], CHECKS[2:4]])
def test_the_outside_numbers_are_worked_again(checks):
    inputs = checks[0].inputs
    found = envelope(inputs["feed_mm"] * 1e3, inputs["nose_mm"] * 1e3, math.radians(inputs["end_edge_deg"]))
    for check, value in zip(checks, found):
        assert value == pytest.approx(check.expected, abs=check.tolerance), check.what


@given(st.floats(0.001, 1.99), st.floats(1, 80))
def test_any_feed_and_end_edge_is_the_envelope(share, degrees):
    """In noses: the shape alone counts."""
    found = profile(share, 1.0, math.radians(degrees))
    height, mean = envelope(share, 1.0, math.radians(degrees), 20_001)
    assert found.height == pytest.approx(height, rel=3e-3, abs=1e-9)
    assert found.mean == pytest.approx(mean, rel=3e-3, abs=1e-9)
    assert found.end_edge == (share > 2 * math.sin(math.radians(degrees)))


@given(st.floats(0.01, 5), st.floats(2, 60))
def test_the_largest_feed_leaves_what_is_wanted(wanted, degrees):
    """µm of Ra with a nose of 0.4 mm."""
    nose, angle = 4e-4, math.radians(degrees)
    feed = feed_for(wanted * 1e-6, nose, angle)
    assert profile(feed, nose, angle).mean <= wanted * 1e-6 * (1 + 1e-9)
    if feed < 1.99 * nose:
        assert profile(feed * 1.001, nose, angle).mean > wanted * 1e-6


def test_where_the_arc_ends_nothing_jumps():
    for inputs in (ARC, EDGE):
        nose, angle = inputs["nose_mm"], math.radians(inputs["end_edge_deg"])
        edge = 2 * nose * math.sin(angle)
        just_under, just_over = (
            profile(edge * (1 - 1e-9), nose, angle),
            profile(edge * (1 + 1e-9), nose, angle),
        )
        assert (
            just_under.mean == pytest.approx(just_over.mean, rel=1e-6)
            and not just_under.end_edge
            and just_over.end_edge
        )
        reach = nose * math.sin(angle)
        assert height_at(reach * (1 + 1e-9), nose, angle) == pytest.approx(height_at(reach, nose), rel=1e-6)


def test_a_smaller_end_edge_wipes_the_ridges_off():
    """An edge that lies flat on the face leaves none; the arc alone is the most that it can leave."""
    alone = profile(0.3, 0.4, math.radians(80)).height
    assert profile(0.3, 0.4, math.radians(1)).height < profile(0.3, 0.4, math.radians(5)).height < alone
