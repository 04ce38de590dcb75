"""Pitch circle: co-ordinates against the roots of unity, verdicts, refusals."""

from math import dist, hypot

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.stations.measuring.bolt_circle import bolt_circle


def run(**entries):
    return evaluate(bolt_circle, entries)


def places(found):
    return [(float(x), float(y)) for _, _, x, y in found.tables[0].rows]


def test_hexagon():
    """A hexagon's side is the radius of its circle; hole 2 of six on 120 mm stands at (30, 51.9615) (cos and sin of 60°)."""
    found = run()
    assert found["chord"] == pytest.approx(0.06) and found["pitch"] == pytest.approx(np.pi / 3)
    assert places(found)[1] == pytest.approx((0.030, 0.0519615242), abs=1e-9)
    assert (found.verdict.state, found.verdict.headline.plain()) == ("pass", "Next hole 60.000 mm away")
    assert found["over_pins"] == pytest.approx(0.0685)


@given(
    st.integers(2, 60),
    st.floats(10, 500),
    st.floats(-360, 360),
    st.floats(-100, 100),
    st.floats(-100, 100),
    st.sampled_from(["against", "with"]),
)
def test_holes_are_roots_of_unity_turned_and_moved(holes, circle, first, x, y, sense):
    found = run(
        holes=str(holes),
        pitch_circle=f"{circle:.3f}",
        hole="0.1",
        first=f"{first:.3f}",
        centre_x=f"{x:.3f}",
        centre_y=f"{y:.3f}",
        sense=sense,
    )
    turn = 1 if sense == "against" else -1
    wanted = complex(round(x, 3), round(y, 3)) + round(circle, 3) / 2 * np.exp(
        1j * (np.radians(round(first, 3)) + turn * 2 * np.pi * np.arange(holes) / holes)
    )
    got = np.array([complex(*p) for p in places(found)]) * 1000
    assert np.allclose(got, wanted, atol=1e-6)
    around = [*places(found), places(found)[0]]
    assert all(dist(a, b) == pytest.approx(found["chord"], rel=1e-9) for a, b in zip(around, around[1:]))
    assert all(
        hypot(px - round(x, 3) / 1000, py - round(y, 3) / 1000) == pytest.approx(round(circle, 3) / 2000)
        for px, py in places(found)
    )


def test_angles_stand_between_0_and_a_turn():
    angles = [float(row[1]) for row in run(first="-90°", holes="4").tables[0].rows]
    assert angles == pytest.approx([1.5 * np.pi, 0, 0.5 * np.pi, np.pi], abs=1e-9)


@pytest.mark.parametrize(
    "entries, state, words",
    [
        ({"holes": "12", "pitch_circle": "30", "hole": "8"}, "fail", "Holes run into each other"),
        ({"holes": "12", "pitch_circle": "30", "hole": "7"}, "attention", "Only 0.76 mm left"),
        ({"holes": "6", "pitch_circle": "120", "hole": "40"}, "pass", "Next hole 60.000 mm away"),
        (
            {"holes": "6", "pitch_circle": "120", "hole": "40.1"},
            "attention",
            "Only 19.90 mm left",
        ),  # half a hole is enough
        ({"holes": "12", "pitch_circle": "30", "hole": "5"}, "pass", "Next hole 7.765 mm away"),
        ({"hole": "59 ± 2 mm"}, "unsure", "the metal between the holes is right"),
    ],
)
def test_verdicts(entries, state, words):
    found = run(**entries)
    assert found.verdict.state == state and words in found.verdict.headline.plain()


@pytest.mark.parametrize(
    "entries, field, words",
    [
        ({"holes": "1"}, "holes", "below 2"),
        ({"holes": "6.5"}, "holes", "not a whole number"),
        ({"holes": "-6"}, "holes", "below 2"),
        ({"holes": "500"}, "holes", "above 120"),
        ({"pitch_circle": "0"}, "pitch_circle", "below 1"),
        ({"hole": "120"}, "hole", "give less than 120.000 mm"),
        ({"hole": "-1"}, "hole", "below 0"),
        ({"first": "400°"}, "first", "above 360.0000°"),
        ({"sense": "round"}, "sense", "choose one of against, with"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        run(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error)


@given(st.integers(2, 119))
def test_more_holes_stand_closer(holes):
    assert run(holes=str(holes + 1), hole="0")["chord"] < run(holes=str(holes), hole="0")["chord"]


def test_metal_left_between_neighbours_is_the_chord_less_one_hole():
    found = bolt_circle(holes="6", pitch_circle="120 mm", hole="8.5 mm")
    assert found["web"] == pytest.approx(0.060 - 0.0085)  # six on a circle are a radius apart
