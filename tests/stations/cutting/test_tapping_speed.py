"""Tapping by machine: the feed is the pitch, and a drill's point does not come out where nobody wants it."""

from pathlib import Path

import mpmath
import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.stations.cutting.tapping_speed import tapping_speed
from scripts.new_calculator import left_to_replace
from tests.checks.stations.cutting.tapping_speed import CHECKS, M8, M10


def test_the_outside_numbers_are_worked_again():
    spindle = 12_000 / (mpmath.pi * 10)
    worked = (
        spindle,
        mpmath.mpf("1.5") * spindle,
        None,
        None,
        24 + mpmath.mpf("3.4") / mpmath.tan(mpmath.radians(59)),
    )
    for check, value in zip(CHECKS, worked):
        assert value is None or float(value) == pytest.approx(check.expected, abs=check.tolerance), check.what


@pytest.mark.parametrize(
    "entries, state, words",
    [
        ({}, "pass", "Drill 24.0 mm deep"),
        (dict(metal="40 mm"), "pass", "Drill 24.0 mm deep"),
        (dict(metal="28.1 mm"), "pass", "Drill 24.0 mm deep"),
        (dict(metal="27.5 mm"), "attention", "Only 1.5 mm left under the point"),
        (dict(metal="26.0 mm"), "fail", "Breaks through: 26.04 mm deep, 26.0 mm there"),
        (dict(metal="20 mm"), "fail", "Breaks through: 26.0 mm deep, 20.0 mm there"),
        (dict(drill="6.647 mm"), "pass", "Drill 24.0 mm deep"),
        (dict(drill="6.0 mm"), "attention", "Drill small: 6.000 mm, core 6.647 mm"),
        (dict(hole="through", metal="20 mm"), "pass", "Drill through"),
    ],
)
def test_verdict(entries, state, words):
    verdict = tapping_speed(**M8 | entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)


def test_a_doubt_of_the_metal_that_reaches_the_point_leaves_it_open():
    assert tapping_speed(**M8 | dict(metal="26.5 ± 1 mm")).verdict.state == "unsure"


@given(st.floats(1, 20), st.integers(4, 60), st.sampled_from(["taper", "second", "bottoming"]))
def test_the_table_moves_one_pitch_in_each_turn(speed, depth, lead):
    found = tapping_speed(**M10 | dict(speed=f"{speed:.2f} m/min", depth=f"{depth} mm", lead=lead))
    assert found["feed"] / found["spindle"] == pytest.approx(1.5e-3)
    assert found["turns"] * 1.5e-3 + 1e-3 == pytest.approx(found["full"])


def test_a_through_hole_has_no_room_below_and_a_drill_left_out_is_thread_less_pitch():
    through = tapping_speed(**M8 | dict(hole="through"))
    assert through["full"] == pytest.approx(18e-3) and any(
        "behind the metal" in r.text.plain() for r in through.remarks
    )
    entries = {key: text for key, text in M8.items() if key != "drill"}
    assert evaluate(tapping_speed, entries)["tip"] == pytest.approx(
        evaluate(tapping_speed, entries | dict(drill="6.75 mm"))["tip"]
    )


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(depth="0"), "depth", "below 1"),
        (dict(drill="8 mm"), "drill", "not less than the thread"),
        (dict(speed="300 1/min"), "speed", "a speed of rotation"),
        (dict(point="200°"), "point", "above 180"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        tapping_speed(**M8 | entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error), str(error)


def test_inches_give_the_same():
    metric = evaluate(tapping_speed, M8 | dict(depth="25.4 mm", drill="6.858 mm", room="1.27 mm"))
    inch = evaluate(tapping_speed, M8 | dict(depth="1", drill="0.27", room="0.05"), "inch")
    assert all(inch[key] == pytest.approx(metric[key], rel=1e-12) for key in metric.outputs)


def test_every_line_of_the_example_was_replaced():
    assert not [
        line
        for line in left_to_replace("cutting", "tapping-speed", Path(__file__).parents[3])
        if "docs/" not in line
    ]
