"""Guide and stem against the equation of the thick cylinder and a stem leaned in its bore; verdicts, refusals, and what must always be so."""

import re
from itertools import product

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.optimize import brentq

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference import engine
from calc.reference.materials import MATERIALS
from calc.stations.heads.guide_fit import guide_fit
from tests.checks.stations.heads.guide_fit import CASES, CHECKS, COLUMNS, FOUND, REAMED_RUNNING, SMOOTH
from tests.formulas.test_past_yield import stepped
from tests.formulas.test_press_fit import two_rings
from tests.formulas.test_rocking import leaned
from tests.stations.heads.test_seat_fit import growth

MM, MPA = 1e-3, 1e6
NEW = dict(stage="new")


@pytest.mark.parametrize("case", CASES)
def test_checks_are_what_the_boundary_value_solver_finds(case):
    """The bore's strain is its hoop stress over stiffness (nothing presses on it) plus free growth, cold and hot."""
    hole, outside, bore, stem, wall, guide_id, head_id, steel, guide_hot, head_hot, stem_hot = CASES[case]
    left, pressure, cold, hot, pressed_in = solved(
        hole, outside, bore, bore, wall, guide_id, head_id, guide_hot, head_hot
    )
    stem_grown = stem * (1 + growth(MATERIALS[steel], stem_hot))
    found = (
        pressure / MPA,
        left / MM,
        -bore * pressed_in,
        bore * (1 + hot - cold + growth(MATERIALS[guide_id], guide_hot)) - stem_grown,
        bore - stem_grown,
    )
    for got, stated, (output, *_, tolerance) in zip(found, FOUND[case], COLUMNS, strict=True):
        assert got == pytest.approx(stated, abs=tolerance), output


def solved(hole, outside, supplied, bore, wall, guide_id, head_id, guide_hot, head_hot):
    """Of a guide pressed in with `supplied` and then reamed to `bore`, mm: grip left hot (m), pressure as pressed in (Pa), strain of the
    reamed bore cold and hot, and of the bore as pressed in."""
    inner, outer = MATERIALS[guide_id], MATERIALS[head_id]
    grip = (outside - hole) * MM

    def rings(inside, e_guide, e_head, *strains):
        in_guide, _ = two_rings(
            inside * MM,
            hole * MM,
            (hole + 2 * wall) * MM,
            grip,
            e_guide,
            inner.nu,
            e_head,
            outer.nu,
            *strains,
        )
        return -in_guide(hole * MM)[1], in_guide(inside * MM)[0] / e_guide

    heat = (
        inner.E * (1 - inner.modulus_fall * (guide_hot - 20)),
        outer.E * (1 - outer.modulus_fall * (head_hot - 20)),
        growth(inner, guide_hot),
        growth(outer, head_hot),
    )
    pressure, pressed_in = rings(supplied, inner.E, outer.E)
    left = grip + hole * MM * (growth(inner, guide_hot) - growth(outer, head_hot))
    return left, pressure, rings(bore, inner.E, outer.E)[1], rings(bore, *heat)[1], pressed_in


def test_a_reamed_guide_opens_as_the_thinner_ring_that_it_is():
    """Pressed in with 7.5 mm and reamed by half a millimetre: as pressed in its bore would open by another amount."""
    _, _, cold, hot, _ = solved(13.0, 13.03, 7.5, 8.008, 8, "bronze", "al-si-t6", 220, 170)
    running = 8.008 * (1 + hot - cold + growth(MATERIALS["bronze"], 220)) - 7.93 * (
        1 + growth(MATERIALS["austenitic-valve-steel"], 420)
    )
    assert running == pytest.approx(REAMED_RUNNING, abs=5e-7)


def test_rocking_of_the_check_is_the_leaned_stems():
    assert leaned(0.1, 7.95, 46.0, 35.0) == pytest.approx(
        next(c.expected for c in CHECKS if "0.100 mm of clearance" in c.what), abs=0.0005
    )


# Every verdict: state, headline, entries.
STAYS, T6 = dict(seat="stays"), dict(head_material="al-si-t6")
VERDICTS = {
    "good": ("pass", "Good: 0.048 mm cold, 0.053 mm when running", {}),
    "good, exhaust": ("pass", "Good: 0.078 mm cold, 0.053 mm when running", dict(valve="exhaust")),
    "worn by sizes": ("fail", "Worn: 0.130 mm of clearance, 0.120 mm allowed", dict(guide_bore="8.090 mm")),
    "worn by rocking": (
        "fail",
        "Worn: 0.139 mm of clearance, 0.120 mm allowed",
        dict(rocking="0.35 mm", dial_height="35 mm"),
    ),
    "on the worn limit": (
        "pass",
        "Good: 0.120 mm cold, 0.125 mm when running",
        STAYS | dict(guide_bore="8.080 mm"),
    ),  # 8.080 − 7.960, as decimals
    "worn, but not done": (
        "attention",
        "Serves the valve, not a pilot: 0.119 mm",
        dict(guide_bore="8.079 mm"),
    ),
    "wide as made": ("pass", "Good: 0.065 mm cold, 0.070 mm when running", dict(guide_bore="8.025 mm")),
    "a little wider": ("attention", "Serves the valve, not a pilot: 0.066 mm", dict(guide_bore="8.026 mm")),
    "new, tight warming up": (
        "attention",
        "Tight while warming up: −0.004 mm left",
        NEW | dict(valve="exhaust", wanted_clearance="0.048 mm"),
    ),
    "not worn for an exhaust": (
        "pass",
        "Good: 0.130 mm cold, 0.105 mm when running",
        STAYS | dict(valve="exhaust", guide_bore="8.060 mm"),
    ),
    "seizes": ("fail", "Seizes: −0.009 mm left when running", dict(valve="exhaust", guide_bore="7.946 mm")),
    "tight": ("attention", "Tight when running: 0.008 mm left", dict(guide_bore="7.963 mm")),
    "tight warming up": (
        "attention",
        "Tight while warming up: −0.009 mm left",
        dict(valve="exhaust", guide_bore="7.973 mm", least_hot="0.005 mm"),
    ),
    "wider at its ends": ("attention", "Sizes show 0.048 mm, rocking 0.079 mm", dict(rocking="0.30 mm")),
    "gummed up": ("attention", "Sizes show 0.048 mm, rocking 0.026 mm", dict(rocking="0.10 mm")),
    "press it in": ("pass", "Press it in, then ream to 8.008 mm", NEW),
    "falls in": ("fail", "Falls in: guide 0.009 mm under the hole", NEW | dict(guide_outside="13.000 mm")),
    "pressed flat": (
        "fail",
        "No grip: roughness takes up all 0.008 mm",
        NEW | dict(guide_outside="13.017 mm"),
    ),
    "loose running": (
        "fail",
        "Comes loose: −0.009 mm left when running",
        NEW | dict(guide_outside="13.022 mm", guide_material="grey-iron"),
    ),
    "head yields": (
        "attention",
        "Head yields a little: 0.0008 mm lost",
        NEW | T6 | dict(guide_outside="13.076 mm"),
    ),
    "guide yields": (
        "attention",
        "Guide yields a little: 0.0015 mm lost",
        NEW | dict(supplied_bore="11.0 mm", stem="10.98 mm", guide_outside="13.066 mm"),
    ),
    "head gives way": (
        "fail",
        "Head gives way: 0.005 mm too much",
        NEW | T6 | dict(guide_outside="13.076 mm", head_wall="2 mm", head_temperature="200 °C"),
    ),
    "iron head": (
        "fail",
        "Head may crack: 204 % of its strength",
        NEW | dict(guide_outside="13.076 mm", head_material="grey-iron"),
    ),
    "seizes, new": (
        "fail",
        "Stem seizes: −0.005 mm left when running",
        NEW | dict(valve="exhaust", wanted_clearance="0.020 mm"),
    ),
    "little grip": ("fail", "Little grip: 0.004 mm left when running", NEW | dict(guide_outside="13.026 mm")),
    "tight, new": (
        "attention",
        "Tight when running: 0.006 mm left",
        NEW | dict(wanted_clearance="0.005 mm", least_hot="0.02 mm", stem_temperature="200 °C"),
    ),
    "nothing to ream": (
        "attention",
        "Nothing to ream: bore already 0.003 mm larger",
        NEW | dict(supplied_bore="8.023 mm"),
    ),
    "tighter than as made": (
        "attention",
        "Tighter than as made: 0.029 mm, 0.030 mm at least",
        NEW | dict(wanted_clearance="0.029 mm"),
    ),
    "reamed to a worn stem": (
        "attention",
        "Worn stem: 7.895 mm, as made 7.920 mm at least",
        NEW | dict(valve="exhaust", stem="7.895 mm"),
    ),
    "reamed to the smallest stem as made": (
        "pass",
        "Press it in, then ream to 7.998 mm",
        NEW | dict(valve="exhaust", stem="7.920 mm"),
    ),
    "wider than as made": (
        "attention",
        "Wider than as made: 0.070 mm, 0.065 mm at most",
        NEW | dict(wanted_clearance="0.070 mm"),
    ),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = guide_fit(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)


def test_guide_that_is_advised_is_in_order():
    advised = guide_fit(**NEW, guide_outside="13.022 mm")
    assert (
        advised.verdict.do.plain()
        == "Do not fit this guide. For this hole take a guide of 13.033 mm to 13.068 mm."
    )
    small, large = advised["guide_wanted"] / MM, advised["guide_most"] / MM
    assert guide_fit(**NEW, guide_outside=f"{small + 1e-9!r} mm").verdict.state == "pass"
    at_most = guide_fit(**NEW, guide_outside=f"{large!r} mm")
    assert max(at_most["guide_used"], at_most["head_used"]) == pytest.approx(1.0, abs=1e-9)
    assert guide_fit(**NEW, guide_outside=f"{small - 1e-4} mm").verdict.state == "fail"
    assert guide_fit(**NEW, guide_outside=f"{large + 1e-4} mm").verdict.state == "attention"


def test_what_yields_a_little_loses_what_the_load_stepped_through_leaves():
    """An exhaust guide of 13.051 mm in 13.000 mm of the weaker alloy was called a fail at 128 % of first yield. Running hot, the hole opened that far
    by stepping the load (flow rule, finite elements: tests/formulas/test_press_fit.py) gives the pressure; guide and head at that pressure, elastic,
    make up the rest of the interference, and what is missing is gone for good."""
    found = guide_fit(**NEW, **T6, valve="exhaust", guide_outside="13.051 mm", guide_hole="13.000 mm")
    assert found.verdict.state == "attention" and found["head_used"] > 1.25
    guide, head = MATERIALS["bronze"], MATERIALS["al-si-t6"]
    t_guide, t_head = 273.15 + 200, 273.15 + 170
    e_guide, e_head, shape_guide, shape_head = (
        guide.modulus_at(t_guide) / 1e9,
        head.modulus_at(t_head) / 1e9,
        (13**2 + 7.95**2) / (13**2 - 7.95**2),
        (29**2 + 13**2) / (29**2 - 13**2),
    )

    def shrinks(p):
        return 13 * p * (shape_guide - guide.nu) / e_guide

    def excess(opened):
        """Interference that an opening of the hole, mm, goes with, over the one there is."""
        p = stepped(6.5, 14.5, head.yield_at(t_head) / 1e9, e_head, head.nu, opened / 2, 0)
        return opened + shrinks(p) - found["interference_hot"] / MM

    opened = brentq(excess, 0.010, 0.040, xtol=1e-6)
    p = stepped(6.5, 14.5, head.yield_at(t_head) / 1e9, e_head, head.nu, opened / 2, 0)
    assert found["grip_lost"] / MM == pytest.approx(
        opened - 13 * p * (shape_head + head.nu) / e_head, abs=0.0003
    )
    assert found["grip_left"] == pytest.approx(
        min(found["interference"] - 0.8 * 10.3e-6, found["interference_hot"]) - found["grip_lost"]
    )
    assert found["grip_left"] > 0.03 * MM > 0.01 * MM > found["grip_lost"] > 0


def test_hole_that_no_guide_serves_says_so():
    none = guide_fit(
        **NEW,
        **T6,
        head_wall="2 mm",
        head_temperature="290 °C",
        guide_temperature="300 °C",
        guide_material="grey-iron",
    )
    assert (
        none["guide_wanted"] > none["guide_most"] and "No guide serves this hole" in none.verdict.do.plain()
    )


def test_what_is_reamed_off_makes_up_for_the_closing():
    found = guide_fit(**NEW)
    assert found["bore_pressed"] == pytest.approx(7.95 * MM - found["closing"])
    assert (
        found["bore_pressed"] + found["to_ream"] == pytest.approx(found["ream"]) == pytest.approx(8.008 * MM)
    )
    assert found["clearance"] == pytest.approx(0.048 * MM)


# whose limits


def test_the_valve_sets_what_it_is_and_what_it_is_held_to():
    exhaust = guide_fit(valve="exhaust")
    told = guide_fit(
        valve="exhaust",
        stem="7.930 mm",
        stem_material="austenitic-valve-steel",
        stem_temperature="400 °C",
        guide_temperature="200 °C",
        head_temperature="170 °C",
        worn_clearance="0.16 mm",
        most_new="0.095 mm",
        wanted_clearance="0.078 mm",
    )
    for output in exhaust.outputs:
        assert told[output] == pytest.approx(exhaust[output], rel=1e-12), output
    assert (
        exhaust["clearance_hot"] < guide_fit()["clearance_hot"] + 0.031 * MM
        and guide_fit()["clearance_hot"] < guide_fit(stem_temperature="100 °C")["clearance_hot"]
    )


def in_hand(sheet, valve, **entries):
    """As a reader's: of that engine and valve, with nothing but what was typed."""
    return evaluate(guide_fit, entries | dict(valve=valve), standing=Standing(engine.engine(sheet)))


def test_a_guide_is_worn_by_its_own_engine_s_sheet():
    """0.3452 − 0.3406 is 0.0046 in; the RC-40 allows 0.0045 in."""
    worn = in_hand("RC-40", "intake", guide_bore="0.3452 in", stem="0.3406 in").verdict
    assert (worn.state, worn.headline.plain("inch")) == (
        "fail",
        "Worn: 0.00460 in of clearance, 0.00450 in allowed",
    )
    assert (
        in_hand("RC-40", "intake", guide_bore="0.3450 in", stem="0.3406 in", seat="stays").verdict.state
        == "pass"
    )
    assert in_hand("RC-40", "exhaust", guide_bore="0.3452 in", stem="0.3406 in").verdict.state in (
        "awaited",
        "unjudged",
    )  # its sheet does not know them


def test_an_exhaust_stem_of_an_intake_s_clearance_does_not_pass():
    """Stem 7.945 in a bore of 7.990 once stayed an intake's."""
    assert in_hand("TS-16", "exhaust", stem="7.945 mm", guide_bore="7.990 mm").verdict.state != "pass"
    assert in_hand("TS-16", "intake", stem="7.960 mm", guide_bore="8.008 mm").verdict.state == "pass"


def test_a_guide_that_comes_with_another_bore_is_judged_by_what_it_leaves_to_ream():
    """The bore goes out with the reamer, so no guide is thrown away for it: common practice, no source."""
    read = dict(stage="new", guide_hole="13.009", guide_outside="13.046", stem="7.93")
    for bore, state in (("7.970", "pass"), ("7.930", "pass"), ("8.030", "attention")):
        verdict = evaluate(
            guide_fit, read | dict(supplied_bore=bore), standing=Standing(engine.engine("TS-16"), "1 exhaust")
        ).verdict
        assert verdict.state == state, (bore, verdict.headline.plain())


def test_nothing_is_said_of_a_guide_that_nobody_read():
    for entries in (
        {},
        dict(stem="7.96 mm"),
        dict(guide_bore="8.008 mm"),
        NEW | dict(stem="7.96 mm", guide_outside="13.046 mm", supplied_bore="7.95 mm"),
    ):
        assert in_hand("TS-16", "intake", **entries).verdict.state == "awaited", entries
    fitted = in_hand(
        "TS-16",
        "intake",
        **NEW,
        stem="7.96 mm",
        guide_outside="13.046 mm",
        supplied_bore="7.95 mm",
        guide_hole="13.009 mm",
    )
    assert fitted.verdict.state == "pass" and "rocking" not in {
        t.input.name for t in fitted.taken if t.entered
    }


@pytest.mark.parametrize("sheet, valve", [("TS-16", "intake"), ("TS-16", "exhaust"), ("RC-40", "intake")])
def test_both_ends_of_every_size_that_a_sheet_allows_are_in_order(sheet, valve):
    """As made; and down to wear for a guide that has run, whose seat is left as it is. Against the sheets, which say what is right."""
    sizes = engine.engine(sheet).features

    def walked(names, **more):
        for corner in product(*((sizes[id].low, sizes[id].high) for id in names.values())):
            found = in_hand(
                sheet, valve, **more, **{name: f"{size!r} m" for name, size in zip(names, corner)}
            )
            assert found.verdict.state == "pass", (found.verdict.headline.plain(), dict(zip(names, corner)))

    stem, clearance = sizes[f"valve.stem_{valve}"].nominal, sizes[f"guide.clearance_{valve}"]
    walked({"stem": f"valve.stem_{valve}", "guide_bore": "guide.bore", "guide_length": "guide.length"})
    walked(
        {
            "stem": f"valve.stem_{valve}",
            "guide_hole": "head.guide_hole",
            "guide_outside": "guide.outside",
            "supplied_bore": "guide.supplied_bore",
            "head_wall": "head.guide_wall",
        },
        **NEW,
    )
    for end, to_cut, stays in (
        (clearance.low, "pass", "pass"),
        (clearance.high, "pass", "pass"),
        (clearance.high + 1e-6, "attention", "pass"),
        (clearance.wear, "attention", "pass"),
        (clearance.wear + 1e-6, "fail", "fail"),
    ):
        for seat, state in (("cut", to_cut), ("stays", stays)):
            found = evaluate(
                guide_fit,
                dict(
                    valve=valve,
                    seat=seat,
                    stem=f"{stem!r} m",
                    guide_bore=f"{stem + end!r} m",
                    worn_clearance=f"{clearance.wear!r} m",
                    most_new=f"{clearance.high!r} m",
                ),
            )
            assert found.verdict.state == state, (seat, end, found.verdict.headline.plain())


# the dial on the valve's edge


def test_the_dial_stands_where_the_sheet_s_lengths_put_it():
    """112.0 mm of valve, less 46.0 mm of guide, less 2 mm of stem at the other end: 64 mm, where 35 was counted once and 0.080 mm read as worn."""
    found = guide_fit(guide_bore="8.040 mm")
    assert found["rocking"] == pytest.approx(leaned(0.080 * MM, 7.96 * MM, 46 * MM, 64 * MM), rel=3e-3)
    rocked = guide_fit(guide_bore="8.040 mm", rocking=f"{found['rocking'] / MM:.2f} mm", seat="stays")
    assert rocked.verdict.state == "pass" and rocked["clearance_rocking"] / MM == pytest.approx(
        0.080, abs=0.002
    )
    assert (
        guide_fit.input["dial_height"].default_value == pytest.approx(64 * MM)
        and not guide_fit.input["dial_height"].fold
    )
    assert guide_fit.input["rocking"].default_value is None  # no example of it that judges
    told = in_hand("TS-16", "intake", stem="7.960 mm", guide_bore="8.040 mm", rocking="0.30 mm", seat="stays")
    assert told.verdict.state == "pass" and told["clearance_rocking"] / MM == pytest.approx(0.079, abs=0.001)


# in an oven


@pytest.mark.parametrize(
    "outside, material, words",
    [
        ("13.042 mm", "grey-iron", "no grip is left"),
        ("13.050 mm", "grey-iron", ""),
        ("13.042 mm", "bronze", ""),
    ],
)
def test_an_iron_guide_may_slide_in_the_oven(outside, material, words):
    """δ − 0.8·ΣRz − D·(α_head − α_guide)·180 K: 0.024 − 0.008 − 13·(22.5 − 11.7)·0.18/1000 = −0.009 mm of an iron guide in the widest hole."""
    told = " ".join(
        r.text.plain()
        for r in guide_fit(
            **NEW,
            guide_hole="13.018 mm" if outside == "13.042 mm" else "13.000 mm",
            guide_outside=outside,
            guide_material=material,
        ).remarks
    )
    assert ("may slide" in told) == bool(words) and words in told
    if words:
        assert "measure that again after" in told


def test_cold_all_over_nothing_changes():
    """Limit: at 20 °C throughout the clearance is the one that was measured, and there is nothing to plot."""
    cold = guide_fit(stem_temperature="20 °C", guide_temperature="20 °C", head_temperature="20 °C")
    assert (
        cold["clearance_hot"]
        == pytest.approx(cold["clearance"], abs=1e-15)
        == pytest.approx(cold["clearance_first"], abs=1e-15)
    )
    assert cold["interference_hot"] == pytest.approx(cold["interference"] - 0.8 * 10.3e-6)
    assert len(cold.figures) == 2


REFUSALS = [
    (
        "guide_bore",
        dict(guide_bore="13.05 mm"),
        "Guide bore, fitted, largest: is 13.050 mm, not smaller than the guide's outside, 13.046 mm; give less than 13.046 mm.",
    ),
    (
        "guide_bore",
        dict(guide_bore="13.02 mm"),
        "Guide bore, fitted, largest: is 13.020 mm, not smaller than the hole in the head, 13.009 mm; give less than 13.009 mm.",
    ),
    (
        "supplied_bore",
        NEW | dict(supplied_bore="13.1 mm"),
        "Bore of the new guide, as it comes: is 13.100 mm, not smaller than the guide's outside, 13.046 mm; give less than 13.046 mm.",
    ),
    (
        "stem",
        dict(stem="8.1 mm"),
        "Stem, smallest: is 8.100 mm, not smaller than the guide's bore, 8.008 mm, so that it would not go in; give less than 8.008 mm.",
    ),
    (
        "stem",
        NEW | dict(stem="13.01 mm"),
        "Stem, smallest: is 13.010 mm, so that the guide would be reamed to 13.058 mm, right through its outside of 13.046 mm; give less.",
    ),
    (
        "stem",
        NEW | dict(stem="12.97 mm"),
        "Stem, smallest: is 12.970 mm, so that the guide would be reamed to 13.018 mm, right through the hole of 13.009 mm; give less.",
    ),
    (
        "guide_temperature",
        dict(guide_temperature="320 °C"),
        "Guide temperature, running: is 320 °C, and properties of Tin bronze, guide stock are held only up to 300 °C; give less, or another material.",
    ),
    (
        "head_temperature",
        dict(head_temperature="310 °C"),
        "Head round the guide, running: is 310 °C, and properties of Al–Si–Cu casting alloy, T6 are held only up to 300 °C; give less, or another material.",
    ),
]


@pytest.mark.parametrize("field, entries, sentence", REFUSALS)
def test_refusal(field, entries, sentence):
    with pytest.raises(Refused) as refused:
        guide_fit(**entries)
    assert [(e.field, e.sentence()) for e in refused.value.errors] == [(field, sentence)]


def test_hazards_of_pressing_are_named_only_for_a_new_guide():
    assert {"hot-head", "press", "cutting", "beryllium"} <= {c.id for c in guide_fit(**NEW).cautions}
    assert not {"hot-head", "press", "cutting", "beryllium"} & {c.id for c in guide_fit().cautions}


def test_warm_readings_and_inches():
    warm = guide_fit(
        **NEW, **{"guide_hole.part": "35 °C", "guide_hole.gauge": "20 °C"}
    )  # aluminium at 35 °C reads 13.009·15·20.8e-6 = 0.0041 mm large
    assert warm["interference"] / MM == pytest.approx(0.037 + 0.0041, abs=0.0001)
    metric = evaluate(
        guide_fit,
        dict(
            stem="7.9502 mm",
            guide_bore="8.001 mm",
            hole_fitted="13.0048 mm",
            outside_fitted="13.0429 mm",
            rocking="0.127 mm",
        ),
    )
    inch = evaluate(
        guide_fit,
        dict(stem="0.313", guide_bore="0.315", hole_fitted="0.512", outside_fitted="0.5135", rocking="0.005"),
        "inch",
    )
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9, abs=1e-12), output


def test_a_doubt_that_reaches_the_worn_limit_leaves_it_open():
    found = guide_fit(guide_bore="8.075 ± 0.010 mm")
    assert found.verdict.state == "unsure" and "the clearance" in found.verdict.headline.plain()


def test_drawings_are_to_the_sizes_that_were_given():
    cut, lean, plot = guide_fit(outside_fitted="13.05 mm", guide_length="50 mm").figures
    guide = [s for s in cut.shapes if getattr(s, "hatch", "") == "b"]
    xs, ys = zip(*(p for s in guide for p in s.points))
    assert (max(xs), max(ys) - min(ys)) == pytest.approx((13.009 / 2 * MM, 50 * MM))
    assert min(abs(x) for x in xs) == pytest.approx(8.008 / 2 * MM)
    assert "clearance drawn 104 times as wide" in lean.exaggerated.plain()  # 50 mm / 10 over 0.048 mm
    ((x, y, _),) = plot.marks
    assert plot.series[0].points[-1] == pytest.approx((x, y)) and plot.series[0].points[0][
        1
    ] == pytest.approx(0.048 * MM)


temperatures = st.floats(30.0, 290.0)


@given(temperatures, temperatures)
def test_hotter_stem_has_less_clearance(a, b):
    assume(abs(a - b) > 1e-3)
    cooler, hotter = (guide_fit(stem_temperature=f"{t!r} °C") for t in sorted((a, b)))
    assert (
        hotter["clearance_hot"] < cooler["clearance_hot"]
        and hotter["clearance_first"] < cooler["clearance_first"]
    )
    assert hotter["clearance"] == cooler["clearance"]


@given(st.floats(0.02, 0.06), st.floats(0.02, 0.06))
def test_tighter_guide_closes_more_and_presses_harder(a, b):
    assume(abs(a - b) > 1e-6)
    loose, tight = (guide_fit(**NEW, guide_outside=f"{13.009 + g!r} mm") for g in sorted((a, b)))
    for output in ("closing", "pressure", "force", "guide_used", "head_used", "to_ream", "interference_hot"):
        assert tight[output] > loose[output], output
    assert tight["guide_wanted"] == pytest.approx(loose["guide_wanted"]) and tight[
        "guide_most"
    ] == pytest.approx(loose["guide_most"])


@given(st.floats(0.01, 0.3), st.integers(0, 120), st.floats(20.0, 100.0))
def test_rocking_and_clearance_are_each_others_reverse(clearance, height, length):
    there = guide_fit(
        stem="7.9 mm",
        guide_bore=f"{7.9 + clearance!r} mm",
        dial_height=f"{height!r} mm",
        guide_length=f"{length!r} mm",
        rocking="",
    )
    back = guide_fit(
        rocking=f"{there['rocking'] / MM!r} mm", dial_height=f"{height!r} mm", guide_length=f"{length!r} mm"
    )
    assert back["clearance_rocking"] / MM == pytest.approx(clearance, rel=1e-6)
    assert there["rocking"] >= there["clearance"]


@given(
    st.sampled_from([("intake", "valve-steel", 150), ("exhaust", "austenitic-valve-steel", 400)]),
    st.floats(0.02, 0.2),
)
def test_smooth_parts_of_one_heat_keep_the_sum_of_sizes(which, clearance):
    """With guide and head cold and nothing lost to roughness, running differs from cold by the stem's growth alone."""
    valve, steel, stem_hot = which
    found = guide_fit(
        valve=valve,
        stem="7.9 mm",
        guide_bore=f"{7.9 + clearance!r} mm",
        guide_temperature="20 °C",
        head_temperature="20 °C",
        **SMOOTH,
    )
    assert found["clearance_hot"] == pytest.approx(found["clearance_first"], abs=1e-12)
    assert found["clearance"] - found["clearance_hot"] == pytest.approx(
        7.9 * MM * growth(MATERIALS[steel], stem_hot), rel=1e-9
    )


def test_a_bore_far_under_its_stem_is_another_guides():
    """5 mm as it comes, 9 mm of stem: 4.05 mm is drilled, not reamed."""

    def told(**entries):
        return " ".join(r.text.plain() for r in guide_fit(**NEW | entries).remarks if r.level == "warning")

    assert (
        "is much for a reamer" in told(stem="9 mm", supplied_bore="5 mm")
        and "reamer" not in told()
        and "reamer" not in told(supplied_bore="7.6 mm")
    )


@pytest.mark.parametrize("system", ["metric", "inch"])
@pytest.mark.parametrize("valve", ["intake", "exhaust"])
def test_both_ends_of_the_window_are_in_order_as_they_are_read(system, valve):
    """Twenty holes, a hundredth apart: a window rounded to the nearest digit let one end in ten or twenty slip, by a tenth of a micrometre; and one
    that ended where a part gives way failed at its own end."""
    for i in range(20):
        size = {"guide_hole": f"{13.0 + i / 100:.3f} mm", "valve": valve}
        advised = guide_fit(**NEW, **size, guide_outside=f"{13.0 + i / 100 + 0.005:.3f} mm").verdict.do.plain(
            system
        )
        for end in re.search(r"a guide of ([\d.]+ \w+) to ([\d.]+ \w+)", advised).groups():
            assert guide_fit(**NEW, **size, guide_outside=end).verdict.state == "pass", end
