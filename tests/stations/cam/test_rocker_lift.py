"""A rocker's lift and sweep: scipy's own closed loop, verdicts, refusals, limits of both engines and none."""

import math

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.optimize import brentq

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.formulas.rocker import off_square, shaft_up
from calc.reference.engine import engine
from calc.stations.cam.rocker_lift import rocker_lift
from tests.checks.stations.cam.rocker_lift import LOOP, LOOP_FOUND

MM = 1e-3


def loop(valve, rod, tip, cup, offset, depth, lift):
    """Pushrod, lift, sweep (mm) and the arm's angles, the linkage as turned vectors."""

    def ends(arm):
        turn = np.array([[math.cos(-arm), -math.sin(-arm)], [math.sin(-arm), math.cos(-arm)]])
        pad = turn @ np.array([-valve, 0.0])
        place = turn @ (rod * np.array([math.cos(math.radians(cup)), math.sin(math.radians(cup))]))
        return pad, place

    shut = brentq(lambda a: ends(a)[0][1] - tip, -1.2, 1.2, xtol=1e-14)
    length = np.linalg.norm(ends(shut)[1] - np.array([offset, -depth]))
    opened = brentq(
        lambda a: np.linalg.norm(ends(a)[1] - np.array([offset, -depth + lift])) - length,
        shut - 1,
        shut,
        xtol=1e-14,
    )
    way = [ends(a)[0] for a in np.linspace(shut, opened, 20001)]
    return (
        length,
        way[0][1] - way[-1][1],
        np.ptp([p[0] for p in way]),
        math.degrees(shut),
        math.degrees(opened),
    )


def test_checks_are_what_scipy_finds():
    rod, lift, sweep, shut, opened = loop(40, 36, 4.607926, 8, 33, 205, 8.2)
    for name, found in (("pushrod", rod), ("lift", lift), ("sweep", sweep)):
        assert found == pytest.approx(LOOP_FOUND[name][0], abs=LOOP_FOUND[name][1])
    assert (shut, opened) == (pytest.approx(6.6150, abs=1e-4), pytest.approx(-6.6150, abs=2e-4))


@given(st.integers(-40, 90), st.integers(-10, 15), st.integers(250, 450), st.integers(50, 90))
def test_the_loop_closes_as_vectors_do(tip, cup, offset, lift):
    found = rocker_lift(
        **LOOP | dict(tip=f"{tip / 10}", cup=f"{cup}", offset=f"{offset / 10}", lobe_lift=f"{lift / 10}")
    )
    rod, lifted, sweep, shut, opened = loop(40, 36, tip / 10, cup, offset / 10, 205, lift / 10)
    assert found["pushrod"] / MM == pytest.approx(rod, abs=1e-9)
    assert found["lift"] / MM == pytest.approx(lifted, abs=1e-8)
    assert found["sweep"] / MM == pytest.approx(sweep, abs=1e-6)
    assert math.degrees(found["opened"]) == pytest.approx(opened, abs=1e-8)


VERDICTS = {
    "as on the sheet": ("pass", "Opens 8.88 mm, sweeps 0.28 mm", {}),
    "tip too high": ("attention", "Sweeps 1.43 mm across the tip, 1.30 mm wanted", dict(tip="10.5")),
    "tip far too high": ("fail", "Sweeps 2.17 mm across the tip, 2.00 mm allowed", dict(tip="13.5")),
    "shaft too high": ("fail", "Sweeps 3.03 mm across the tip, 2.00 mm allowed", dict(tip="-7.5")),
    "a worn lobe": ("fail", "Valve opens only 8.66 mm, 8.75 mm told", dict(lobe_lift="8.00")),
    "a lobe that lifts more": ("attention", "Valve opens 9.04 mm, 8.95 mm told", dict(lobe_lift="8.35")),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = rocker_lift(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)


def test_shims_for_square_at_half_lift_are_told_and_serve():
    found = rocker_lift(tip="10.5", lift_high="12")
    assert "under the stand" in found.verdict.do.plain()
    better = rocker_lift(
        tip=f"{10.5 - found['up'] / MM:.4f}", depth=f"{272.7 + found['up'] / MM:.4f}", lift_high="12"
    )
    assert better["sweep"] < 0.3 * found["sweep"] and abs(better["up"]) < 0.06 * MM


def test_the_mark_on_the_tip_tells_how_far_off_square_the_arm_stands():
    """What pushrod-length reads from the tip: from where the contact lies shut and open, and the lift alone."""
    found = rocker_lift(tip="8", lash="0", lift_high="12")
    a, b, arm = float(found["shut"]), float(found["opened"]), 38.5 * MM
    run = arm * (math.cos(b) - math.cos(a))
    mean = off_square(run, float(found["lift"]))
    assert mean == pytest.approx((a + b) / 2, abs=1e-12)
    assert shaft_up(mean, float(found["lift"]), arm) == pytest.approx(float(found["up"]), abs=1e-12)


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(tip="37 mm"), "tip", "does not stand at"),
        (dict(lobe_lift="25 mm", pushrod_arm="10 mm"), "lobe_lift", "more than this rocker can follow"),
        (dict(valve_arm="-3 mm"), "valve_arm", "below 8"),
        (dict(cup="3 mm"), "cup", "a length"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        rocker_lift(**entries)
    error = refused.value.errors[0]
    assert error.field == field and words in str(error), str(error)


@given(st.integers(10, 110))
def test_rocker_of_even_arms_and_a_long_rod_gives_what_it_takes(lift):
    assume(lift)
    found = rocker_lift(
        valve_arm="40",
        pushrod_arm="40",
        cup="0",
        tip="0",
        offset="40",
        depth="800",
        lobe_lift=f"{lift / 10}",
        lash="0",
    )
    assert float(found["lift"]) / (lift / 10 * MM) == pytest.approx(1, abs=0.004)


def test_inches_give_the_same():
    metric = evaluate(rocker_lift, dict(tip="5.08 mm", lobe_lift="7.62 mm"))
    inch = evaluate(rocker_lift, dict(tip="0.2", lobe_lift="0.3"), "inch")
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9, abs=1e-12), output


def test_limits_come_from_the_engine_s_sheet_or_from_the_reader():
    told = dict(
        valve_arm="38.5",
        pushrod_arm="35",
        tip="4.43",
        lobe_lift="8.2",
        lash="0.15",
        cup="2.2",
        offset="34.5",
        depth="272.7",
    )
    by = {
        name: evaluate(rocker_lift, told, standing=Standing(engine(name) if name else None)).verdict.state
        for name in ("TS-16", "RC-40", "")
    }
    assert by == {"TS-16": "pass", "RC-40": "unjudged", "": "unjudged"}
    typed = dict(lift_low="8.75", lift_high="8.95", sweep_good="1.3", sweep_most="2")
    assert evaluate(rocker_lift, told | typed, standing=Standing(engine("RC-40"))).verdict.state == "pass"
    assert evaluate(rocker_lift, {}, standing=Standing(engine("TS-16"))).verdict.state == "awaited"


@pytest.mark.parametrize("end", ["low", "nominal", "high"])
def test_both_ends_of_the_sheet_are_in_order(end):
    """One size at an end, the others as drawn. All three at their worst ends together open more than the sheet's lift, and are told so."""
    sheet = engine("TS-16")
    for name, id in (
        ("tip", "rocker.tip_over_shaft"),
        ("lobe_lift", "cam.lobe_lift"),
        ("valve_arm", "rocker.arm_valve"),
        ("pushrod_arm", "rocker.arm_pushrod"),
    ):
        told = dict(valve_arm="38.5", pushrod_arm="35", tip="4.43", lobe_lift="8.2", lash="0.15")
        told[name] = f"{getattr(sheet.feature(id), end) / MM} mm"
        verdict = evaluate(rocker_lift, told, standing=Standing(sheet, "1 intake")).verdict
        assert verdict.state == "pass", (name, verdict.headline.plain())


@pytest.mark.parametrize(
    "entries, what",
    [
        (dict(tip="12.9 ± 0.6 mm", lift_high="12"), "the sweep"),
        (dict(lobe_lift="8.08 ± 0.05 mm"), "the valve's lift"),
    ],
)
def test_a_doubt_that_reaches_a_limit_leaves_it_open(entries, what):
    found = rocker_lift(**entries)
    assert found.verdict.state == "unsure" and what in found.verdict.headline.plain()
