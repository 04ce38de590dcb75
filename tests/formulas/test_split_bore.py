"""A parted bore: its farthest place found by rays from the new centre, and what two arcs must always do."""

import math

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.optimize import brentq, minimize_scalar

from calc.formulas import split_bore


def reach(theta, bore, a, b, c):
    """From (0, c) in direction theta, clockwise from the rod, to the bore: the rod's half of the oval moved down by a, the cap's up by b."""
    mean, stretch, lean = bore

    def outside(r):
        x, y = r * math.sin(theta), c + r * math.cos(theta)
        y += a if y >= 0 else -b
        angle = math.atan2(x, y)
        return math.hypot(x, y) - (mean + stretch * math.cos(2 * angle) + lean * math.sin(2 * angle)) / 2

    return brentq(outside, 0.4 * mean, 0.6 * mean, xtol=1e-13)


def by_rays(along, right, left, a, b, centred):
    rows = np.array([[1, math.cos(2 * t), math.sin(2 * t)] for t in np.radians([0, 60, -60])])
    bore = np.linalg.solve(rows, [along, right, left])
    c = (b - a) / 2 if centred == "midway" else 0.0

    def distance(t):
        return reach(t, bore, a, b, c)

    joint = sorted(math.atan2(side * w, -c) for side in (-1, 1) for w in [math.sqrt(right * left) / 2])
    stops = sorted(
        {*np.radians(np.arange(-180, 181, 6.0)), *(j + d for j in joint for d in (-1e-6, 0, 1e-6))}
    )  # the halves do not meet at the joint
    best = max(range(len(stops)), key=lambda i: distance(stops[i]))
    ends = zip(stops[max(best - 1, 0) :], stops[max(best - 1, 0) + 1 : best + 2])
    return 2 * max(
        distance(stops[best]),
        *(
            -minimize_scalar(
                lambda t: -distance(t), bounds=pair, method="bounded", options=dict(xatol=1e-10)
            ).fun
            for pair in ends
        ),
    )


readings = st.tuples(*[st.floats(55.98, 56.04)] * 3)
cut = st.integers(0, 120).map(lambda n: n / 1000)


@given(readings, cut, cut, st.sampled_from(["plane", "midway"]))
def test_farthest_place_is_that_of_the_rays(mm, a, b, centred):
    distance, _ = split_bore.farthest(split_bore.oval(*mm), a, b, (b - a) / 2 if centred == "midway" else 0.0)
    assert 2 * distance == pytest.approx(by_rays(*mm, a, b, centred), abs=1e-5)


@given(readings)
def test_oval_goes_through_its_readings(mm):
    bore = split_bore.oval(*mm)
    assert [2 * split_bore.radius_at(bore, math.radians(t)) for t in (0, 60, -60, 180)] == pytest.approx(
        [*mm, mm[0]]
    )
    assert split_bore.across(*mm) == pytest.approx(2 * split_bore.radius_at(bore, math.pi / 2))


@given(st.floats(20, 120), st.floats(0, 2), st.floats(0, 2))
def test_round_bore_is_two_arcs(diameter, a, b):
    """Every place lies on the old circle about its half's own middle, and the edges at half a chord."""
    R = diameter / 2
    for half, middle, cut in zip(split_bore.surface((diameter, 0, 0), a, b, 40), (-a, b), (a, b)):
        assert [math.hypot(x, y - middle) for x, y in half] == pytest.approx([R] * len(half))
        assert sorted(x for x, _ in (half[0], half[-1])) == pytest.approx(
            [-math.sqrt(R * R - cut * cut), math.sqrt(R * R - cut * cut)]
        )
        assert (half[0][1], half[-1][1]) == pytest.approx((0, 0), abs=1e-9)
    heights = [y for half in split_bore.surface((diameter, 0, 0), a, b, 40) for _, y in half]
    assert max(heights) - min(heights) == pytest.approx(diameter - a - b)


@pytest.mark.parametrize(
    "bore, a, b, centre",
    [((56, 0, 5), 1.0, 2.0, 2.0), ((56, 1, -4), 0.0, 1.0, -2.0), ((56, -3, 1), 0.5, 0.5, 1.0)],
)
def test_direction_is_that_of_the_longest_ray(bore, a, b, centre):
    """Exaggerated, so that the centre counts; rays and places half a degree apart."""
    thetas = np.radians(np.arange(-180, 180, 0.5))
    lengths = [reach(t, bore, a, b, centre) for t in thetas]
    distance, direction = split_bore.farthest(bore, a, b, centre)
    assert distance == pytest.approx(max(lengths), rel=1e-4) and direction == pytest.approx(
        thetas[np.argmax(lengths)], abs=0.015
    )


@given(readings, *[st.integers(0, 30).map(lambda n: n / 1000)] * 2)
def test_the_cut_that_is_advised_cleans_up_and_no_smaller_one_does(mm, a, b):
    bore, centre = split_bore.oval(*mm), (b - a) / 2

    def across(more):
        return 2 * split_bore.farthest(bore, a + more, b + more, centre)[0]

    assume(across(0) > 56.01)
    more = split_bore.more_cut(bore, a, b, 28.005, 0.5, centre)
    if more is None:
        assert across(0.5) > 56.01
    else:
        assert across(more) <= 56.01 < across(more - 1e-6)
