"""Leak-down against isentropic flow by its Mach number, and a crank moved in small steps; verdicts, refusals, what must always be so."""

from math import pi, sqrt

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.formulas import leak as gas
from calc.reference.engine import engine
from calc.stations.cylinders.cylinder_leak_down import cylinder_leak_down
from tests.checks.stations.cylinders.cylinder_leak_down import CHOKED, LOW, OTHER, OWN

K, R, T, ROOM = 1.4, 287.055, 293.15, 101.3e3
MM, KPA = 1e-3, 1e3


def flux(stagnation, behind):
    """kg/(s·m²) by the Mach number in the throat, 1 where it is choked."""
    mach = min(1.0, sqrt(2 / (K - 1) * ((stagnation / behind) ** ((K - 1) / K) - 1)))
    return stagnation * mach * sqrt(K / (R * T)) * (1 + (K - 1) / 2 * mach**2) ** (-(K + 1) / (2 * (K - 1)))


def left_behind(supply, orifice, hole):
    """kPa over the room that stand between two holes of mm, by the balance of both flows."""
    up = supply * KPA + ROOM
    balance = lambda p: orifice**2 * flux(up, p + ROOM) - hole**2 * flux(p + ROOM, ROOM)
    return brentq(balance, 1e-3, supply * KPA - 1e-6, xtol=1e-9) / KPA


def numbers(entries):
    return [float(entries[name].split()[0]) for name in ("supply", "left", "orifice")]


def test_the_push_that_is_warned_of_is_that_of_the_whole_supply():
    """550 kPa on a bore of 88 mm: a valve that snaps shut ends the leak, and the crank is thrown."""
    told = dict(left="10 kPa", supply="550 kPa", orifice="1 mm", bore="88 mm")
    warned = cylinder_leak_down(**told).remarks[0].text.plain()
    assert f"{550e3 * 3.14159265 * 0.044**2:.0f} N" in warned


@pytest.mark.parametrize("entries", [OWN, OTHER, LOW, CHOKED])
def test_checks_are_flow_by_its_mach_number(entries):
    supply, left, orifice = numbers(entries)
    found = cylinder_leak_down(**entries)
    up, inside = supply * KPA + ROOM, left * KPA + ROOM
    hole = orifice * sqrt(flux(up, inside) / flux(inside, ROOM))
    share = float(entries.get("discharge", "0.85"))
    flow = share * pi / 4 * (orifice * MM) ** 2 * flux(up, inside) * R * 273.15 / 101325
    assert found["hole"] / MM == pytest.approx(hole, rel=1e-9)
    assert found["flow"] == pytest.approx(flow, rel=1e-9)
    assert found["standard"] / KPA == pytest.approx(left_behind(550, 1.0, hole), abs=1e-5)


def test_the_crank_turns_as_the_piston_s_way_says():
    """Virtual work: torque = force × dx/dθ, the piston's way by small steps."""
    r, rod, force = 34.5 * MM, 137 * MM, 515e3 * pi / 4 * 0.088**2

    def way(theta):
        return r * np.cos(theta) + np.sqrt(rod**2 - (r * np.sin(theta)) ** 2)

    theta, h = np.radians(10), 1e-6
    torque = -force * (way(theta + h) - way(theta - h)) / (2 * h)
    found = cylinder_leak_down(**OWN | dict(bore="88 mm", stroke="69 mm", rod="137 mm"))
    assert found["torque"] == pytest.approx(torque, rel=1e-7)


VERDICTS = {
    "tight": ({}, "pass", "Tight: 515 kPa left, 480 kPa is good"),
    "tight, at the rings": (dict(heard="filler"), "pass", "Tight: 515 kPa left, 480 kPa is good"),
    "on what is good": (dict(left="480 kPa"), "pass", "Tight: 480 kPa left, 480 kPa is good"),
    "a little": (dict(left="450 kPa"), "attention", "Leaks a little: 450 kPa left, 480 kPa good"),
    "on its limit": (dict(left="410 kPa"), "attention", "Leaks a little: 410 kPa left, 480 kPa good"),
    "past it": (dict(left="409 kPa"), "fail", "Leaks: 409 kPa left, 410 kPa allowed"),
    "nothing holds": (dict(left="1 kPa"), "fail", "Leaks: 1 kPa left, 410 kPa allowed"),
    "cold": (dict(left="380 kPa", engine="cold"), "unsure", "Leaks: 380 kPa left, 410 kPa allowed"),
    "cold and tight": (dict(engine="cold"), "pass", "Tight: 515 kPa left, 480 kPa is good"),
    "at a valve": (dict(heard="exhaust"), "attention", "Little, but at the exhaust valve: 515 kPa left"),
    "at the joint": (dict(heard="joint"), "attention", "Little, but at the head's joint: 515 kPa left"),
    "no leak": (dict(left="549 kPa"), "unsure", "No leak at all: 550 kPa and 549 kPa"),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    entries, state, headline = VERDICTS[name]
    found = evaluate(cylinder_leak_down, OWN | entries, standing=Standing(engine("TS-16"), "1"))
    assert (found.verdict.state, found.verdict.headline.plain()) == (state, headline)


@pytest.mark.parametrize(
    "heard, words",
    [
        ("nowhere", "Listen through a hose"),
        ("intake", "lash"),
        ("exhaust", "carbon on a seat"),
        ("filler", "ring gaps"),
        ("neighbour", "cracked"),
        ("joint", "nuts"),
    ],
)
def test_each_place_has_its_own_next_step_and_none_begins_with_taking_it_apart(heard, words):
    do = cylinder_leak_down(**OWN | dict(left="350 kPa", heard=heard)).verdict.do.plain()
    assert words in do
    if "comes off" in do or "measure bore" in do:
        assert do.index("test again") < do.index("If it stays")


holes = st.floats(0.15, 3.0)


@given(holes, st.integers(200, 700), st.integers(6, 25))
def test_two_testers_of_any_kind_agree_on_the_same_leak(hole, supply, tenths):
    """What another tester would leave on that hole, typed with its supply and orifice, is told as the sheet's tester shows it."""
    orifice = tenths / 10
    left = left_behind(supply, orifice, hole)
    if left < 1:
        return
    found = cylinder_leak_down(supply=f"{supply} kPa", left=f"{left!r} kPa", orifice=f"{orifice} mm")
    assert found["hole"] / MM == pytest.approx(hole, rel=1e-4)
    assert found["standard"] / KPA == pytest.approx(left_behind(550, 1.0, hole), rel=1e-4)


@given(holes, st.floats(120e3, 900e3))
def test_the_pressure_between_two_holes_is_where_both_flows_are_alike(hole, up):
    middle = gas.middle_pressure(up, ROOM, hole**2)
    assert ROOM <= middle <= up
    if up - middle > 1.0 and middle - ROOM > 1.0:
        assert gas.behind_an_orifice(up, middle, ROOM) == pytest.approx(hole**2, rel=1e-5)


def test_the_sheets_own_tester_is_told_to_the_last_digit():
    for left in ("410 kPa", "480 kPa", "512.34 kPa"):
        found = cylinder_leak_down(**OWN | dict(left=left))
        assert found["standard"] == pytest.approx(float(left.split()[0]) * KPA, rel=1e-15)


def test_the_hole_of_the_limit_is_the_limit():
    limit = cylinder_leak_down(**OWN | dict(left="410 kPa"))
    assert limit["hole"] == pytest.approx(limit["hole_worn"], rel=1e-12)


def test_limits_are_those_of_the_engine_in_hand():
    assert evaluate(cylinder_leak_down, OWN, standing=Standing(engine("TS-16"))).verdict.state == "pass"
    for name in ("RC-40", ""):
        found = evaluate(cylinder_leak_down, OWN, standing=Standing(engine(name) if name else None))
        assert found.verdict.state in ("unjudged", "awaited") and found["hole"] > 0
    typed = dict(good="480 kPa", worn="410 kPa", sheet_supply="550 kPa", sheet_orifice="1 mm")
    assert evaluate(cylinder_leak_down, OWN | typed, standing=Standing()).verdict.state == "pass"
    without = {k: v for k, v in OWN.items() if k != "orifice"}
    awaited = evaluate(cylinder_leak_down, without, standing=Standing(engine("TS-16"))).verdict
    assert awaited.state == "awaited" and "rifice of your tester" in awaited.headline.plain()


@pytest.mark.parametrize("left, sure", [("480 kPa", "pass"), ("520 kPa", "pass"), ("550 kPa", "unsure")])
def test_both_ends_of_the_sheet_are_in_order(left, sure):
    """At the upper end nothing flows at all, and that is a fault of the tester: rings let something by."""
    found = evaluate(cylinder_leak_down, OWN | dict(left=left), standing=Standing(engine("TS-16")))
    assert found.verdict.state == sure


@pytest.mark.parametrize("left", ["405 ± 8 kPa", "414 ± 8 kPa"])
def test_a_doubt_that_reaches_the_limit_leaves_it_open(left):
    verdict = cylinder_leak_down(**OWN | dict(left=left)).verdict
    assert verdict.state == "unsure" and "pressure left" in verdict.headline.plain()


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(left="560 kPa"), "left", "more than the supply, 550 kPa"),
        (dict(worn="560 kPa"), "worn", "more than the supply that it is for"),
        (dict(left="0 kPa"), "left", "below 1 kPa"),
        (dict(orifice="0"), "orifice", "below 0.2"),
        (dict(supply="80 N"), "supply", "a force"),
        (dict(rod="40 mm", stroke="90 mm"), "rod", "half the stroke"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        cylinder_leak_down(**OWN | entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error), str(error)


def test_whoever_tests_is_told_that_the_crank_spins():
    found = cylinder_leak_down(**OWN)
    assert any("turns the crank" in r.text.plain() for r in found.remarks if r.level == "warning")
    assert any(caution.id == "crank-held" for caution in found.cautions)


def test_another_tester_is_told_apart():
    def said(**entries):
        return " ".join(r.text.plain() for r in cylinder_leak_down(**entries).remarks)

    assert "Your tester left" in said(**OTHER) and "Your tester left" not in said(**OWN)
    assert "is choked" in said(**OWN) and "not choked" in said(**LOW)


def test_inches_give_the_same():
    metric = evaluate(
        cylinder_leak_down, dict(supply="551.5805834 kPa", left="482.6330105 kPa", orifice="1.016 mm")
    )
    inch = evaluate(cylinder_leak_down, dict(supply="80", left="70", orifice="0.040"), "inch")
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-5), output


def test_the_curve_goes_through_the_reading():
    (plot,) = cylinder_leak_down(**OTHER).figures
    own = next(s for s in plot.series if s.label == "this tester")
    xs, ys = zip(*own.points)
    (x, y, _) = plot.marks[0]
    assert np.interp(x, xs, ys) == pytest.approx(y, rel=0.01)
