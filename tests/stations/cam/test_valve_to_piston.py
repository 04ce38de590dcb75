"""Room between valve and piston: scipy's own search, verdicts, refusals, limits of both engines and none."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import minimize_scalar

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.cam.valve_to_piston import valve_to_piston
from calc.stations.index import find
from tests.checks.stations.cam.valve_to_piston import LEAST

MM = 1e-3


def worked_anew(throw, way, lean, centre):
    """Way left in mm over the crank's angle in degrees, from the vector crank pin to wrist pin and numpy's polynomial."""
    law = np.polynomial.Polynomial([0, 0, 0, 0, 35, -84, 70, -20])

    def left(angle):
        a = math.radians(angle)
        pin = np.array([throw * math.sin(a), throw * math.cos(a)])
        height = pin[1] + math.sqrt(137.0**2 - pin[0] ** 2)
        x = max(0.0, 1 - abs(angle - centre) / 2 / 75)
        return (
            way
            + (throw + 137.0 - height) / math.cos(math.radians(lean))
            - max(0.0, 8.2 * law(x) * 1.1 - 0.15)
        )

    found = minimize_scalar(left, bounds=(-60, 90), method="bounded", options={"xatol": 1e-9})
    return found.fun, found.x


@pytest.mark.parametrize("case", LEAST)
def test_checks_are_what_scipy_finds(case):
    least, angle = worked_anew(*case)
    assert (least, angle) == (
        pytest.approx(LEAST[case][0], abs=5e-5),
        pytest.approx(LEAST[case][1], abs=1e-3),
    )


CLAY = dict(how="clay", edge="2 mm")
VERDICTS = {
    "by the sum": ("pass", "Clear: 2.80 mm left 6.8° after top dead centre", {}),
    "the exhaust valve": (
        "pass",
        "Clear: 3.53 mm left 5.6° before top dead centre",
        dict(valve="exhaust", way="4.60", centre="112"),
    ),
    "by a dial": ("pass", "Clear: 2.82 mm left 7.0° after top dead centre", dict(how="dial")),
    "by clay": ("pass", "Clear: 2.80 mm left when running", CLAY),
    "clay on the limit": ("pass", "Clear: 1.50 mm left when running", CLAY | dict(clay="1.90 mm")),
    "little room": ("attention", "Little room: 1.490 mm, 1.50 mm wanted", CLAY | dict(clay="1.89 mm")),
    "on what is needed": ("attention", "Little room: 1.00 mm, 1.50 mm wanted", CLAY | dict(clay="1.40 mm")),
    "too near": ("fail", "Too near: 0.990 mm of 1.00 mm running", CLAY | dict(clay="1.39 mm")),
    "it hits": ("fail", "It hits: 0.10 mm too little", CLAY | dict(clay="0.30 mm")),
    "a dial that was not read far enough": (
        "attention",
        "The least is the last reading: read on",
        dict(how="dial", ways="-10; 5.0 | 0; 4.0 | 10; 3.5"),
    ),
    "a narrow pocket": (
        "attention",
        "Little room beside: 1.00 mm, 1.20 mm wanted",
        CLAY | dict(edge="1.00 mm"),
    ),
    "a pocket's wall": ("fail", "Too near beside: 0.70 mm of 0.80 mm", CLAY | dict(edge="0.70 mm")),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = valve_to_piston(**entries).verdict
    said = verdict.headline.plain()
    assert verdict.state == state and said.replace("0", "") == words.replace("0", ""), said


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(way="-1 mm"), "way", "below 0"),
        (dict(centre="20"), "centre", "below 60"),
        (dict(rod="41 mm", throw="45 mm"), "rod", "no longer than the throw"),
        (dict(how="dial", ways="0; 3 | 5; 2.9 | 5; 3"), "ways.3.1", "rising order"),
        (dict(how="dial", ways="0; 3 | 5; 2.9"), "ways", "3"),
        (dict(lash_read="3 N"), "lash_read", "a force"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        valve_to_piston(**entries)
    error = refused.value.errors[0]
    assert error.field.startswith(field) and words in str(error), str(error)


@given(st.integers(95, 125), st.integers(150, 800))
def test_it_is_never_farther_than_at_top_dead_centre(centre, way):
    """And never as near where the lobe does not lean to that side: intake after, exhaust before."""
    for valve, side in (("intake", 1), ("exhaust", -1)):
        found = valve_to_piston(valve=valve, centre=f"{centre}", way=f"{way / 100}", lash_read="0")
        x = 1 - centre / 2 / 75
        at_top = way / 100 - 8.2 * 1.1 * (35 * x**4 - 84 * x**5 + 70 * x**6 - 20 * x**7)
        assert found["least"] / MM <= at_top + 1e-9
        assert ("after" if side > 0 else "before") in found.figures[0].alt.plain()


@given(st.floats(0, 0.5), st.floats(0.5, 10))
def test_lash_is_given_and_taken_once(lash, clay):
    found = valve_to_piston(how="clay", clay=f"{clay:.3f}", lash_read=f"{lash:.3f}", adds="0")
    assert found["running"] / MM == pytest.approx(float(f"{clay:.3f}") - float(f"{lash:.3f}"), abs=1e-9)


def test_a_cam_timed_nearer_takes_what_is_told():
    said = next(r.text.values["d"] for r in valve_to_piston().remarks if "degree" in r.text.template)
    moved = valve_to_piston()["least"] - valve_to_piston(centre="107")["least"]
    assert float(said) == pytest.approx(moved, abs=1e-9) and 0.05 * MM < moved < 0.15 * MM


def test_inches_give_the_same():
    metric = evaluate(valve_to_piston, dict(way="5.08 mm", lash_read="0.254 mm"))
    inch = evaluate(valve_to_piston, dict(way="0.2", lash_read="0.01"), "inch")
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9, abs=1e-12), output


def test_limits_come_from_the_engine_s_sheet_or_from_the_reader():
    told = dict(how="clay", clay="3 mm", lash_read="0", edge="2 mm", lean="0")
    by = {
        name: evaluate(
            valve_to_piston, told | dict(valve="intake"), standing=Standing(engine(name) if name else None)
        ).verdict.state
        for name in ("TS-16", "RC-40", "")
    }
    assert by == {"TS-16": "pass", "RC-40": "unjudged", "": "unjudged"}
    typed = dict(wanted="1.5", needed="1.0")
    found = evaluate(valve_to_piston, told | typed | dict(valve="intake"), standing=Standing(engine("RC-40")))
    assert found.verdict.state == "pass"
    assert any("not judged" in r.text.plain() for r in found.remarks)
    assert evaluate(valve_to_piston, {}, standing=Standing(engine("TS-16"))).verdict.state == "awaited"


@pytest.mark.parametrize("valve", ["intake", "exhaust"])
@pytest.mark.parametrize("which", ["low", "nominal", "high"])
def test_both_ends_of_the_sheet_are_in_order(valve, which):
    sheet = engine("TS-16")
    told = dict(
        valve=valve, way=f"{getattr(sheet.feature(f'valve.way_{valve}'), which) / MM} mm", edge="2 mm"
    )
    for end in ("low", "high"):
        centre = math.degrees(getattr(sheet.feature(f"cam.centre_{valve}"), end))
        verdict = evaluate(
            find("valve-to-piston"),
            told | dict(centre=f"{centre:.6f}"),
            standing=Standing(sheet, f"1 {valve}"),
        ).verdict
        assert verdict.state == "pass", verdict.headline.plain()


@pytest.mark.parametrize(
    "entries, what",
    [
        (CLAY | dict(clay="1.92 ± 0.05 mm"), "room to the piston"),
        (CLAY | dict(edge="0.82 ± 0.05 mm"), "beside the edge"),
        (dict(way="2.42 ± 0.1 mm"), "room to the piston"),
    ],
)
def test_a_doubt_that_reaches_a_limit_leaves_it_open(entries, what):
    found = valve_to_piston(**entries)
    assert found.verdict.state == "unsure" and what in found.verdict.headline.plain()
