"""Lash, cold and running: parts set at their heights and the rocker turned, verdicts, refusals, limits of both engines and none."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.reference.materials import MATERIALS
from calc.stations.cam.lash_hot import lash_hot

MM = 1e-3


def long(id, length, celsius):
    return length * (1 + MATERIALS[id].strain_at(celsius + 273.15))


def set_up(lash, case, barrel, head, valve, rod, stem="valve-steel"):
    """Lash in mm of the example's parts, each at its heat in °C: every part at its height, the rocker turned until its cup sits on the
    pushrod, the gap over the tip read. The adjuster is set cold."""

    def heights(case, barrel, head, valve, rod):
        face = long("mg-az91", 101.7, case) + long("grey-iron", 110, barrel)
        shaft = face + long("al-si-cu-t6", 128, head)
        tip = shaft - long("al-si-cu-t6", 107.6, head) + long(stem, 112, valve)
        top = long("forged-steel", 67, rod) + 270 * (1 + 12e-6 * (rod - 20))
        return shaft, tip, top

    def over_tip(shaft, top, adjuster):
        turn = brentq(lambda a: shaft - 35 * a - adjuster - top, -9, 9, xtol=1e-15)
        return shaft + 38.5 * turn

    cold = heights(20, 20, 20, 20, 20)
    adjuster = brentq(lambda z: over_tip(cold[0], cold[2], z) - cold[1] - lash, -50, 50, xtol=1e-13)
    shaft, tip, top = heights(case, barrel, head, valve, rod)
    return over_tip(shaft, top, adjuster) - tip


@given(
    st.integers(20, 120),
    st.integers(20, 220),
    st.integers(20, 200),
    st.integers(20, 400),
    st.integers(20, 120),
    st.integers(0, 60),
)
def test_parts_set_at_their_heights_leave_the_same(case, barrel, head, valve, rod, lash):
    found = lash_hot(
        lash=f"{lash / 100}",
        case_temperature=f"{case}",
        cylinder_temperature=f"{barrel}",
        head_temperature=f"{head}",
        valve_temperature=f"{valve}",
        rod_temperature=f"{rod}",
    )
    assert found["running"] / MM == pytest.approx(
        set_up(lash / 100, case, barrel, head, valve, rod), abs=1e-7
    )


@given(st.integers(-50, 25))
def test_frost_has_all_at_one_heat(frost):
    assert lash_hot(frost=f"{frost}")["frost"] / MM == pytest.approx(set_up(0.15, *[frost] * 5), abs=1e-7)


def test_the_cold_lash_that_is_told_serves():
    for entries in (
        dict(lash="0"),
        dict(lash="0", frost="-30"),
        dict(
            lash="0",
            pushrod_expansion="24",
            valve="exhaust",
            valve_temperature="320",
            valve_material="austenitic-valve-steel",
        ),
    ):
        wanted = lash_hot(**entries)["cold"] / MM
        again = lash_hot(**entries | dict(lash=f"{wanted + 0.001:.4f}"))
        assert again.verdict.state in ("pass", "attention") and "Held" not in again.verdict.headline.plain()
        assert again["running"] >= 0.05 * MM and again["frost"] > 0


HOT_EXHAUST = dict(valve="exhaust", valve_temperature="320 °C", valve_material="austenitic-valve-steel")
VERDICTS = {
    "as on the sheet": ("pass", "Stays shut: 0.68 mm running, 0.06 mm in frost", {}),
    "no lash": ("fail", "Held open in frost: 0.09 mm too little", dict(lash="0.00 mm")),
    "aluminium pushrods": (
        "attention",
        "Little lash running",
        HOT_EXHAUST | dict(pushrod_expansion="23", lash="0.05"),
    ),
    "aluminium pushrods, tight": (
        "fail",
        "Held open running",
        HOT_EXHAUST | dict(pushrod_expansion="24", lash="0.02"),
    ),
    "far too loose": ("attention", "Much lash running", dict(lash="0.40 mm")),
    "a hard winter": ("fail", "Held open in frost", dict(frost="-40 °C")),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = lash_hot(**entries).verdict
    assert verdict.state == state and verdict.headline.plain().startswith(words), verdict.headline.plain()


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(lash="-0.1 mm"), "lash", "below 0"),
        (dict(pushrod_expansion="50"), "pushrod_expansion", "above 30"),
        (dict(valve_temperature="700 °C"), "valve_temperature", "above 600"),
        (dict(lash="0.1 N"), "lash", "a force"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        lash_hot(**entries)
    error = refused.value.errors[0]
    assert error.field == field and words in str(error), str(error)


def test_inches_give_the_same():
    metric = evaluate(lash_hot, dict(lash="0.2032 mm", pushrod="254 mm"))
    inch = evaluate(lash_hot, dict(lash="0.008", pushrod="10"), "inch")
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9, abs=1e-12), output


def test_limits_come_from_the_engine_s_sheet_or_from_nobody():
    told = dict(lash="0.15", valve="intake", pushrod_expansion="12")
    assert evaluate(lash_hot, told, standing=Standing(engine("TS-16"))).verdict.state == "pass"
    assert evaluate(lash_hot, told, standing=Standing(None)).verdict.state in ("awaited", "unjudged")
    assert evaluate(lash_hot, {}, standing=Standing(engine("TS-16"))).verdict.state == "awaited"


@pytest.mark.parametrize("valve", ["intake", "exhaust"])
@pytest.mark.parametrize("end", ["low", "nominal", "high"])
def test_both_ends_of_the_sheet_are_in_order(valve, end):
    sheet = engine("TS-16")
    told = dict(lash=f"{getattr(sheet.feature('lifter.lash'), end) / MM} mm", valve=valve)
    verdict = evaluate(lash_hot, told, standing=Standing(sheet, f"1 {valve}")).verdict
    assert verdict.state == "pass", verdict.headline.plain()


def test_a_doubt_that_reaches_a_limit_leaves_it_open():
    found = lash_hot(lash="0.10 ± 0.03 mm")
    assert found.verdict.state == "unsure" and "frost" in found.verdict.headline.plain()
