"""Flow area of a valve against the shortest way and the smallest frustum between two cones; verdicts, refusals, limits."""

import math
from itertools import product

import pytest
from scipy.optimize import brentq

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference import engine
from calc.stations.heads.valve_flow_area import valve_flow_area
from tests.checks.stations.heads.valve_flow_area import CHECKS, FLAT, NARROW, STEEP
from tests.formulas.test_valve_curtain import shortest, smallest

MM, MM2 = 1e-3, 1e-6


def sizes(case):
    head, inner, throat, stem, angle = (
        float(case[k].rstrip(" m°")) for k in ("valve_head", "seat_inner", "throat", "stem", "seat_angle")
    )
    return head, inner, throat, stem, math.radians(angle)


@pytest.mark.parametrize("check", [c for c in CHECKS if c.kind == "library"], ids=lambda c: c.what)
def test_checks_are_what_the_minimiser_finds(check):
    head, inner, throat, stem, angle = sizes(check.inputs)
    if "crossover" in check.what:
        area = math.pi / 4 * (throat**2 - stem**2)
        assert brentq(lambda x: shortest(x, head, inner, angle) - area, 0.05, 25) == pytest.approx(
            check.expected, abs=1e-5
        )
    else:
        found = (smallest if "smallest" in check.what else shortest)(
            float(check.inputs["lift"].rstrip(" m")), head, inner, angle
        )
        assert found == pytest.approx(check.expected, abs=0.0005)


# Every verdict: state, headline, entries.
VERDICTS = {
    "good": ("pass", "Throat decides from 7.61 mm, index 0.53", {}),
    "too fast": ("fail", "Outruns the valve: Mach index 0.64, 0.60 allowed", dict(engine_speed="5500 1/min")),
    "too fast and too little lift": (
        "fail",
        "Outruns the valve: Mach index 0.64, 0.60 allowed",
        dict(engine_speed="5500 1/min", lift="6 mm"),
    ),
    "exhaust, which has no inlet Mach index": (
        "pass",
        "Throat decides from 6.71 mm",
        dict(valve="exhaust", valve_head="31 mm", seat_inner="28 mm", throat="26.5 mm", stem="7.93 mm"),
    ),
    "little lift": ("attention", "Opens to 75 % of its throat", dict(lift="6 mm")),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = valve_flow_area(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)


@pytest.mark.parametrize(
    "name, advice",
    [
        ("good", "More lift than that buys little."),
        ("too fast", "lift past 7.61 mm does not."),
        ("too fast and too little lift", "lift up to 7.61 mm helps."),
        ("little lift", "up to 7.61 mm."),
    ],
)
def test_what_to_do(name, advice):
    assert advice in valve_flow_area(**VERDICTS[name][2]).verdict.do.plain()


def test_lift_past_the_crossover_adds_nothing_to_the_free_area():
    at, past, short = (valve_flow_area(lift=lift) for lift in ("7.7 mm", "10 mm", "7 mm"))
    assert at["free"] == past["free"] == at["throat_area"] > short["free"] and past["curtain"] > at["curtain"]
    assert short["past"] < 0 < past["past"] and short["opened"] < 1


def test_engine_at_the_speed_told_has_the_index_allowed():
    speed = valve_flow_area()["speed_limit"] * 60
    assert valve_flow_area(engine_speed=f"{speed!r} 1/min")["mach"] == pytest.approx(0.60, rel=1e-9)


def test_each_stage_is_used():
    low, high = (valve_flow_area(**STEEP, lift=lift) for lift in ("2 mm", "5 mm"))
    assert low["curtain"] / MM2 == pytest.approx(146.1708, abs=0.001) and low["first_stage"] < 5 * MM
    assert high["curtain"] / MM2 == pytest.approx(shortest(5, 35, 31.9, math.radians(45)), rel=1e-6)
    assert (
        valve_flow_area(**NARROW)["crossover"]
        < valve_flow_area(**NARROW)["first_stage"]
        < valve_flow_area(**FLAT)["crossover"]
    )


REFUSALS = [
    (
        "seat_inner",
        dict(seat_inner="35 mm"),
        "Seat, inner edge: is 35.00 mm, not smaller than the valve head, 35.00 mm, so that the valve falls through; give less than 35.00 mm.",
    ),
    (
        "throat",
        dict(throat="32 mm"),
        "Throat under the seat: is 32.00 mm, wider than the seat's inner edge, 31.90 mm, and the narrowest place counts; give 31.90 mm or less.",
    ),
    (
        "stem",
        dict(throat="7 mm"),
        "Stem in the throat: is 7.96 mm, not smaller than the throat, 7.00 mm; give less than 7.00 mm.",
    ),
]


@pytest.mark.parametrize("field, entries, sentence", REFUSALS)
def test_refusal(field, entries, sentence):
    with pytest.raises(Refused) as refused:
        valve_flow_area(**entries)
    assert [(e.field, e.sentence()) for e in refused.value.errors] == [(field, sentence)]


def test_remarks_on_the_throat():
    def told(**entries):
        return " ".join(r.text.plain() for r in valve_flow_area(**entries).remarks)

    assert "no wall is left" in told(seat_inner="33.5 mm", throat="33 mm") and "is usual" in told(
        throat="25 mm"
    )
    assert "no wall is left" not in told() and "is usual" not in told()


def test_inches_give_the_same():
    metric = evaluate(
        valve_flow_area, dict(lift="8.89 mm", throat="29.21 mm", stem="7.9502 mm", temperature="15 °C")
    )
    inch = evaluate(valve_flow_area, dict(lift="0.35", throat="1.15", stem="0.313", temperature="59"), "inch")
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9, abs=1e-12), output


def test_a_doubt_that_reaches_the_crossover_leaves_it_open():
    assert valve_flow_area(lift="7.65 ± 0.10 mm").verdict.state == "unsure"


# whose sizes, whose limits


def in_hand(**entries):
    return evaluate(valve_flow_area, entries, standing=Standing(engine.demo()))


@pytest.mark.parametrize("valve", ["intake", "exhaust"])
def test_all_corners_of_the_sheet_are_in_order(valve):
    sizes = engine.demo().features
    names = {
        name: sizes[id]
        for name, id in (
            ("lift", "valve.lift"),
            ("valve_head", f"head.valve_head_{valve}"),
            ("seat_inner", f"head.seat_inner_{valve}"),
            ("throat", f"port.throat_{valve}"),
            ("stem", f"valve.stem_{valve}"),
        )
    }
    for corner in product(*((f.low, f.high) for f in names.values())):
        entries = {name: f"{size!r} m" for name, size in zip(names, corner)}
        verdict = in_hand(**entries, valve=valve).verdict
        assert verdict.state == "pass", (verdict.headline.plain(), entries)


def test_an_exhaust_valve_has_its_own_sizes_and_no_mach_index():
    found = valve_flow_area(valve="exhaust")
    assert float(found.taken[2].value) == pytest.approx(31 * MM)
    assert found["crossover"] / MM == pytest.approx(
        brentq(lambda x: shortest(x, 31, 27.5, math.radians(45)) - math.pi / 4 * (26**2 - 7.93**2), 0.05, 25),
        abs=1e-5,
    )
    read = dict(lift="8.87 mm", valve_head="31 mm", seat_inner="27.5 mm", throat="26 mm", stem="7.93 mm")
    told = in_hand(**read, valve="exhaust")
    assert told.verdict.state == "pass" and "mach" not in told.outputs and "crossover" in told.outputs
    assert in_hand(**read).verdict.state == "awaited"  # which valve?
    for missing in read:
        assert (
            in_hand(
                **{name: text for name, text in read.items() if name != missing}, valve="exhaust"
            ).verdict.state
            == "awaited"
        ), missing


def test_drawing_and_plot_show_what_was_found():
    found = valve_flow_area(**STEEP, lift="5 mm")
    plot, drawing = found.figures
    assert plot.marks[0][:2] == pytest.approx((found["crossover"], found["throat_area"])) and plot.marks[1][
        :2
    ] == pytest.approx((5 * MM, found["free"]))
    (ax, ay), (bx, by) = next(s for s in drawing.shapes if getattr(s, "style", "") == "band").points
    assert math.pi * (ax + bx) * math.hypot(ax - bx, ay - by) == pytest.approx(found["curtain"], rel=1e-9)
    low = valve_flow_area(**STEEP, lift="1.5 mm")
    (ax, ay), (bx, by) = next(s for s in low.figures[1].shapes if getattr(s, "style", "") == "band").points
    assert math.pi * (ax + bx) * math.hypot(ax - bx, ay - by) == pytest.approx(low["curtain"], rel=1e-9)
