"""Speed of a grinding wheel: no mark, no run; each mark counts by itself; a worn wheel is allowed no more turns."""

from fractions import Fraction
from pathlib import Path

import mpmath
import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.stations.cutting.wheel_speed import wheel_speed
from scripts.new_calculator import left_to_replace
from tests.checks.stations.cutting.wheel_speed import CHECKS

GOOD = dict(
    diameter="600 mm", spindle="1100", marked="both", marked_speed="35 m/s", marked_turns="1110", ring="clear"
)


def judged(**entries):
    verdict = wheel_speed(**GOOD | entries).verdict
    return verdict.state, verdict.headline.plain()


def test_the_outside_numbers_are_worked_again():
    with mpmath.workdps(30):
        for check in CHECKS[:2]:
            d = Fraction(check.inputs["diameter"].split()[0]) / 1000
            assert float(
                mpmath.pi * (d * Fraction(1100, 60)).numerator / (d * Fraction(1100, 60)).denominator
            ) == pytest.approx(check.expected, abs=check.tolerance)
        assert float(35 * 60 / (mpmath.pi * mpmath.mpf("0.6"))) == pytest.approx(CHECKS[2].expected, abs=5e-4)


@pytest.mark.parametrize(
    "entries, state, words",
    [
        ({}, "pass", "May run: 34.6 m/s at the rim"),
        (dict(spindle="1120"), "fail", "Does not run: rim 35.2 m/s, 35.0 m/s marked"),
        (
            dict(spindle="1120", marked_speed="36 m/s"),
            "fail",
            "Does not run: spindle 1120 1/min, 1110 1/min marked",
        ),
        (dict(spindle="1110"), "pass", "May run: 34.9 m/s at the rim"),
        # worn smaller, the rim is slow enough: the turns that stand on it still count
        (
            dict(diameter="480 mm", spindle="1111"),
            "fail",
            "Does not run: spindle 1111 1/min, 1110 1/min marked",
        ),
        (dict(marked="turns", diameter="900 mm"), "pass", "May run: 51.8 m/s at the rim"),
        (dict(marked="speed", spindle="1115"), "fail", "Does not run: rim 35.03 m/s, 35.0 m/s marked"),
        (dict(marked="none"), "fail", "Does not run: it has no mark"),
        (dict(ring="dull"), "fail", "Does not run: cracked, chipped or dull"),
        (dict(ring="dull", spindle="100"), "fail", "Does not run: cracked, chipped or dull"),
        (dict(ring="not-tried"), "attention", "Not yet: nobody has rung it"),
        (dict(ring="not-tried", spindle="1200"), "fail", "Does not run: rim 37.7 m/s, 35.0 m/s marked"),
        (dict(ring="resin"), "pass", "May run: 34.6 m/s at the rim"),
    ],
)
def test_verdict(entries, state, words):
    assert judged(**entries) == (state, words)


def test_on_its_mark_it_may_run_and_a_hair_past_it_not():
    """35 m/s on 600 mm is reached at 1114.085 1/min."""
    assert judged(marked="speed", spindle="1114.08")[0] == "pass"
    assert judged(marked="speed", spindle="1114.09")[0] == "fail"


@pytest.mark.parametrize(
    "entries", [dict(diameter="600 ± 20 mm"), dict(diameter="620 ± 20 mm", marked="speed")]
)
def test_a_doubt_that_reaches_the_mark_leaves_it_open(entries):
    assert judged(**entries)[0] == "unsure"


def test_metres_a_second_and_feet_a_minute_are_told_apart():
    """6500 ft/min is 33 m/s; typed without its unit it is far past what any wheel bears, and refused."""
    assert (
        evaluate(wheel_speed, GOOD | dict(marked_speed="6500 ft/min"))["most"]
        < evaluate(wheel_speed, GOOD)["most"]
    )
    with pytest.raises(Refused, match="above 200"):
        wheel_speed(**GOOD | dict(marked_speed="6500"))


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(diameter="0"), "diameter", "below 10"),
        (dict(spindle="-1100"), "spindle", "below 10"),
        (dict(spindle="35 m/s"), "spindle", "a speed"),
        (dict(work="0 mm", work_turns="60"), "work", "below 1"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        wheel_speed(**GOOD | entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error), str(error)


def test_the_work_s_speed_is_told_and_a_ratio_that_is_not_usual_is_warned_of():
    """A journal of 54.9 mm at 60 1/min runs at 10.35 m/min, 0.1725 m/s; 32 m/s over it is 185.5 (π·d·n, by hand)."""
    spindle = f"{32 * 60 / (3.141592653589793 * 0.6):.6f}"
    remarks = wheel_speed(**GOOD | dict(spindle=spindle, work="54.9 mm", work_turns="60")).remarks
    (told,) = [r for r in remarks if "work runs" in r.text.plain()]
    assert (
        told.level == "warning" and "0.17 m/s" in told.text.plain() and "rim 186 times" in told.text.plain()
    )
    usual = wheel_speed(**GOOD | dict(spindle=spindle, work="54.9 mm", work_turns="110")).remarks
    assert all(r.level == "note" for r in usual) and any("rim 101 times" in r.text.plain() for r in usual)


@given(st.integers(50, 900), st.integers(200, 5000))
def test_the_most_that_it_tells_may_run_and_is_all_that_may(diameter, mark):
    found = wheel_speed(**GOOD | dict(diameter=f"{diameter} mm", marked="both", marked_turns=str(mark)))
    most = found["most"] * 60
    for turns, state in ((most * (1 - 1e-9), "pass"), (most * 1.001, "fail")):
        if 10 <= turns <= 60000:
            assert judged(diameter=f"{diameter} mm", marked_turns=str(mark), spindle=repr(turns))[0] == state


def test_inches_give_the_same():
    metric = evaluate(wheel_speed, GOOD | dict(diameter="609.6 mm"))
    inch = evaluate(wheel_speed, GOOD | dict(diameter="24 in"), "inch")
    assert all(inch[key] == pytest.approx(metric[key], rel=1e-12) for key in metric.outputs)


def test_every_line_of_the_example_was_replaced():
    assert not [
        line
        for line in left_to_replace("cutting", "wheel-speed", Path(__file__).parents[3])
        if "docs/" not in line
    ]
