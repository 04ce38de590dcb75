"""The shapes that drawings are made of."""

from math import isclose, pi

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.drawing import arc, box, clip

WINDOW = (-1.0, -1.0, 1.0, 1.0)


def area(points):
    """Of a closed outline, by the surveyor's rule."""
    return abs(sum(x * v - u * y for (x, y), (u, v) in zip(points, (*points[1:], *points[:1])))) / 2


@pytest.mark.parametrize(
    "points, expected",
    [
        (box(-0.5, -0.5, 0.5, 0.5), 1.0),  # whole inside
        (box(-9, -9, 9, 9), 4.0),  # whole outside of it
        (box(0, -9, 9, 9), 2.0),  # half
        (((0, -2), (2, 0), (0, 2), (-2, 0)), 4.0),  # a diamond that touches all four corners
        (((0, -1.5), (1.5, 0), (0, 1.5), (-1.5, 0)), 4 - 4 * 0.5**2 / 2),  # one that leaves four corners out
        (box(2, 2, 3, 3), 0.0),
    ],
)
def test_clipped_area_is_what_is_left_by_hand(points, expected):
    assert area(clip(points, *WINDOW)) == pytest.approx(expected)


def test_nothing_left_is_nothing():
    assert clip(box(2, 2, 3, 3), *WINDOW) == ()


triangles = st.tuples(*[st.tuples(st.floats(-3, 3), st.floats(-3, 3))] * 3)


@given(triangles)
def test_clipped_outline_lies_in_the_window_and_halves_make_the_whole(points):
    kept = clip(points, *WINDOW)
    assert all(-1 - 1e-9 <= c <= 1 + 1e-9 for p in kept for c in p)
    left, right = clip(points, -1, -1, 0.25, 1), clip(points, 0.25, -1, 1, 1)
    assert isclose(area(left) + area(right), area(kept), abs_tol=1e-9)
    assert area(kept) <= area(points) + 1e-9


def test_arc_keeps_its_radius_and_encloses_the_disc():
    points = arc((1.0, 2.0), 3.0, 0.0, 2 * pi, 720)
    assert all(isclose((x - 1) ** 2 + (y - 2) ** 2, 9.0) for x, y in points)
    assert area(points) == pytest.approx(9 * pi, rel=2e-5)
