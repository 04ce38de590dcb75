"""Unit in a lifter's body: against the equation of the thick cylinder; verdicts, refusals, and what must always be so."""

import re
from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference import engine
from calc.reference.materials import MATERIALS
from calc.stations.lifters.lifter_bore import lifter_bore
from tests.checks.stations.lifters.lifter_bore import CASES, COLUMNS, FOUND
from tests.formulas.test_press_fit import two_rings

MM, MPA = 1e-3, 1e6
PRESS = dict(fit_wanted="press")


@pytest.mark.parametrize("case", CASES)
def test_checks_are_what_the_boundary_value_solver_finds(case):
    body, unit_outside, inside, grip, _, material = CASES[case]
    unit, around, joint = MATERIALS["bearing-steel"], MATERIALS[material], unit_outside - grip
    in_unit, in_body = two_rings(
        inside * MM, joint * MM, body * MM, grip * MM, unit.E, unit.nu, around.E, around.nu
    )
    found = (
        -in_unit(joint * MM)[1] / MPA,
        in_body(joint * MM)[0] / MPA,
        -in_unit(inside * MM)[0] / unit.E * inside * 1e3,
        in_body(body * MM)[0] / around.E * body * 1e3,
    )
    for got, stated, (output, *_, tolerance) in zip(found, FOUND[case], COLUMNS, strict=True):
        assert got == pytest.approx(stated, abs=tolerance), output


VERDICTS = {
    "hone": ("pass", "Hone 0.040 mm off, to 17.520 mm", {}),
    "done": ("pass", "Done: the bore fits, 1.71 mm of wall", dict(bore="17.522 mm")),
    "done, lower end": ("pass", "Done: the bore fits, 1.71 mm of wall", dict(bore="17.510 mm")),
    "done, upper end": ("pass", "Done: the bore fits, 1.70 mm of wall", dict(bore="17.530 mm")),
    "too large": ("fail", "Bore too large by 0.011 mm", dict(bore="17.531 mm")),
    "little left": ("attention", "Little left to hone: 0.011 mm", dict(bore="17.509 mm")),
    "a tenth to hone": ("pass", "Hone 0.100 mm off, to 17.520 mm", dict(bore="17.420 mm")),
    "more than a tenth": ("attention", "Bore first: 0.101 mm to come off", dict(bore="17.419 mm")),
    "bore first": ("attention", "Bore first: 0.520 mm to come off", dict(bore="17.000 mm")),
    "wall": ("fail", "Wall too thin: 1.16 mm, 1.20 mm wanted", dict(runout="1.12 mm")),
    "wall, bored too far": ("fail", "Wall too thin: 1.19 mm, 1.20 mm wanted", dict(bore="18.560 mm")),
    "plunger tight in its unit": (
        "fail",
        "Plunger binds: 0.0050 mm left, 0.0060 mm wanted",
        dict(plunger="15.877 mm"),
    ),
    "binds in the case": ("fail", "Body binds in the case: 0.015 mm left", dict(lifter_hole="20.982 mm")),
    "wall on its limit": (
        "fail",
        "Bore too large by 1.017 mm",
        dict(bore="18.537 mm"),
    ),  # (20.967 − 0.03 − 18.537)/2 = 1.20: not the wall
    "plunger on its limit": (
        "pass",
        "Hone 0.040 mm off, to 17.520 mm",
        dict(plunger="15.876 mm"),
    ),  # 15.882 − 15.876 = 0.006
    "case on its limit": (
        "pass",
        "Hone 0.040 mm off, to 17.520 mm",
        dict(body="20.990 mm"),
    ),  # 21.010 − 20.990 = 0.020
    "pressed, done": ("pass", "Done: the bore fits, 1.72 mm of wall", PRESS | dict(bore="17.497 mm")),
    "pressed, bore at its lower end": (
        "fail",
        "Plunger binds: 0.0055 mm left, 0.0060 mm wanted",
        PRESS | dict(bore="17.490 mm"),
    ),
    "pressed, no grip left": ("fail", "Bore too large by 0.005 mm", PRESS | dict(bore="17.500 mm")),
    "pressed": ("pass", "Hone 0.025 mm off, to 17.495 mm", PRESS | dict(bore="17.470 mm")),
    "pressed, plunger binds": (
        "fail",
        "Plunger binds: 0.0055 mm left, 0.0060 mm wanted",
        PRESS | dict(grip="0.010 mm", bore="17.460 mm"),
    ),
    "pressed, iron near yield": (
        "attention",
        "Near yield: 95 % used",
        PRESS
        | dict(
            grip="0.046 mm",
            bore="17.430 mm",
            body_material="grey-iron",
            plunger="15.840 mm",
            lifter_hole="21.05 mm",
        ),
    ),
    "pressed, body cracks": (
        "fail",
        "Body may crack: 103 % of its strength",
        PRESS
        | dict(
            grip="0.050 mm",
            bore="17.420 mm",
            body_material="grey-iron",
            plunger="15.840 mm",
            lifter_hole="21.05 mm",
        ),
    ),
    "pressed, body yields": (
        "fail",
        "Body yields: 102 % of its strength",
        PRESS
        | dict(
            grip="0.080 mm",
            bore="17.390 mm",
            body_material="ductile-iron",
            plunger="15.80 mm",
            lifter_hole="21.10 mm",
        ),
    ),
    "pressed, unit yields": (
        "fail",
        "Unit yields: 153 % of its strength",
        PRESS
        | dict(
            grip="0.1 mm",
            bore="7.860 mm",
            unit_outside="8.000 mm",
            plunger_bore="7.600 mm",
            plunger="7.40 mm",
            lifter_hole="21.10 mm",
            body_material="bearing-steel",
        ),
    ),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = lifter_bore(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)


def test_plan_of_boring_leaves_what_the_hone_takes():
    assert (
        lifter_bore(bore="17.000 mm").verdict.do.plain()
        == "Bore to between 17.420 mm and 17.500 mm, then hone to 17.520 mm."
    )
    for system in ("metric", "inch"):  # 17.420 over 25.4 is 0.685827: less is more to hone than it takes
        for end in re.search(
            r"between ([\d.]+ \w+) and ([\d.]+ \w+)", lifter_bore(bore="17.000 mm").verdict.do.plain(system)
        ).groups():
            assert lifter_bore(bore=end).verdict.state == "pass", end


# whose limits


def in_hand(sheet="TS-16", **entries):
    return evaluate(lifter_bore, entries, standing=Standing(engine.engine(sheet)))


@pytest.mark.parametrize("fit", [{}, PRESS])
def test_all_corners_of_the_sheet_are_in_order(fit):
    """A unit slipped in is held to the clearance of the sheet: 17.525 over 17.495 is 0.030 of 0.010 to 0.030 mm, and was told as too large."""
    sizes = engine.demo().features
    names = {
        "unit_outside": "lifter.unit_outside",
        "body": "lifter.body",
        "plunger_bore": "lifter.plunger_bore",
        "plunger": "lifter.plunger",
        "lifter_hole": "crankcase.lifter_bore",
    }
    for corner in product(*((sizes[id].low, sizes[id].high) for id in names.values())):
        entries = {name: f"{size!r} m" for name, size in zip(names, corner)}
        bores = (
            [corner[0] - 0.005e-3] if fit else [sizes["lifter.unit_hole"].low, sizes["lifter.unit_hole"].high]
        )
        for bore in bores:
            verdict = in_hand(**fit, **entries, bore=f"{bore!r} m", runout="0.03 mm").verdict
            assert verdict.state == "pass", (verdict.headline.plain(), entries)
    for end, state in ((sizes["lifter.wall"].wear, "pass"), (sizes["lifter.wall"].wear - 1e-6, "fail")):
        assert (
            lifter_bore(
                bore="17.520 mm", body=f"{0.01752 + 0.03e-3 + 2 * end!r} m", lifter_hole="22 mm"
            ).verdict.state
            == state
        )


def test_nothing_is_said_of_a_body_that_nobody_read():
    read = dict(bore="17.480 mm", unit_outside="17.500 mm", body="20.967 mm", runout="0.03 mm")
    for missing in read:
        assert (
            in_hand(**{name: text for name, text in read.items() if name != missing}).verdict.state
            == "awaited"
        )
    assert (
        in_hand(**read).verdict.state
        == in_hand(**read | dict(bore="17.460 mm"), **PRESS).verdict.state
        == "pass"
    )
    assert in_hand("RC-40", **read | dict(body="0.8424 in")).verdict.state in (
        "awaited",
        "unjudged",
    )  # whose sheet has no plunger units


REFUSALS = [
    (
        "plunger_bore",
        dict(plunger_bore="17.6 mm"),
        "Plunger's bore in the unit: is 17.6000 mm, not smaller than the unit's outside, 17.500 mm; give less.",
    ),
    (
        "plunger",
        dict(plunger="15.9 mm"),
        "Plunger: is 15.9000 mm, not smaller than its bore, 15.8820 mm; give less.",
    ),
    (
        "body",
        dict(body="21.02 mm"),
        "Body, outside, smallest: is 21.020 mm, not smaller than its bore in the case, 21.010 mm; give less.",
    ),
    (
        "bore",
        dict(bore="20.95 mm"),
        "Body's bore, as it is, largest: leaves no wall: a bore of 20.950 mm in a body of 20.967 mm with 0.03 mm of runout; give less.",
    ),
    (
        "unit_outside",
        dict(unit_outside="20.93 mm"),
        "Plunger unit, outside: leaves no wall: a bore of 20.950 mm in a body of 20.967 mm with 0.03 mm of runout; give less.",
    ),
    (
        "least_hone",
        dict(least_hone="0.1 mm"),
        "Left for the hone, at least: is 0.100 mm, not less than the hone takes off at most, 0.100 mm; give less.",
    ),
    (
        "slip",
        dict(slip="0.04 mm"),
        "Clearance wanted, slipped in: is 0.040 mm, not within the clearance allowed; give 0.010 mm to 0.030 mm.",
    ),
    (
        "grip",
        PRESS | dict(unit_outside="15.95 mm", grip="0.08 mm"),
        "Interference wanted, pressed in: is 0.080 mm, as much as the unit's own wall; give less.",
    ),
]


@pytest.mark.parametrize("field, entries, sentence", REFUSALS)
def test_refusal(field, entries, sentence):
    with pytest.raises(Refused) as refused:
        lifter_bore(**entries)
    assert [(e.field, e.sentence()) for e in refused.value.errors] == [(field, sentence)]


def test_slipped_in_nothing_is_stressed_and_nothing_moves():
    found = lifter_bore()
    assert [found[o] for o in ("pressure", "hoop", "body_used", "unit_used", "growth", "closing")] == [0] * 6
    assert found["plunger_left"] == pytest.approx(0.012 * MM) and found["case_left"] == pytest.approx(
        0.043 * MM
    )
    assert "press" not in {c.id for c in found.cautions} and "press" in {
        c.id for c in lifter_bore(**PRESS).cautions
    }


@given(st.floats(0.001, 0.02), st.floats(1.1, 3))
def test_pressing_goes_in_proportion_to_the_interference(grip, k):
    """Nearly: the joint is that much smaller too."""
    one, more = (
        lifter_bore(**PRESS, grip=f"{g!r} mm", plunger="15.8 mm", bore="17.3 mm") for g in (grip, k * grip)
    )
    for output in ("pressure", "hoop", "closing", "growth", "body_used", "unit_used"):
        assert more[output] == pytest.approx(k * one[output], rel=0.05)
    assert more["plunger_left"] < one["plunger_left"] and more["case_left"] < one["case_left"]


@given(st.floats(17.0, 17.6), st.floats(0.001, 1.0))
def test_runout_costs_half_of_itself_in_wall_and_stock_and_bore_make_the_target(bore, runout):
    found, true = (lifter_bore(bore=f"{bore!r} mm", runout=f"{r!r} mm") for r in (runout, 0))
    assert true["wall"] - found["wall"] == pytest.approx(runout / 2 * MM, abs=1e-12)
    assert bore * MM + found["stock"] == pytest.approx(found["target"], abs=1e-12)


def test_a_bore_within_its_tolerance_is_judged_by_the_grip_that_it_gives():
    """Against the equation of the thick cylinder: 17.500 in 17.490 is 0.010 of interference, not the 0.005 that was wanted."""
    unit, body = MATERIALS["bearing-steel"], MATERIALS["forged-steel"]
    in_unit, _ = two_rings(
        15.882 * MM, 17.490 * MM, 20.937 * MM, 0.010 * MM, unit.E, unit.nu, body.E, body.nu
    )
    found = lifter_bore(**PRESS, bore="17.490 mm")
    assert found["closing"] == pytest.approx(-in_unit(15.882 * MM)[0] / unit.E * 15.882 * MM, rel=1e-4)
    assert (
        found.verdict.do.plain()
        == "Pressing closes its bore by 0.0065 mm. Hone on to 17.495 mm, and measure again."
    )
    planned = lifter_bore(**PRESS, bore="17.46 mm")  # still to be honed: the interference that is wanted
    assert planned["closing"] == pytest.approx(found["closing"] / 2, rel=1e-2)


def test_clearance_as_it_is_now_is_the_bore_less_the_unit():
    assert lifter_bore(bore="17.512 mm", unit_outside="17.500 mm")["clearance_now"] == pytest.approx(
        0.012 * MM
    )
    assert lifter_bore(**PRESS, bore="17.46 mm", unit_outside="17.500 mm")["clearance_now"] == pytest.approx(
        -0.040 * MM
    )


def test_doubt_of_the_bore_can_leave_it_open():
    assert lifter_bore(bore="17.529 ± 0.004 mm").verdict.state == "unsure"
    assert lifter_bore(bore="17.421 ± 0.004 mm").verdict.state == "unsure"  # to hone, or to bore first
