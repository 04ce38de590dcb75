"""Spindle speed: never above the speed wanted, the whole way of a cutter, and what rubs at the inside of a face."""

import math
from pathlib import Path

import mpmath
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.stations.cutting.spindle_speed import spindle_speed
from calc.stations.cutting.usual_speeds import CUTS, TOOLS
from scripts.new_calculator import left_to_replace
from tests.checks.stations.cutting.spindle_speed import BORE, CHECKS, FACE, FLY

PLATE = (45, 63, 90, 125, 180, 250, 355, 500, 710, 1000)


def test_the_outside_numbers_are_worked_again():
    by = {check.what: (check.expected, check.tolerance) for check in CHECKS}

    def near(what, value):
        expected, tolerance = by[what]
        assert float(value) == pytest.approx(expected, abs=tolerance)

    wanted = 95_000 / (mpmath.pi * 88)
    near("spindle for 95 m/min at 88 mm, 1/min", wanted)
    best = max(n for n in PLATE if n <= wanted)
    near("step to set, 1/min", best)
    near("cutting speed at that step, m/min", mpmath.pi * mpmath.mpf("0.088") * best)
    turns = 110_000 / (math.pi * 240) / 60
    near("time to face 240 mm down to 60 mm at one speed, s", quad(lambda r: 1 / (0.12 * turns), 30, 120)[0])
    fly = 250_000 / (mpmath.pi * 200)
    near("fly cutter of 200 mm, spindle, 1/min", fly)
    near("fly cutter, one pass over a face of 180 mm, s", (180 + 200) / (mpmath.mpf("0.1") * fly) * 60)


@pytest.mark.parametrize(
    "entries, state, words",
    [
        (BORE, "pass", "Set 250 1/min: it cuts at 69.1 m/min"),
        (BORE | dict(speed="10 m/min"), "fail", "No step slow enough: 45 1/min cuts at 12.4 m/min"),
        (BORE | dict(drive="stepless"), "pass", "Set 344 1/min: it cuts at 95.0 m/min"),
        (FACE, "pass", "Set 146 1/min: it cuts at 110.0 m/min"),
        (FLY, "pass", "Set 398 1/min: it cuts at 250.0 m/min"),
    ],
)
def test_verdict(entries, state, words):
    verdict = spindle_speed(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)


def test_a_step_that_is_just_the_speed_wanted_is_set():
    """π·88 mm·250/min by hand, to as many digits as are typed."""
    assert spindle_speed(**BORE | dict(speed=f"{math.pi * 0.088 * 250:.9f} m/min"))[
        "step"
    ] * 60 == pytest.approx(250)
    assert spindle_speed(**BORE | dict(speed=f"{math.pi * 0.088 * 250 - 0.001:.6f} m/min"))[
        "step"
    ] * 60 == pytest.approx(180)


@given(st.floats(5, 400), st.floats(20, 300))
def test_the_step_never_cuts_faster_than_wanted_and_the_next_one_would(diameter, speed):
    found = spindle_speed(**BORE | dict(diameter=f"{diameter:.1f} mm", speed=f"{speed:.1f} m/min"))
    at = [math.pi * round(diameter, 1) / 1000 * n for n in PLATE]
    wanted = round(speed, 1)
    if found.verdict.state == "fail":
        assert at[0] > wanted
    else:
        assert found["speed"] * 60 == pytest.approx(max(v for v in at if v <= wanted * (1 + 1e-9)))


def test_without_a_speed_wanted_the_middle_of_what_is_usual_counts():
    entries = {key: text for key, text in BORE.items() if key != "speed"} | dict(drive="stepless")
    for cut in CUTS:
        for tool in TOOLS:
            low, high = CUTS[cut].speeds[tool]
            assert low < high
            found = evaluate(spindle_speed, entries | dict(cut=cut, tool=tool))
            assert found["speed"] * 60 == pytest.approx((low + high) / 2)


def said(entries, level):
    return [r.text.plain() for r in spindle_speed(**entries).remarks if r.level == level]


def test_the_inside_of_a_face_that_rubs_is_told():
    """Speed falls with the radius: 110 m/min at 240 mm is 27.5 at 60 mm."""
    assert any("27.5 m/min" in text for text in said(FACE, "warning"))
    assert not any("rubs" in text for text in said(FACE | dict(inside="120 mm"), "warning"))


def test_a_speed_in_the_wrong_unit_is_doubted_and_magnesium_is_warned_of():
    assert any("right unit" in text for text in said(BORE | dict(speed="300 m/min"), "warning"))
    assert not said(BORE, "warning")
    assert any("dry" in text for text in said(BORE | dict(cut="magnesium", speed="250 m/min"), "warning"))


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (BORE | dict(diameter="0"), "diameter", "below 1"),
        (BORE | dict(feed="0"), "feed", "below 0.001"),
        (BORE | dict(speed="343 1/min"), "speed", "a speed of rotation"),
        (FACE | dict(inside="240 mm"), "inside", "not less than the outside"),
        (BORE | {"steps.3.1": "fast"}, "steps.3.1", "number"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        spindle_speed(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error), str(error)


def test_inches_give_the_same():
    metric = evaluate(spindle_speed, BORE | dict(diameter="101.6 mm", feed="0.0762 mm", length="127 mm"))
    inch = evaluate(spindle_speed, BORE | dict(diameter="4", feed="0.003", length="5"), "inch")
    assert all(inch[key] == pytest.approx(metric[key], rel=1e-12) for key in metric.outputs)


def test_every_line_of_the_example_was_replaced():
    assert not [
        line
        for line in left_to_replace("cutting", "spindle-speed", Path(__file__).parents[3])
        if "docs/" not in line
    ]
