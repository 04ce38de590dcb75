"""The curtain against the shortest way and the smallest frustum between two cones."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import minimize, minimize_scalar

from calc.formulas.valve_curtain import crossover_lift, curtain, curtain_high, curtain_low, first_stage_lift


def shortest(lift, head, inner, angle):
    """Area swept by the shortest way from the valve's inner edge to the seat (Pappus), mm²."""
    seat = (head - inner) / 2 / math.cos(angle)
    found = minimize_scalar(
        lambda v: math.hypot(v * math.cos(angle), lift - v * math.sin(angle)),
        bounds=(0, seat),
        method="bounded",
        options=dict(xatol=1e-12),
    )
    return math.pi * (inner + found.x * math.cos(angle)) * found.fun


def smallest(lift, head, inner, angle):
    """Smallest frustum from any place of the valve's face to any of the seat's, mm²."""
    seat = (head - inner) / 2 / math.cos(angle)

    def area(q):
        (px, py), (sx, sy) = (
            (inner / 2 + d * math.cos(angle), up + d * math.sin(angle)) for d, up in zip(q, (lift, 0.0))
        )
        return math.pi * (px + sx) * math.hypot(px - sx, py - sy)

    return min(
        minimize(area, (u, v), bounds=[(0, seat)] * 2).fun for u in (0, seat / 2) for v in (0, seat / 2, seat)
    )


@given(st.floats(0.01, 0.25), st.floats(20, 60), st.floats(0.5, 3), st.floats(30, 60))
def test_curtain_is_hardly_more_than_the_smallest_frustum(share, inner, width, degrees):
    angle, lift = math.radians(degrees), share * inner
    head = inner + 2 * width
    area = curtain(lift, head, width, angle)
    least = smallest(lift, head, inner, angle)
    assert least * (1 - 1e-6) <= area <= 1.02 * least


@given(st.floats(20, 60), st.floats(0.2, 5), st.floats(15, 65))
def test_stages_meet(inner, width, degrees):
    angle, head = math.radians(degrees), inner + 2 * width
    first = first_stage_lift(width, angle)
    assert curtain_low(first, head, width, angle) == pytest.approx(
        curtain_high(first, head, width, angle), rel=1e-9
    )


@given(st.floats(20, 60), st.floats(0.2, 5), st.floats(15, 65), st.floats(0.02, 1))
def test_at_the_crossover_curtain_and_throat_are_alike(inner, width, degrees, share):
    angle, head, area = math.radians(degrees), inner + 2 * width, share * math.pi / 4 * inner**2
    lift = crossover_lift(area, head, width, angle)
    assert curtain(lift, head, width, angle) == pytest.approx(area, rel=1e-9)


def test_a_flat_thin_seat_is_the_bare_cylinder():
    """Limit: with a seat of no width the curtain is π·D·L once it has left the face, and a quarter of the throat's diameter opens it."""
    assert curtain_high(8.0, 30.0, 1e-9, math.radians(30)) == pytest.approx(math.pi * 30 * 8)
    assert crossover_lift(math.pi / 4 * 30**2, 30.0, 1e-9, math.radians(30)) == pytest.approx(7.5)
