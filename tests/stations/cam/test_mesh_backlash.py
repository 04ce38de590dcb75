"""Backlash of the cam's gears: involute teeth drawn anew, verdicts, the code to take, refusals, limits of both engines and none."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.cam.mesh_backlash import mesh_backlash

MM = 1e-3


def play_of_teeth(z1, z2, module, beyond):
    """Play on the working circle of two standard spur gears: pitch there less both teeth, each tooth's thickness found on its own
    drawn flank (points of an unwound string), mm."""

    def thickness(z, radius):
        base, pitch = module * z / 2 * math.cos(math.radians(20)), module * z / 2
        roll = np.linspace(0, 1.2, 400_001)
        x, y = base * (np.cos(roll) + roll * np.sin(roll)), base * (np.sin(roll) - roll * np.cos(roll))
        r, turn = np.hypot(x, y), np.arctan2(y, x)
        there, at_pitch = np.interp([radius, pitch], r, turn)
        return radius * (math.pi / z - 2 * (there - at_pitch))

    away = module * (z1 + z2) / 2 + beyond
    r1, r2 = away * z1 / (z1 + z2), away * z2 / (z1 + z2)
    return 2 * math.pi * r1 / z1 - thickness(z1, r1) - thickness(z2, r2)


def test_checks_are_what_drawn_teeth_leave():
    assert play_of_teeth(18, 41, 3, 0.15) == pytest.approx(0.11007, abs=5e-6)


@given(st.integers(1, 40))
def test_distance_gives_what_drawn_teeth_leave(hundredths):
    found = mesh_backlash(
        how="distance", distance=f"{88.5 + hundredths / 100} mm", drawn="88.5", aim="0", low="0", helix="0"
    )
    assert found["mean"] / MM == pytest.approx(play_of_teeth(18, 41, 3, hundredths / 100), abs=1e-6)


def read(*plays):
    return dict(readings=" | ".join(f"{p} mm" for p in plays), dial_radius="69 mm")


def test_the_last_code_sold_is_not_called_uneven():
    told = dict(readings="0.06 mm | 0.06 mm | 0.06 mm", dial_radius="69 mm", code="4")
    found = evaluate(mesh_backlash, told, standing=Standing(engine("TS-16")))
    assert found.verdict.state == "attention" and "Code 4 is the last" in found.verdict.do.plain()


VERDICTS = {
    "as on the sheet": ("pass", "Play right: 0.026 mm to 0.044 mm", {}),
    "on both limits": ("attention", "Play differs by 0.040 mm round it", read(0.01, 0.03, 0.05)),
    "on its least": ("pass", "Play right: 0.010 mm to 0.030 mm", read(0.01, 0.02, 0.03)),
    "too tight": ("fail", "Too tight: 0.005 mm of 0.01 mm", read(0.005, 0.01, 0.015)),
    "no play": ("fail", "Gears bind: no play", read(0, 0, 0.01)),
    "much": ("attention", "Play 0.060 mm, 0.050 mm at most when new", read(0.05, 0.055, 0.06)),
    "worn": ("fail", "Worn: 0.110 mm of play, 0.100 mm allowed", read(0.10, 0.11, 0.105)),
    "case set apart": (
        "attention",
        "Play 0.077 mm, 0.050 mm at most when new",
        dict(how="distance", distance="103.6"),
    ),
    "case brought together": ("fail", "Gears bind: no play", dict(how="distance", distance="103.5")),
    "the same with a smaller gear": (
        "pass",
        "Play right: 0.022 mm to 0.022 mm",
        dict(how="distance", distance="103.5", code="-3"),
    ),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = mesh_backlash(**entries).verdict
    said = verdict.headline.plain()
    assert verdict.state == state and said.replace("0", "") == words.replace("0", ""), said


@given(st.integers(-60, 90))
def test_the_gear_that_is_told_serves_when_it_is_fitted(micrometres):
    """Where one serves at all; by reading again with that gear."""
    entries = dict(how="distance", distance=f"{103.54 + micrometres / 1000:.3f}")
    found = mesh_backlash(**entries)
    again = mesh_backlash(**entries, code=f"{float(found['take']):.0f}")
    assert again["mean"] == pytest.approx(found["least_then"], abs=0.3e-6)
    served = abs(micrometres) <= 60  # four steps of 0.010 mm, and the limits' own 0.020 mm
    if served:
        assert again.verdict.state == "pass", again.verdict.headline.plain()


def test_a_gear_beyond_what_is_sold_is_not_sent_for():
    told = mesh_backlash(how="distance", distance="103.8").verdict
    assert told.state == "fail" and "Measure both before you order" in told.do.plain()


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(code="1.5"), "code", "whole numbers"),
        (dict(low="0.2"), "low", "more than the most"),
        (dict(how="distance", distance="60"), "distance", "do not mesh"),
        (read(0.02, 0.03), "readings", "3"),
        (dict(dial_radius="5"), "dial_radius", "below 10"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        mesh_backlash(**entries)
    error = refused.value.errors[0]
    assert error.field.startswith(field) and words in str(error), str(error)


def test_inches_give_the_same():
    metric = evaluate(
        mesh_backlash, dict(readings="0.0254 mm | 0.0508 mm | 0.0381 mm", dial_radius="76.2 mm")
    )
    inch = evaluate(mesh_backlash, dict(readings="0.001 | 0.002 | 0.0015", dial_radius="3"), "inch")
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9, abs=1e-12), output


def test_limits_come_from_the_engine_s_sheet_or_from_the_reader():
    told = read(0.03, 0.03, 0.03) | dict(code="0", radius="69", helix="22")
    by = {
        name: evaluate(mesh_backlash, told, standing=Standing(engine(name) if name else None)).verdict.state
        for name in ("TS-16", "RC-40", "")
    }
    assert by == {"TS-16": "pass", "RC-40": "unjudged", "": "unjudged"}
    typed = dict(step="0.01", last="4", aim="0.03", low="0.01", high="0.05", worn="0.1")
    assert evaluate(mesh_backlash, told | typed, standing=Standing(engine("RC-40"))).verdict.state == "pass"
    assert evaluate(mesh_backlash, {}, standing=Standing(engine("TS-16"))).verdict.state == "awaited"


@pytest.mark.parametrize("end", ["low", "nominal", "high"])
def test_both_ends_of_the_sheet_are_in_order(end):
    sheet = engine("TS-16")
    play = getattr(sheet.feature("cam.gear_backlash"), end) / MM
    apart = getattr(sheet.feature("crankcase.cam_distance"), end) / MM
    for told in (read(play, play, play), dict(how="distance", distance=f"{apart:.4f}")):
        assert (
            evaluate(mesh_backlash, told | dict(code="0"), standing=Standing(sheet)).verdict.state == "pass"
        )


@pytest.mark.parametrize(
    "entries, what",
    [
        (dict(how="distance", distance="103.520 ± 0.02 mm"), "the backlash"),
        (dict(readings="0.02 mm | 0.03 mm | 0.048 ± 0.01 mm"), "backlash"),
    ],
)
def test_a_doubt_that_reaches_a_limit_leaves_it_open(entries, what):
    found = mesh_backlash(**entries)
    assert found.verdict.state == "unsure" and what in found.verdict.headline.plain()
