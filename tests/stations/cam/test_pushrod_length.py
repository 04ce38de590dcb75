"""Length of pushrods: scipy's own closed linkage, verdicts, refusals, limits of both engines and none."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.cam.pushrod_length import pushrod_length
from tests.checks.stations.cam.pushrod_length import changed

MM = 1e-3


def rod_for(arm, lifter):
    """Pushrod in mm of a rocker of 40 and 36 mm whose valve arm stands at `arm`, its cup 8° above that line, the lifter at x = 33,
    y = `lifter`."""
    cup = arm - math.radians(8)
    return math.hypot(33 - 36 * math.cos(cup), lifter + 36 * math.sin(cup))


def half_lift_rod(lifter):
    """The rod with which the arm stands as far from square shut as after 8.2 mm of the lobe."""

    def odd(arm):
        return rod_for(-arm, lifter + 8.2) - rod_for(arm, lifter)

    return rod_for(brentq(odd, 0.01, 0.4, xtol=1e-15), lifter)


def test_a_lifter_farther_away_wants_a_pushrod_longer_by_nearly_that():
    assert half_lift_rod(-205.5) - half_lift_rod(-205) == pytest.approx(0.49996, abs=5e-6)


def test_a_tip_that_rises_wants_one_shorter_by_the_arms():
    shut = brentq(lambda a: rod_for(-a, -205 + 8.2) - rod_for(a, -205), 0.01, 0.4, xtol=1e-15)
    risen = math.asin(math.sin(shut) + 0.6 / 40)
    exact = rod_for(risen, -205) - rod_for(shut, -205)
    assert exact == pytest.approx(-0.5438, abs=2e-3)
    assert pushrod_length(**changed(tip="0.6"))["longer"] / MM == pytest.approx(exact, abs=0.005)


def test_a_stand_raised_over_valves_that_stay_wants_more_than_its_shim():
    """The shaft stands 0.50 mm higher over lifter and tip: the loop closed anew, against shim + shim ÷ ratio."""
    shut = brentq(lambda a: rod_for(-a, -205 + 8.2) - rod_for(a, -205), 0.01, 0.4, xtol=1e-15)
    lower = math.asin(math.sin(shut) - 0.5 / 40)
    exact = rod_for(lower, -205.5) - rod_for(shut, -205)
    assert exact == pytest.approx(0.9522, abs=1e-4)
    assert pushrod_length(**changed(stand="0.5"))["longer"] / MM == pytest.approx(exact, abs=0.005)
    # a tip raised with it leaves the rocker alone, and only the shim counts
    both = pushrod_length(**changed(stand="0.5", tip="0.5"))
    assert both["longer"] / MM == pytest.approx(rod_for(shut, -205.5) - rod_for(shut, -205), abs=0.001)


def read(*lengths, run=0.0):
    return dict(rods=" | ".join(f"{x:.2f} mm; 4.00 mm; {4 + run:.3f} mm" for x in lengths))


VERDICTS = {
    "as on the sheet": ("pass", "Keep these pushrods: 270.00 mm serves", {}),
    "at the end of the middle third": ("pass", "Keep these pushrods: 270.00 mm serves", read(271.0)),
    "off the middle third": ("attention", "Adjuster 1.10 mm off its middle: fit 271.10 mm", read(271.1)),
    "beyond the adjuster": ("fail", "These do not serve: fit 273.10 mm", read(273.1)),
    "shorter": ("fail", "These do not serve: fit 266.50 mm", read(266.4, 266.6)),
    "valves that differ": ("attention", "The valves differ: 1.20 mm off the middle", read(268.8, 271.2)),
    "valves that no adjuster brings together": (
        "fail",
        "The valves differ: 3.10 mm off the middle",
        read(266.9, 273.1),
    ),
    "contact runs": ("attention", "Contact runs 1.20 mm, 1.00 mm wanted", read(270, run=1.2)),
    "contact runs too far": ("fail", "Rocker off square: contact runs 1.60 mm", read(270, run=-1.6)),
    "a cam ground smaller": (
        "attention",
        "Adjuster 1.25 mm off its middle: fit 271.25 mm",
        dict(how="changed", base="1.25"),
    ),
    "hardly changed": ("pass", "Keep these pushrods: 270.00 mm serves", dict(how="changed", base="0.50")),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = pushrod_length(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)


def test_nobody_orders_eight_of_another_length_for_nothing():
    """Where the ones at hand serve, no other length is named."""
    found = pushrod_length(**read(270.6, 270.8))
    assert found["longer"] == 0 and found["length"] / MM == pytest.approx(270)
    assert "Order no others" in found.verdict.do.plain()


def test_shims_come_before_pushrods():
    found = pushrod_length(**read(270, run=1.6))
    assert "Order no pushrod yet" in found.verdict.do.plain() and "Shims of" in found.verdict.do.plain()
    down = pushrod_length(**read(270, run=-1.6))
    assert "take shims out" in down.verdict.do.plain()
    assert down["up"] == pytest.approx(-found["up"], abs=1e-12)


@given(st.integers(-150, 200), st.integers(60, 120), st.integers(300, 500))
def test_raised_by_what_is_told_the_arm_stands_square_at_half_lift(tip, lift, arm):
    """By turned arms: from tip over shaft, lift and arm to contacts, and back."""
    y, h, length = tip / 10, lift / 10, arm / 10
    a, b = math.asin(y / length), math.asin((y - h) / length)
    shut, opened = length * math.cos(a), length * math.cos(b)
    if abs(opened - shut) > 0.8 * h:
        return
    edge = min(shut, opened) - 1
    rods = f"270 mm; {shut - edge:.9f} mm; {opened - edge:.9f} mm"
    found = pushrod_length(rods=rods, lift=f"{h} mm", arm=f"{length} mm")
    assert found["up"] / MM == pytest.approx(y - h / 2, abs=1e-6)
    assert found["run"] / MM == pytest.approx(abs(opened - shut), abs=1e-8)


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(rods="270; 4"), "rods.1.3", "empty beside its other contact"),
        (dict(rods="270; 0; 9"), "rods", "too much for a lift"),
        (dict(rods="5"), "rods.1.1", "below 20"),
        (dict(how="changed", base="6 mm"), "base", "above 5"),
        (dict(rods="270; 4; 4", lift="30 mm", arm="12 mm"), "arm", "too short for a lift"),
        (dict(fitted="270 kg"), "fitted", "a mass"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        pushrod_length(**entries)
    error = refused.value.errors[0]
    assert error.field == field and words in str(error), str(error)


def test_inches_give_the_same():
    metric = evaluate(pushrod_length, dict(rods="271.78 mm; 2.54 mm; 2.794 mm", fitted="269.24 mm"))
    inch = evaluate(pushrod_length, dict(rods="10.7; 0.1; 0.11", fitted="10.6"), "inch")
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9, abs=1e-12), output


def test_limits_come_from_the_engine_s_sheet_or_from_the_reader():
    told = read(270, 270.1, run=0.1) | dict(fitted="270", lift="8.87", arm="38.5", ratio="1.1")
    by = {
        name: evaluate(pushrod_length, told, standing=Standing(engine(name) if name else None)).verdict.state
        for name in ("TS-16", "RC-40", "")
    }
    assert by == {"TS-16": "pass", "RC-40": "unjudged", "": "unjudged"}
    found = evaluate(pushrod_length, told | dict(travel="6"), standing=Standing(engine("RC-40")))
    assert found.verdict.state == "pass" and any("not judged" in r.text.plain() for r in found.remarks)
    assert evaluate(pushrod_length, {}, standing=Standing(engine("TS-16"))).verdict.state == "awaited"


@pytest.mark.parametrize("end", ["low", "nominal", "high"])
def test_both_ends_of_the_sheet_are_in_order(end):
    sheet = engine("TS-16")
    told = read(getattr(sheet.feature("lifter.pushrod"), end) / MM) | dict(fitted="270")
    assert evaluate(pushrod_length, told, standing=Standing(sheet)).verdict.state == "pass"


@pytest.mark.parametrize(
    "entries, what",
    [
        (dict(rods="271 ± 0.2 mm; 4 mm; 4 mm"), "the adjuster's place"),
        (dict(rods="270 mm; 4 mm; 4.95 ± 0.1 mm"), "the contact's run"),
    ],
)
def test_a_doubt_that_reaches_a_limit_leaves_it_open(entries, what):
    found = pushrod_length(**entries)
    assert found.verdict.state == "unsure" and what in found.verdict.headline.plain()
