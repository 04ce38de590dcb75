"""Cylinder bores against smallest circles and rational numbers; verdicts, refusals, limits of both sheets, and what must always be so."""

from fractions import Fraction
from itertools import product

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq, linprog

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.cylinders.cylinder_bore import cylinder_bore
from tests.checks.stations.cylinders.cylinder_bore import FOUR, HOT, WORN, alike, bores

MM = 1e-3


def on(sheet, **entries):
    return evaluate(cylinder_bore, entries, standing=Standing(engine(sheet) if sheet else None))


def plain(found):
    return found.verdict.headline.plain()


def test_a_bore_worn_on_both_sides_cleans_up_where_the_smallest_circle_does():
    """Worn by 0.055 mm on the thrust side and 0.010 mm opposite, cos² patches: radii over 7200 points."""
    a = np.linspace(0, 2 * np.pi, 7200, endpoint=False)
    worn = np.where(np.cos(a) > 0, 0.055, 0.010) * np.cos(a) ** 2
    r = 88.010 / 2 + worn
    two_point = (r + np.roll(r, 3600)).max()
    # smallest R with a centre (x, y): R >= r − x·cos − y·sin, first order, exact to 10⁻⁶ mm here
    free = linprog(
        [0, 0, 1], A_ub=np.c_[-np.cos(a), -np.sin(a), -np.ones_like(a)], b_ub=-r, bounds=[(None, None)] * 3
    )
    about_old = 2 * r.max()
    assert two_point == pytest.approx(88.075, abs=1e-6)
    assert about_old == pytest.approx(88.12, abs=1e-6)
    assert cylinder_bore(**WORN | dict(axis="free"))["clean"] / MM == pytest.approx(2 * free.x[2], abs=1e-5)
    assert two_point <= about_old <= cylinder_bore(**WORN)["clean"] / MM + 1e-9


def test_the_oversize_is_that_of_rational_numbers():
    worst = max(Fraction(x) for x in ("88.182", "88.204", "88.471", "88.160"))
    low, high = Fraction("88.000"), Fraction("88.018")
    u = next(u for u in (Fraction(1, 2), Fraction(1)) if (low + high) / 2 + u - worst >= Fraction("0.02"))
    found = cylinder_bore(**FOUR)
    assert found["oversize"] / MM == pytest.approx(float(u)) and u == Fraction(1, 2)
    assert found["stock"] / MM == pytest.approx(float((low + high) / 2 + u - worst), abs=1e-9)


def test_the_heat_that_closes_a_pair_is_the_root_of_both_growths():
    def gap(t):
        return 88.010 * (1 + 11e-6 * 140) - 87.960 * (1 + 20.5e-6 * (t - 20))

    assert cylinder_bore(**HOT)["closes"] - 273.15 == pytest.approx(brentq(gap, 20, 300), abs=1e-6)


PISTON_SETS = {
    "as the sheet has them": (
        "88.460 | 88.460 | 88.455 | 88.465",
        "pass",
        "All to 0.50 mm oversize: 88.500 mm to 88.518 mm",
    ),
    "of the next oversize": ("88.960 | 88.960", "fail", "Piston 1 too large for 88.500 mm to 88.518 mm"),
    "one that is too small": ("88.430", "fail", "Piston 1 too small for 88.500 mm to 88.518 mm"),
    "the worn ones that came out": (
        "87.930 | 87.920",
        "pass",
        "All to 0.50 mm oversize: 88.500 mm to 88.518 mm",
    ),
}


@pytest.mark.parametrize("case", PISTON_SETS)
def test_pistons_in_hand_are_held_against_the_bore_that_is_still_to_be_machined(case):
    """Their makers' sizes decide, not the box's label: read before anything is bored."""
    pistons, state, headline = PISTON_SETS[case]
    found = on("TS-16", bores=bores((88.145, 88.014)), pistons=pistons)
    assert (found.verdict.state, plain(found)) == (state, headline)


def test_barrels_of_another_engine_or_a_gauge_set_wrong_are_not_bored():
    found = on("RC-40", bores=alike(88.05))
    assert found.verdict.state == "fail" and "far under" in plain(found)
    assert "Machine nothing" in found.verdict.do.plain()
    assert on("TS-16", bores=alike(87.499)).verdict.state == "fail"
    assert plain(on("TS-16", bores=alike(87.60))) == "All to standard: 88.000 mm to 88.018 mm"


def test_a_bore_is_honed_for_a_tight_piston_only_where_that_helps():
    helps = on("TS-16", bores=alike(88.001), pistons="87.970")
    vain = on("TS-16", bores=alike(88.010), pistons="87.990")
    assert helps.verdict.state == vain.verdict.state == "fail"
    assert "to 88.018 mm at most" in helps.verdict.do.plain() and "does not help" in vain.verdict.do.plain()


def test_worn_bores_that_may_run_on_ask_for_their_pistons():
    worn = dict(bores=bores((88.045, 88.012)))
    assert "Type the pistons" in on("TS-16", **worn).verdict.do.plain()
    assert "Type the pistons" not in on("TS-16", **worn, pistons="87.960").verdict.do.plain()


NEW = alike(88.010, 88.012, 88.008, 88.010)
PISTONS = "87.960 | 87.961 | 87.959 | 87.960"
VERDICTS = {
    "as made": (dict(bores=NEW), "pass", "Bores as made: they stay"),
    "as made, with pistons": (
        dict(bores=NEW, pistons=PISTONS),
        "pass",
        "Bores as made: piston clearance 0.049 mm to 0.051 mm",
    ),
    "a piston too tight": (
        dict(bores=NEW, pistons="87.960 | 87.990"),
        "fail",
        "Piston 2 tight: 0.022 mm, 0.035 mm wanted",
    ),
    "a piston worn": (
        dict(bores=NEW, pistons="87.850"),
        "fail",
        "Piston 1 too loose: 0.160 mm, 0.150 mm allowed",
    ),
    "a piston somewhat worn": (
        dict(bores=NEW, pistons="87.930"),
        "attention",
        "Piston 1 is loose: 0.080 mm, 0.063 mm as made",
    ),
    "worn within limits": (
        dict(bores=bores((88.045, 88.012))),
        "attention",
        "Worn by 0.033 mm, within limits: may run on",
    ),
    "worn out by its taper alone": (
        dict(bores=bores((88.065, 88.005))),
        "pass",
        "All to 0.50 mm oversize: 88.500 mm to 88.518 mm",
    ),
    "worn out": (
        dict(bores=bores((88.145, 88.014))),
        "pass",
        "All to 0.50 mm oversize: 88.500 mm to 88.518 mm",
    ),
    "little left": (
        dict(bores=bores((88.243, 88.012))),
        "attention",
        "Oversize 0.50 mm, with 0.035 mm to hone",
    ),
    "nothing left at the first": (
        dict(bores=bores((88.260, 88.012))),
        "pass",
        "All to 1.00 mm oversize: 89.000 mm to 89.018 mm",
    ),
    "past all": (dict(bores=bores((88.700, 88.012))), "fail", "No oversize cleans up: 89.388 mm needed"),
    "bored, and to be honed": (dict(bores=alike(88.450, 88.452)), "pass", "Hone to 88.500 mm to 88.518 mm"),
    "nearly there": (dict(bores=alike(88.496)), "pass", "Hone to 88.500 mm to 88.518 mm"),
    "at the first oversize already, as made": (
        dict(bores=alike(88.510, 88.505)),
        "pass",
        "Bores as made: they stay",
    ),
    "at the first oversize, worn out": (
        dict(bores=bores((88.640, 88.508))),
        "pass",
        "All to 1.00 mm oversize: 89.000 mm to 89.018 mm",
    ),
    "at the last, worn out": (
        dict(bores=bores((89.140, 89.008))),
        "fail",
        "No oversize cleans up: 89.272 mm needed",
    ),
    "too thin a wall": (
        dict(bores=bores((88.145, 88.014)), register="93.2 mm"),
        "fail",
        "Wall in the case too thin: 2.34 mm, 2.40 mm allowed",
    ),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    entries, state, headline = VERDICTS[name]
    found = on("TS-16", **entries)
    assert (found.verdict.state, plain(found).replace("left to hone", "to hone")) == (state, headline)


def test_all_corners_of_the_sheet_are_in_order_at_every_size():
    """Bore, roundness and taper as made, pistons of that size: a reading on its limit is in order."""
    sheet = engine("TS-16").features
    bore, piston = sheet["cylinder.bore"], sheet["piston.diameter"]
    for u, end, skirt in product((0.0, 0.5e-3, 1.0e-3), ("low", "high"), ("low", "high")):
        d = getattr(bore, end) + u
        pistons = f"{getattr(piston, skirt) + u!r} m"
        found = on("TS-16", bores=bores((f"{d!r} m", f"{d!r} m")), pistons=pistons)
        assert found.verdict.state == "pass", (d, pistons, plain(found))
    worn = on("TS-16", bores=bores((88.040, 88.000)))  # out of round at its limit of 0.040
    assert worn.verdict.state == "attention" and "may run on" in plain(worn)


def test_limits_are_those_of_the_engine_in_hand():
    inch = dict(bores=bores(("3.7570 in", "3.7505 in")))
    found = on("RC-40", **inch)
    assert found["oversize"] / 25.4e-3 == pytest.approx(0.020) and found.verdict.state == "pass"
    assert on("RC-40", bores=alike("3.7504 in")).verdict.state == "pass"
    assert on("", bores=alike(88.010)).verdict.state == "unjudged"
    typed = dict(
        low="88.000",
        high="88.018",
        worn="88.120",
        by="0.5",
        last="1.0",
        least_clearance="0.03",
        most_clearance="0.06",
    )
    assert on("", bores=bores((88.145, 88.014)), **typed).verdict.state == "pass"
    unknown = on(
        "",
        bores=bores((88.145, 88.014)),
        low="88.000",
        high="88.018",
        least_clearance="0.03",
        most_clearance="0.06",
    )
    assert unknown.verdict.state == "attention" and "oversizes unknown" in plain(unknown)


def test_a_size_that_is_told_is_in_order_when_it_is_read_again():
    first = on("TS-16", bores=bores((88.145, 88.014)))
    for end in ("finish_low", "finish_high", "aim"):
        size = f"{first[end]!r} m"
        assert plain(on("TS-16", bores=bores((size, size)))) == "Bores as made: they stay"


def test_a_doubt_that_reaches_a_limit_leaves_it_open():
    assert on("TS-16", bores=alike("88.017 ± 0.004 mm")).verdict.state == "unsure"
    assert on("TS-16", bores=alike("88.010 ± 0.001 mm")).verdict.state == "pass"


def test_read_warm_it_is_not_taken_for_larger():
    """88.025 mm read at 45 °C is 88.001 mm cold: by the reading alone it would be past 88.018."""
    assert on("TS-16", bores=alike(88.025), barrel_temperature="45 °C").verdict.state == "pass"
    assert on("TS-16", bores=alike(88.025)).verdict.state == "attention"


def test_plain_expansion_is_explained_and_never_judged():
    found = cylinder_bore(**HOT)
    assert found["hot"] < 0 and found.verdict.state == "pass"
    assert any("still sound" in r.text.plain() for r in found.remarks)


@given(st.floats(88.0, 88.4), st.floats(0, 0.3), st.sampled_from(["old", "free"]))
def test_what_is_finished_takes_all_of_the_wear_away(unworn, wear, axis):
    top = round(unworn + wear, 4)
    found = on("TS-16", bores=bores((top, round(unworn, 4))), axis=axis)
    if "All to" in plain(found):
        assert found["aim"] >= found["clean"] >= found["largest"] - 1e-12
        assert found["stock"] == pytest.approx(found["aim"] - found["clean"], abs=1e-12)


@pytest.mark.parametrize(
    "entries, field, words",
    [
        ({"bores": "88.1; 88.0 | 88.1; 88.0 | ; | 88.1; 88.0"}, "bores.3.1", "give all three"),
        (dict(bores=bores((89.5, 88.0))), "bores.1.1", "more than a millimetre apart"),
        (dict(bores=NEW, pistons="88.010"), "pistons.1.1", "smaller than its bore"),
        (dict(bores=NEW, register="80 mm"), "register", "no larger than the bore"),
        (dict(low="88.02", high="88.01"), "low", "more than the most"),
        (dict(bores=alike(8.8)), "bores.1.1", "below 20"),
        (dict(barrel_temperature="400 °C"), "barrel_temperature", "above 150"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        cylinder_bore(**entries)
    error = refused.value.errors[0]
    assert error.field == field and words in str(error), str(error)


def test_inches_give_the_same():
    metric = evaluate(cylinder_bore, dict(bores=bores((95.4278, 95.2627)), register="101.6"))
    inch = evaluate(cylinder_bore, dict(bores=bores((3.757, 3.7505)), register="4"), "inch")
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9, abs=1e-10), output
