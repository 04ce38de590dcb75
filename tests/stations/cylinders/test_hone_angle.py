"""The cross-hatch against a stone's path; verdicts, refusals, limits of both sheets, and what must always be so."""

import math
import re

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.cylinders.hone_angle import hone_angle
from tests.checks.stations.cylinders.hone_angle import CASE, MEAN

READ = dict(strokes="110 1/min", stroke="95 mm", counted="single", drive="crank")


def on(sheet, **entries):
    return evaluate(hone_angle, entries, standing=Standing(engine(sheet) if sheet else None))


def degrees(found, name):
    return math.degrees(found[name])


def test_checks_are_the_path_of_a_stone():
    """Strokes of 95 mm, 55 pairs a minute, as a sine over time; the wall passes by at π·88·150 mm/min."""
    t = np.linspace(0, 1 / 110, 200001)  # from the top to the bottom, minutes
    y = 95 / 2 * np.cos(2 * np.pi * 55 * t)
    slope = np.abs(np.gradient(y, t)) / (np.pi * 88 * 150)
    angle = np.degrees(2 * np.arctan(slope))
    found = hone_angle(**CASE)
    assert degrees(found, "judged") == pytest.approx(angle.max(), abs=1e-5)
    assert degrees(found, "near_end") == pytest.approx(np.interp(10, 95 / 2 - y, angle), abs=1e-4)
    mean = 2 * np.degrees(np.arctan(95 * 110 / (np.pi * 88 * 150)))
    assert degrees(found, "mean") == pytest.approx(mean, abs=1e-9)
    n = brentq(lambda n: 2 * np.arctan(95 * 110 / (np.pi * 88 * n)) - np.pi / 4, 1, 1000)
    assert hone_angle(**MEAN)["spindle"] * 60 == pytest.approx(n, abs=1e-6)


VERDICTS = {
    "in order": (dict(spindle="130 1/min"), "pass", "Cross-hatch 49.1°"),
    "too flat": (dict(spindle="220 1/min"), "attention", "Cross-hatch too flat: 30.2°, 40° wanted"),
    "too steep": (dict(spindle="80 1/min"), "attention", "Cross-hatch too steep: 73.2°, 60° wanted"),
    "pairs taken for strokes": (
        dict(spindle="130 1/min", counted="pairs"),
        "attention",
        "Cross-hatch too steep: 84.8°, 60° wanted",
    ),
    "by hand": (
        dict(spindle="130 1/min", drive="even"),
        "attention",
        "Cross-hatch too flat: 32.4°, 40° wanted",
    ),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    entries, state, headline = VERDICTS[name]
    verdict = on("TS-16", **READ | dict(bore="88 mm") | entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, headline)


def test_the_ends_of_the_sheets_own_limits_are_in_order():
    for angle in (40, 50, 60):
        n = 95 * 110 * math.pi / 2 / (math.pi * 88 * math.tan(math.radians(angle / 2)))
        found = on("TS-16", **READ, bore="88 mm", spindle=f"{n!r} 1/min")
        assert found.verdict.state == "pass", (angle, found.verdict.headline.plain())


def test_limits_are_those_of_the_engine_in_hand():
    inch = READ | dict(bore="3.75 in", spindle="130 1/min")
    assert on("RC-40", **inch).verdict.state == "unjudged"
    assert on("", **inch).verdict.state == "unjudged"
    assert on("RC-40", **inch, low="40°", high="60°").verdict.state == "pass"


@pytest.mark.parametrize("spindle", ["80 1/min", "220 1/min"])
def test_what_is_told_serves_when_it_is_set(spindle):
    read = READ | dict(bore="88 mm")
    told = on("TS-16", **read, spindle=spindle).verdict.do.plain()
    n, strokes = re.search(r"spindle to (\d+) .*single strokes at (\d+) ", told).groups()
    assert on("TS-16", **read, spindle=f"{n} 1/min").verdict.state == "pass"
    assert on("TS-16", **read | dict(strokes=f"{strokes} 1/min"), spindle=spindle).verdict.state == "pass"


def test_a_doubt_that_reaches_a_limit_leaves_it_open():
    assert on("TS-16", **READ, bore="88 mm", spindle="163 ± 8 1/min").verdict.state == "unsure"
    assert on("TS-16", **READ, bore="88 mm", spindle="130 ± 2 1/min").verdict.state == "pass"


@given(st.floats(20, 200), st.floats(30, 400), st.floats(10, 140))
def test_the_spindle_that_is_told_gives_the_angle(strokes, spindle, angle):
    asked = CASE | dict(strokes=f"{strokes!r} 1/min", spindle=f"{spindle!r} 1/min", wanted=f"{angle!r}°")
    told = hone_angle(**asked)["spindle"] * 60
    if 1 <= told <= 2000:
        again = hone_angle(**asked | dict(spindle=f"{told!r} 1/min"))
        assert degrees(again, "judged") == pytest.approx(angle, rel=1e-9)


def test_pairs_are_twice_as_many_strokes():
    pairs = hone_angle(**CASE | dict(strokes="55 1/min", counted="pairs"))
    assert pairs["judged"] == pytest.approx(hone_angle(**CASE)["judged"], rel=1e-12)


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(spindle="0"), "spindle", "below 1"),
        (
            dict(stroke_by="reach", length="50 mm", stones="120 mm", overrun="20 mm"),
            "stones",
            "give shorter ones",
        ),
        (dict(low="60°", high="40°"), "low", "more than the most"),
        (dict(bore="8.8 mm"), "bore", "below 20"),
        (dict(strokes="110 mm"), "strokes", "a length"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        hone_angle(**entries)
    error = refused.value.errors[0]
    assert error.field == field and words in str(error), str(error)


def test_inches_give_the_same():
    metric = evaluate(hone_angle, CASE | dict(bore="88.9 mm", stroke="95.25 mm"))
    inch = evaluate(hone_angle, CASE | dict(bore="3.5", stroke="3.75"), "inch")
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9), output
