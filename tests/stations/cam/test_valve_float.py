"""Valve float: a lift curve in time by numpy, verdicts, refusals, limits of both engines and none."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.cam.valve_float import valve_float
from tests.checks.stations.cam.valve_float import MASS, SPEEDS, TRAIN

LAWS = {
    "4567": lambda x: 35 * x**4 - 84 * x**5 + 70 * x**6 - 20 * x**7,
    "345": lambda x: 10 * x**3 - 15 * x**4 + 6 * x**5,
    "cycloid": lambda x: x - np.sin(2 * np.pi * x) / (2 * np.pi),
}


def speed_in_time(law, shut, opened, lift=8.2e-3 * 1.1, mass=MASS / 1000, flank=75):
    """Crank's turns a minute at which, over one whole lift in 40 000 steps of time, the spring is first short of mass × deceleration."""

    def room(speed):
        cam = speed / 2 / 60 * 360  # degrees a second
        angle = np.linspace(-flank, flank, 40_001)
        lifted = lift * LAWS[law](1 - np.abs(angle) / flank)
        dt = (angle[1] - angle[0]) / cam
        slowed = -(lifted[2:] - 2 * lifted[1:-1] + lifted[:-2]) / dt**2
        return np.min(shut + (opened - shut) * lifted[1:-1] / lift - mass * slowed)

    return brentq(room, 500, 20_000, xtol=1e-6)


@pytest.mark.parametrize("law", SPEEDS)
def test_checks_are_what_the_curve_in_time_gives(law):
    assert speed_in_time(law, 250, 650) == pytest.approx(SPEEDS[law], abs=0.5)


@given(st.sampled_from(sorted(LAWS)), st.integers(150, 500), st.integers(30, 800), st.integers(55, 90))
def test_any_spring_and_lobe_agree_with_the_curve_in_time(law, shut, more, flank):
    found = valve_float(
        **TRAIN
        | dict(law=law, seat_load=f"{shut}", open_load=f"{shut + more}", flank=f"{flank}", top_speed="1000")
    )
    assert 60 * float(found["speed"]) == pytest.approx(
        speed_in_time(law, shut, shut + more, flank=flank), rel=2e-4
    )
    assert float(found["spring"]) == pytest.approx(
        float(found["inertia"]) * float(found["margin"]) ** 2, rel=1e-9
    )


def test_a_stronger_spring_as_told_gives_the_margin():
    found = valve_float(open_load="600", seat_load="230")
    factor = float(found["load_wanted"]) / 600
    better = valve_float(open_load=f"{600 * factor:.6f}", seat_load=f"{230 * factor:.6f}")
    assert float(better["margin"]) == pytest.approx(1.08, rel=1e-6)


VERDICTS = {
    "as on the sheet": ("pass", "Follows its lobe up to", {}),
    "the exhaust": ("pass", "Follows its lobe up to", dict(valve="exhaust", valve_mass="72 g")),
    "springs that sagged": (
        "attention",
        "Little margin: floats at",
        dict(seat_load="220 N", open_load="580 N"),
    ),
    "weak springs": ("fail", "Floats at", dict(seat_load="170 N", open_load="450 N")),
    "turned too fast": ("fail", "Floats at", dict(top_speed="6000 1/min")),
    "heavy valves": ("attention", "Little margin", dict(valve_mass="105 g")),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = valve_float(**entries).verdict
    assert verdict.state == state and verdict.headline.plain().startswith(words), verdict.headline.plain()


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(open_load="250 N"), "open_load", "no more than with the valve shut"),
        (dict(flank="10"), "flank", "below 30"),
        (dict(valve_mass="80 N"), "valve_mass", "a force"),
        (dict(top_speed="0"), "top_speed", "below 200"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        valve_float(**entries)
    error = refused.value.errors[0]
    assert error.field == field and words in str(error), str(error)


def test_inches_give_the_same():
    metric = evaluate(
        valve_float, dict(seat_load="266.8932967 N", open_load="622.7510256 N", lobe_lift="7.62 mm")
    )
    inch = evaluate(valve_float, dict(seat_load="60", open_load="140", lobe_lift="0.3"), "inch")
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-8, abs=1e-12), output


def test_limits_come_from_the_engine_s_sheet_or_from_the_reader():
    told = {name: text for name, text in TRAIN.items() if name != "top_speed"}
    by = {
        name: evaluate(valve_float, told, standing=Standing(engine(name) if name else None)).verdict.state
        for name in ("TS-16", "")
    }
    assert by == {"TS-16": "pass", "": "unjudged"}
    assert (
        evaluate(valve_float, told | dict(top_speed="4500"), standing=Standing(None)).verdict.state == "pass"
    )
    assert evaluate(valve_float, {}, standing=Standing(engine("TS-16"))).verdict.state == "awaited"


@pytest.mark.parametrize("valve", ["intake", "exhaust"])
@pytest.mark.parametrize("end", ["low", "nominal", "high"])
def test_both_ends_of_the_sheet_are_in_order(valve, end):
    sheet = engine("TS-16")
    told = dict(
        valve=valve,
        seat_load=f"{getattr(sheet.feature('spring.seat_load'), end)} N",
        open_load=f"{getattr(sheet.feature('spring.open_load'), end)} N",
    )
    verdict = evaluate(valve_float, told, standing=Standing(sheet, f"1 {valve}")).verdict
    assert verdict.state == "pass", verdict.headline.plain()


def test_a_doubt_that_reaches_a_limit_leaves_it_open():
    found = valve_float(seat_load="235 ± 10 N", open_load="595 ± 30 N")
    assert found.verdict.state == "unsure" and "margin" in found.verdict.headline.plain()
    assert math.isfinite(float(found["speed"]))
