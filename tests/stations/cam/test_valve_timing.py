"""A cam's timing: open sets counted on a circle, there and back, verdicts, refusals, both sheets and none."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.cam.valve_timing import valve_timing
from tests.checks.stations.cam.valve_timing import FOUND

STEPS = 72_000


def counted(d_i, d_e, c_i, c_e):
    """Overlap and events, °, of sets of crank angles on a circle of 720°; top dead centre of the exchange is 0."""
    at = (np.arange(STEPS) + 0.5) * 720 / STEPS

    def near(centre):
        return np.abs((at - centre + 360) % 720 - 360)

    intake, exhaust = near(c_i) < d_i / 2, near(-c_e) < d_e / 2
    whole = 720 / STEPS
    return {
        "overlap": np.sum(intake & exhaust) * whole,
        "in_opens": np.sum(intake & (at > 360)) * whole,
        "in_closes": np.sum(intake & (at > 180) & (at < 360)) * whole,
        "ex_opens": np.sum(exhaust & (at > 360) & (at < 540)) * whole,
        "ex_closes": np.sum(exhaust & (at < 360)) * whole,
    }


@pytest.mark.parametrize("name", FOUND)
def test_checks_are_what_is_counted_on_a_circle(name):
    entries, told = FOUND[name]
    d = [
        float(entries[k][:-1])
        for k in ("intake_duration", "exhaust_duration", "intake_centre", "exhaust_centre")
    ]
    for output, value in counted(*d).items():
        assert told[output] == pytest.approx(value, abs=0.021), output


@given(st.integers(2000, 3000), st.integers(2000, 3000), st.integers(1000, 1200), st.integers(1000, 1200))
def test_events_and_lobes_give_each_other(d_i, d_e, c_i, c_e):
    lobes = valve_timing(
        known="lobes", intake_duration=f"{d_i / 10}°", exhaust_duration=f"{d_e / 10}°",
        intake_centre=f"{c_i / 10}°", exhaust_centre=f"{c_e / 10}°",
    )  # fmt: skip
    names = dict(
        intake_opens="in_opens",
        intake_closes="in_closes",
        exhaust_opens="ex_opens",
        exhaust_closes="ex_closes",
    )
    events = valve_timing(known="events", **{k: f"{math.degrees(lobes[v]):.6f}°" for k, v in names.items()})
    for output in lobes.outputs:
        assert events[output] == pytest.approx(float(lobes[output]), abs=1e-7), output


@given(st.integers(0, 60))
def test_a_cam_moved_in_its_gear_changes_neither_overlap_nor_separation(late):
    def moved(by):
        return valve_timing(
            known="lobes", intake_duration="244°", exhaust_duration="240°",
            intake_centre=f"{106 + by / 10}°", exhaust_centre=f"{112 - by / 10}°",
        )  # fmt: skip

    here, there = moved(0), moved(late)
    for output in ("overlap", "separation"):
        assert there[output] == pytest.approx(float(here[output]), abs=1e-9)
    assert math.degrees(there["advance"] - here["advance"]) == pytest.approx(-late / 10, abs=1e-9)


LOBES = dict(
    known="lobes",
    intake_duration="216°",
    exhaust_duration="216°",
    intake_centre="108°",
    exhaust_centre="112°",
)
VERDICTS = {
    "example": ("pass", "Timed: intake centre 107.0°, exhaust 111.0°", {}),
    "as on the sheet": ("pass", "Timed: intake centre 108.0°, exhaust 112.0°", LOBES),
    "late": ("attention", "Cam late: intake at 112.0°, exhaust at 108.0°", LOBES | dict(intake_centre="112°", exhaust_centre="108°")),
    "early": ("attention", "Cam early: intake at 104.0°, exhaust at 116.0°", LOBES | dict(intake_centre="104°", exhaust_centre="116°")),
    "closer lobes": ("attention", "Intake centre at 104.0°, 106.0° to 110.0° told", LOBES | dict(intake_centre="104°", exhaust_centre="108°")),
    "exhaust alone": ("attention", "Exhaust centre at 118.0°, 110.0° to 114.0° told", LOBES | dict(exhaust_centre="118°")),
}  # fmt: skip


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = valve_timing(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)


REFUSALS = [
    ("intake_closes", dict(intake_opens="-80°", intake_closes="40°"), "open for 140.0°"),
    ("intake_opens", dict(intake_opens="90°", exhaust_closes="80°"), "together"),
    ("intake_duration", LOBES | dict(intake_duration="100°"), "below 150"),
    ("intake_centre", LOBES | dict(intake_centre="3 mm"), "a length"),
]


@pytest.mark.parametrize("field, entries, words", REFUSALS)
def test_refusal(field, entries, words):
    with pytest.raises(Refused) as refused:
        valve_timing(**entries)
    error = refused.value.errors[0]
    assert error.field == field and words in error.sentence(), error.sentence()


@pytest.mark.parametrize("end", ["low", "nominal", "high"])
def test_both_ends_of_the_sheet_are_in_order(end):
    sheet = engine("TS-16")
    for name, id in (
        ("intake_centre", "cam.centre_intake"),
        ("exhaust_centre", "cam.centre_exhaust"),
        ("intake_duration", "cam.duration"),
    ):
        told = LOBES | {name: f"{math.degrees(getattr(sheet.feature(id), end))}°"}
        assert evaluate(valve_timing, told, standing=Standing(sheet)).verdict.state == "pass", name


def test_limits_come_from_the_reader_s_own_sheet():
    by = {
        n: evaluate(valve_timing, LOBES, standing=Standing(engine(n) if n else None)).verdict.state
        for n in ("TS-16", "RC-40", "")
    }
    assert by == {"TS-16": "pass", "RC-40": "unjudged", "": "unjudged"}
    assert evaluate(valve_timing, {}, standing=Standing(engine("TS-16"))).verdict.state == "awaited"


def test_a_doubt_that_reaches_the_limit_leaves_it_open():
    verdict = valve_timing(**LOBES | dict(intake_centre="109.8 ± 1°")).verdict
    assert verdict.state == "unsure" and "intake centre" in verdict.headline.plain()


def test_no_overlap_is_said():
    assert any("no overlap" in r.text.plain() for r in valve_timing(**LOBES).remarks)
    assert not any("no overlap" in r.text.plain() for r in valve_timing(**FOUND["a mild cam"][0]).remarks)


def test_the_diagram_turns_with_the_clock():
    """The intake's arc lies to the right of the dead centres, the exhaust's to the left."""
    shapes = valve_timing(**LOBES).figures[0].shapes
    intake, exhaust = (
        next(s for s in shapes if getattr(s, "style", "") == style and len(getattr(s, "points", ())) > 9)
        for style in ("outline", "band")
    )
    assert sum(x for x, _ in intake.points) > 0 > sum(x for x, _ in exhaust.points)
