"""Sine bar: verdicts, refusals, and what the picked blocks set. The arithmetic is held in tests/formulas/test_trigonometry.py."""

from math import asin, degrees, radians, sin

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.stations.measuring.sine_bar import sine_bar


def run(**entries):
    return evaluate(sine_bar, entries)


def told(found):
    return found.verdict.state, found.verdict.headline.plain().replace("\u00a0", " ")


def test_the_example_is_a_handbooks():
    """Sine-bar constant of 5°30′ for 100 mm, from memory: 9.58458 mm."""
    found = run()
    assert found["height"] * 1000 == pytest.approx(9.58458, abs=5e-6)
    assert told(found) == ("pass", "Put 9.5850 mm under the roll")
    assert found.tables[0].rows[0][1] == "1.005 + 1.08 + 7.5"


@pytest.mark.parametrize("typed", ["5.5", "5.5°", "5° 30'", "5°30′", "5 deg 30 min 0 sec", "330'"])
def test_degrees_and_minutes_are_the_same_angle(typed):
    assert run(angle=typed)["height"] == pytest.approx(run()["height"], rel=1e-12)


def test_blocks_given_set_an_angle():
    """sin 30° is a half: 50 mm under a bar of 100 mm."""
    found = run(blocks="50 mm", angle="30°")
    assert told(found) == ("pass", "Blocks set 30° 0′ 0.0″")
    assert found["angle_set"] == pytest.approx(radians(30)) and found["off"] == pytest.approx(0, abs=1e-12)


def test_wrong_blocks_are_told_with_the_right_ones():
    found = run(blocks="9.7 mm")
    assert told(found) == (
        "fail",
        "Blocks set 5° 34′ 0.0″, not the angle wanted".replace(
            "5° 34′ 0.0″", found.verdict.headline.values["a"].replace("\u00a0", " ")
        ),
    )
    assert degrees(found["angle_set"]) == pytest.approx(degrees(asin(0.097)), abs=1e-9)
    assert "put 9.5846 mm under the roll" in found.verdict.do.plain()


def test_a_steep_angle_wants_another_look():
    state, headline = told(run(angle="50°"))
    assert (state, headline) == ("attention", "Put 76.6040 mm under the roll: steep")
    assert "40° 0′ 0.0″" in run(angle="50°").verdict.do.plain().replace("\u00a0", " ")
    assert told(run(angle="45°"))[0] == "pass"


def test_whole_micrometres_may_be_too_coarse():
    found = run(length="20 mm", angle="44.9999°", allowed="0.5″")
    assert told(found)[0] == "fail" and "longer sine bar" in found.verdict.do.plain()


def test_a_doubt_of_the_blocks_can_leave_it_open():
    found = run(blocks="9.58458 ± 0.01 mm")
    assert found.verdict.state == "unsure" and "the angle is right" in found.verdict.headline.plain()


def test_a_small_height_goes_under_both_rolls():
    found = run(angle="0.2°")
    assert not found.tables and any("under both rolls" in r.text.plain() for r in found.remarks)
    assert run(angle="0°")["height"] == 0


@pytest.mark.parametrize(
    "entries, field, words",
    [
        ({"angle": "61°"}, "angle", "above 60.0000°"),
        ({"angle": "61°"}, "angle", "90° less the angle"),
        ({"angle": "-1°"}, "angle", "below 0"),
        ({"angle": "45° 70'"}, "angle", "60 or more"),
        ({"angle": "3 mm"}, "angle", "an angle belongs here"),
        ({"blocks": "90 mm"}, "blocks", "steeper than 60°; give 86.6025 mm at most"),
        ({"blocks": "-1 mm"}, "blocks", "below 0"),
        ({"length": "0 mm"}, "length", "below 20"),
        ({"allowed": "0"}, "allowed", "below 0.1″"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        run(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error)


@given(st.floats(0, 59.99), st.sampled_from(["100 mm", "127 mm", "200 mm", "5 in"]))
def test_there_and_back(angle, length):
    there = run(angle=f"{angle:.6f}°", length=length)
    back = run(angle="30°", length=length, blocks=f"{there['height'] * 1000:.9f} mm")
    assert degrees(back["angle_set"]) == pytest.approx(float(f"{angle:.6f}"), abs=1e-5)


@given(st.floats(1, 59), st.floats(1, 59))
def test_a_steeper_angle_takes_more_blocks_and_less_for_a_second(one, other):
    low, high = sorted((round(one, 4), round(other, 4)))
    a, b = run(angle=f"{low}°"), run(angle=f"{high}°")
    assert a["height"] <= b["height"] and a["per_second"] >= b["per_second"]


@given(st.floats(2, 60))
def test_picked_blocks_set_what_the_table_says(angle):
    found = run(angle=f"{angle:.4f}°")
    for _, blocks, height, off in found.tables[0].rows:
        total = sum(map(float, blocks.split(" + ")))
        assert total == pytest.approx(float(height.split()[0]), abs=1e-9)
        mm = total * (25.4 if height.endswith("in") else 1)
        assert float(off) == pytest.approx(asin(mm / 100) - radians(float(f"{angle:.4f}")), abs=1e-9)
        assert abs(mm - 100 * sin(radians(angle))) < 0.0015


@pytest.mark.parametrize("angle", [0, 5.5, 30, 59.9])
def test_a_second_of_arc_is_worth_the_length_times_the_cosine(angle):
    found, more = sine_bar(angle=f"{angle}°"), sine_bar(angle=f"{angle + 1 / 3600!r}°")
    assert found["per_second"] == pytest.approx(more["height"] - found["height"], rel=1e-4)
