"""A cam timed by wheel and dial: numpy's vectors and runs, verdicts, refusals, both sheets, inch."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.cam.cam_phase import cam_phase
from tests.checks.stations.cam.cam_phase import LATE, STOPS


def degrees(result, output):
    return math.degrees(float(result[output]))


def test_checks_are_vectors_and_the_arc_run_through():
    a, b = np.exp(1j * np.radians([37.6, 319.0]))
    assert np.degrees(np.angle(a + b)) % 360 == pytest.approx(358.3, abs=1e-9)
    run = np.linspace(350.5, 350.5 + (229 - 350.5) % 360, 100_001)
    assert run.mean() % 360 == pytest.approx(109.75, abs=1e-9)
    turned = np.exp(1j * np.radians([0, 0.875]))
    assert 22 * abs(turned[1] - turned[0]) == pytest.approx(0.335973, abs=1e-6)


@given(
    st.integers(0, 3599),
    st.integers(1800, 3000),
    st.integers(950, 1250),
    st.integers(100, 700),
    st.booleans(),
)
def test_the_wheel_may_stand_anywhere(zero, open_for, centre, stop, intake):
    zero, open_for, centre, stop = zero / 10, open_for / 10, centre / 10, stop / 10
    middle = centre if intake else -centre

    def told(x):
        return f"{(zero + x) % 360:.6f}°"

    found = cam_phase(
        valve="intake" if intake else "exhaust", stop_before=told(stop), stop_after=told(-stop),
        opening=told(middle - open_for / 2), closing=told(middle + open_for / 2),
        wanted="108°", low="60°", high="150°",
    )  # fmt: skip
    assert degrees(found, "centre") == pytest.approx(centre, abs=1e-5)
    assert degrees(found, "late") == pytest.approx((centre - 108) * (1 if intake else -1), abs=1e-5)
    assert (degrees(found, "top") - zero + 180) % 360 - 180 == pytest.approx(0, abs=1e-5)


def read(centre, **more):
    """Readings of an intake lobe open for 232° whose centre lies there, dead centre at 0 of the wheel."""
    return (
        dict(
            valve="intake",
            stop_before="20°",
            stop_after="340°",
            opening=f"{(centre - 116) % 360:.4f}°",
            closing=f"{centre + 116:.4f}°",
        )
        | more
    )


VERDICTS = {
    "example": ("pass", "Timed: centre 108.1°, 108.0° wanted", {}),
    "late": ("attention", "Cam late by 3.0°: centre 111.0°", read(111, teeth="58")),
    "early": ("attention", "Cam early by 3.0°: centre 105.0°", read(105, teeth="58")),
    "a tooth late": ("fail", "One tooth late: centre 120.4°, 108.0° wanted", read(120.414, teeth="58")),
    "two early": ("fail", "2 teeth early: centre 83.2°, 108.0° wanted", read(83.172, teeth="58")),
    "teeth not told": ("attention", "Cam late by 12.4°: centre 120.4°", read(120.4)),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = cam_phase(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)


def test_the_offset_key_is_told_only_with_its_radius():
    assert "dowel of 0.58 mm" in cam_phase(**read(111, radius="22 mm")).verdict.do.plain()
    assert "dowel does it" in cam_phase(**read(111)).verdict.do.plain()


REFUSALS = [
    ("low", read(108, low="112°"), "more than the most"),
    ("stop_after", read(108, stop_after="20°"), "the same as the other way"),
    ("closing", read(108) | dict(closing="352°"), "the same as opening"),
    ("opening", read(108) | dict(valve="exhaust"), "108.0° on the wrong side of top dead centre"),
    ("opening", read(108, opening="400°"), "above 360"),
]


@pytest.mark.parametrize("field, entries, words", REFUSALS)
def test_refusal(field, entries, words):
    with pytest.raises(Refused) as refused:
        cam_phase(**entries)
    error = refused.value.errors[0]
    assert error.field == field and words in error.sentence(), error.sentence()


@pytest.mark.parametrize("end", ["low", "nominal", "high"])
@pytest.mark.parametrize("valve", ["intake", "exhaust"])
def test_both_ends_of_the_sheet_are_in_order(end, valve):
    sheet = engine("TS-16")
    centre = math.degrees(getattr(sheet.feature(f"cam.centre_{valve}"), end))
    middle = centre if valve == "intake" else -centre
    told = read(108) | dict(
        valve=valve, opening=f"{(middle - 116) % 360}°", closing=f"{(middle + 116) % 360}°"
    )
    assert evaluate(cam_phase, told, standing=Standing(sheet)).verdict.state == "pass"


def test_limits_come_from_the_reader_s_own_sheet():
    by = {
        n: evaluate(cam_phase, read(108), standing=Standing(engine(n) if n else None)).verdict.state
        for n in ("TS-16", "RC-40", "")
    }
    assert by == {"TS-16": "pass", "RC-40": "unjudged", "": "unjudged"}


def test_a_doubt_that_reaches_the_limit_leaves_it_open():
    verdict = cam_phase(**read(109.8) | dict(closing="225.8 ± 1°")).verdict
    assert verdict.state == "unsure" and "centre" in verdict.headline.plain()


def test_inches_give_the_same():
    metric, inch = cam_phase(**LATE), evaluate(cam_phase, LATE | dict(radius=f"{22 / 25.4:.6f}"), "inch")
    assert inch.verdict.do.plain() == metric.verdict.do.plain() and "0.34 mm" in inch.verdict.do.plain()
    assert degrees(cam_phase(**STOPS), "top") == pytest.approx(358.3, abs=1e-9)
