"""Plunger in its travel against a chain whose rocker is swung in full; verdicts, refusals, and what must always be so."""

from math import sin

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference import engine
from calc.reference.materials import MATERIALS
from calc.stations.lifters.plunger_travel import plunger_travel
from calc.stations.lifters.plunger_travel.travel import shim_for
from tests.checks.stations.lifters.plunger_travel import CASES, FOUND, entries
from tests.corners import corners

MM, ARM = 1e-3, 25.0  # mm: pushrod side of the rocker


def cup(shaft, tip, ratio):
    """Where the pushrod's end of a rocker stands whose other end lies on the stem's tip, along the cylinder."""
    angle = brentq(lambda a: shaft - ratio * ARM * sin(a) - tip, -1, 1, xtol=1e-15)
    return shaft + ARM * sin(angle)


def grown(material, length, celsius):
    if isinstance(material, str):
        m = MATERIALS[material]
        return length * (
            1 + m.alpha / (1 + 80 * m.alpha_growth) * (1 + m.alpha_growth * (celsius - 20)) * (celsius - 20)
        )
    return length * (1 + material * 1e-6 * (celsius - 20))


def placed(case, cylinder, head, lifter, pushrod, valve, ratio, seat):
    """How far the pushrod's end would stand past the rocker's cup if the plunger did not give."""
    face = case + cylinder
    return lifter + pushrod - cup(face + head, face + seat + valve, ratio)


def chain(case):
    (
        case_l,
        cyl,
        head,
        lifter,
        rod,
        valve,
        ratio,
        m_case,
        m_cyl,
        m_head,
        m_valve,
        alpha,
        t_case,
        t_cyl,
        t_head,
        t_valve,
        t_rod,
    ) = case
    cold = placed(case_l, cyl, head, lifter, rod, valve, ratio, head - valve)  # tip as high as the shaft
    above = (grown(m_cyl, cyl, t_cyl), grown(m_head, head, t_head))
    stem, seat = grown(m_valve, valve, t_valve), grown(m_head, head - valve, t_head)
    hot = placed(
        grown(m_case, case_l, t_case),
        *above,
        grown("forged-steel", lifter, t_rod),
        grown(alpha, rod, t_rod),
        stem,
        ratio,
        seat,
    )
    warm = placed(case_l, *above, lifter, rod, stem, ratio, seat)
    return hot - cold, 1.8 + warm - cold


@pytest.mark.parametrize("case", CASES)
def test_checks_are_what_the_swung_rocker_shows(case):
    for got, stated, output in zip(chain(CASES[case]), FOUND[case], ("change", "warming"), strict=True):
        assert got == pytest.approx(stated, abs=5e-6), output
    assert plunger_travel(**entries(case))["running"] == pytest.approx((1.8 + FOUND[case][0]) * MM, abs=5e-9)


@pytest.mark.parametrize("ratio", [0.9, 1.1, 1.5])
def test_shim_under_the_stand_does_what_the_shorter_pushrod_does(ratio):
    shorter = 0.6
    t = shim_for(shorter, ratio)
    assert cup(100.0 + t, 100.0, ratio) - cup(100.0, 100.0, ratio) == pytest.approx(shorter, rel=1e-9)


VERDICTS = {
    "between": ("pass", "Stays off both stops: 1.09 mm, 1.47 mm left", {}),
    "upper stop": ("fail", "Reaches the upper stop: 0.41 mm short", dict(preload="0.30 mm")),
    "lower stop": ("fail", "Reaches the lower stop: 0.23 mm short", dict(preload="3.50 mm")),
    "on the lower stop": (
        "fail",
        "Stands on its lower stop, cold",
        dict(preload="4.00 mm"),
    ),  # what a dial reads of a rod that is too long, however much
    "play": (
        "fail",
        "Reaches the upper stop: 1.21 mm short",
        dict(preload="-0.5 mm"),
    ),  # 0.71 short where it just touches, and 0.50 more
    "near the upper": ("attention", "Near the upper stop: 0.19 mm left", dict(preload="0.90 mm")),
    "near the lower": ("attention", "Near the lower stop: 0.27 mm left", dict(preload="3.00 mm")),
    "goes down when hot": (
        "fail",
        "Reaches the lower stop: 0.35 mm short",
        dict(
            preload="3.20 mm",
            pushrod_expansion="30 µm/(m·K)",
            case_material="ductile-iron",
            head_temperature="90 °C",
            cylinder_temperature="60 °C",
        ),
    ),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, given_entries = VERDICTS[name]
    verdict = plunger_travel(**given_entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)


@given(
    *[st.integers(-30, most) for most in (170, 290, 290, 590, 140)], st.sampled_from(["5", "12", "24", "30"])
)
def test_what_is_left_is_left_by_the_highest_and_the_lowest_place_of_the_three(
    case, cylinder, head, valve, rod, expansion
):
    """Cold, warming up and running: to the upper stop by the least of them, worn; to the lower by the most, with the valve sunk. And
    a cold preload at either end of its window leaves just what is wanted there."""
    heat = dict(
        zip(
            (
                "case_temperature",
                "cylinder_temperature",
                "head_temperature",
                "valve_temperature",
                "rod_temperature",
            ),
            (f"{t} °C" for t in (case, cylinder, head, valve, rod)),
        ),
        pushrod_expansion=f"{expansion} µm/(m·K)",
        ratio="1.1",
    )
    found = plunger_travel(preload="1.8 mm", travel="4 mm", **heat)
    places = (1.8 * MM, found["warming"], found["running"])
    assert (found["top"], found["bottom"]) == (
        pytest.approx(min(places) - 0.1 * MM, abs=1e-12),
        pytest.approx(4 * MM - max(places) - 0.8 * MM / 1.1, abs=1e-12),
    )
    assert (found["left_cold"], found["left_running"]) == (
        pytest.approx(2.2 * MM),
        pytest.approx(4 * MM - found["running"], abs=1e-12),
    )
    for end, output, wanted in (("preload_least", "top", 0.3), ("preload_most", "bottom", 0.5)):
        if -MM < found[end] < 4 * MM:
            assert plunger_travel(preload=f"{found[end] / MM!r} mm", travel="4 mm", **heat)[
                output
            ] == pytest.approx(wanted * MM, abs=1e-9)


def test_pushrod_that_is_advised_stands_in_the_middle():
    for preload in (0.3, 3.5):
        found = plunger_travel(preload=f"{preload} mm")
        fitted = plunger_travel(preload=f"{preload + found['longer'] / MM!r} mm")
        assert fitted.verdict.state == "pass" and fitted["longer"] == 0
        assert fitted["top"] - 0.3 * MM == pytest.approx(fitted["bottom"] - 0.5 * MM)
        assert found["pushrod_wanted"] == pytest.approx(270 * MM + found["longer"])
    assert (
        "or shims of 0.84 mm under the rocker stand" in plunger_travel(preload="3.50 mm").verdict.do.plain()
    )
    assert "shims" not in plunger_travel(preload="0.30 mm").verdict.do.plain()


def test_a_pushrod_that_serves_is_the_one_to_fit():
    """Nobody is told to order eight of another length while those at hand stay off both stops; a hair outside its window, it is."""
    for preload in (1.02, 1.8, 2.7):
        found = plunger_travel(preload=f"{preload} mm")
        assert (
            found.verdict.state == "pass"
            and found["pushrod_wanted"] == pytest.approx(270 * MM, abs=1e-12)
            and found["longer"] == found["shim"] == 0
        )
        assert "order no other" in found.verdict.do.plain()
    for end, way in (("preload_least", -1), ("preload_most", 1)):
        outside = plunger_travel(preload=f"{plunger_travel()[end] / MM + way * 0.01!r} mm")
        assert outside.verdict.state == "attention" and abs(outside["longer"]) > 0.5 * MM


def test_an_exhaust_valve_is_of_another_steel_and_hotter():
    """By hand: it grows 112 mm long, and what it grows more presses the plunger in by that over the rocker's ratio."""
    intake, exhaust = (
        plunger_travel(valve=kind, valve_material=steel)
        for kind, steel in (("intake", "valve-steel"), ("exhaust", "austenitic-valve-steel"))
    )
    more = (
        112
        * MM
        * (MATERIALS["austenitic-valve-steel"].strain_at(593.15) - MATERIALS["valve-steel"].strain_at(493.15))
        / 1.1
    )
    assert exhaust["running"] - intake["running"] == pytest.approx(more) and more > 0.2 * MM


def test_a_doubt_that_may_bring_it_near_a_stop_leaves_it_open():
    assert plunger_travel(preload="1.05 ± 0.02 mm").verdict.state == "pass"
    found = plunger_travel(preload="1.05 ± 0.2 mm")
    assert found.verdict.state == "unsure" and "the upper stop" in found.verdict.headline.plain()


def test_every_pair_that_the_sheet_allows_is_in_order():
    for kind, steel in (("intake", "valve-steel"), ("exhaust", "austenitic-valve-steel")):
        for sizes in corners(
            "lifter.preload", "lifter.travel", "lifter.pushrod", "valve.length", "head.rocker_height"
        ):
            found = plunger_travel(
                **dict(zip(("preload", "travel", "pushrod", "valve_length", "head"), sizes)),
                valve=kind,
                valve_material=steel,
            )
            assert found.verdict.state == "pass", (kind, sizes, found.verdict.headline.plain())


def test_travel_that_is_too_short_for_any_pushrod_says_so():
    found = plunger_travel(travel="1.50 mm", preload="0.70 mm")
    assert (
        found["preload_least"] > found["preload_most"]
        and "No pushrod serves: 1.50 mm of travel" in found.verdict.do.plain()
        and found.verdict.state == "fail"
    )


@pytest.mark.parametrize(
    "field, given_entries, sentence",
    [
        (
            "preload",
            dict(preload="4.01 mm"),
            "Plunger pressed in, cold: is 4.01 mm, more than the travel, 4.00 mm, which is all that the plunger goes; give 4.00 mm or less.",
        ),
        (
            "cylinder_temperature",
            dict(cylinder_temperature="300 °C", cylinder_material="al-si-t6", head_temperature="300.5 °C"),
            "Head, running, mean: 300.5 °C is above 300 °C, past what this calculator can answer for; give −40 °C to 300 °C.",
        ),
    ],
)
def test_refusal(field, given_entries, sentence):
    with pytest.raises(Refused) as refused:
        plunger_travel(**given_entries)
    assert [e.sentence() for e in refused.value.errors] == [sentence]


COLD = {f"{part}_temperature": "20 °C" for part in ("case", "cylinder", "head", "valve", "rod")}


def test_cold_all_over_nothing_moves():
    """Limit: at 20 °C throughout the plunger stays where it was, and there is nothing to plot."""
    cold = plunger_travel(**COLD)
    assert cold["change"] == pytest.approx(0, abs=1e-12) and cold["running"] == cold[
        "warming"
    ] == pytest.approx(1.8 * MM)
    assert (
        cold["top"] == pytest.approx(1.7 * MM)
        and cold["bottom"] == pytest.approx((2.2 - 0.8 / 1.1) * MM)
        and len(cold.figures) == 1
    )


@given(st.floats(0.2, 3.5), st.floats(0.01, 0.4))
def test_longer_pushrod_is_pressed_in_as_much_more(preload, more):
    a, b = (plunger_travel(preload=f"{p!r} mm") for p in (preload, preload + more))
    assert b["top"] - a["top"] == pytest.approx(more * MM) == pytest.approx(a["bottom"] - b["bottom"])
    assert a["longer"] >= b["longer"] and a["preload_most"] == b["preload_most"]


@given(st.floats(25, 140), st.floats(1, 40))
def test_hotter_case_lifts_hotter_pushrod_presses(case, hotter):
    base = plunger_travel(case_temperature=f"{case!r} °C")["running"]
    assert plunger_travel(case_temperature=f"{case + hotter!r} °C")["running"] < base
    assert (
        plunger_travel(case_temperature=f"{case!r} °C", rod_temperature=f"{95 + hotter!r} °C")["running"]
        > base
    )
    assert plunger_travel(case_temperature=f"{case!r} °C", case_material="ductile-iron")["running"] > base


def test_a_reader_says_which_valve_and_a_pushrod_of_another_length_is_no_fault():
    read = dict(preload="1.8 mm", travel="4 mm", pushrod="265 mm")

    def told(which=""):
        return evaluate(plunger_travel, read, standing=Standing(engine.engine("TS-16"), which))

    assert told().verdict.state == "awaited"
    intake, exhaust = told("1 intake"), told("1 exhaust")
    assert (
        intake.verdict.state == exhaust.verdict.state == "pass"
        and exhaust["running"] > intake["running"] + 0.2 * MM
    )
