"""Shrinking a seat ring in: against a root finder on the free growths, its verdicts and refusals, and what must always be so."""

import re
from itertools import product

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.optimize import brentq

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.reference.materials import MATERIALS
from calc.stations.heads.seat_shrink import seat_shrink as shrink
from tests.checks.stations.heads.seat_shrink import CASES, entries

MM = 1e-3
ZERO = 273.15


def seat_shrink(**given_entries):
    """The example's pocket and a ring out of dry ice, where nothing else is said."""
    return shrink(**{"ring_temperature": "-78 °C"} | given_entries)


def growth(id, celsius):
    """Free strain from 20 °C, written out from the table's own numbers: growing with heat above, falling off below."""
    material, rise = MATERIALS[id], celsius - 20
    at_20 = material.alpha / (1 + 80 * material.alpha_growth)
    return (
        at_20
        * rise
        * (1 + material.alpha_growth * rise if rise >= 0 else 1 + 5e-4 * rise - 2.19e-6 * rise**2)
    )


def clearance(pocket, ring, ring_id, head_id, ring_at, head_at):
    """Of the hot pocket round the cold ring, each at its true size, in mm: no first-order shortcut."""
    return pocket * (1 + growth(head_id, head_at)) - ring * (1 + growth(ring_id, ring_at))


@pytest.mark.parametrize("case", CASES, ids=str)
def test_checks_are_what_the_root_finder_finds(case):
    pocket, ring, wanted, ring_id, head_id, ring_at = case
    grip = (ring - pocket) / pocket
    head_at = brentq(
        lambda t: growth(head_id, t) - growth(ring_id, ring_at) - grip - wanted / pocket,
        -100,
        600,
        xtol=1e-10,
    )
    head_sticks = brentq(
        lambda t: growth(head_id, t) - growth(ring_id, ring_at) - grip, -100, 600, xtol=1e-10
    )
    ring_sticks = brentq(
        lambda t: growth(head_id, head_at) - growth(ring_id, t) - grip, -196, 600, xtol=1e-10
    )
    assert (head_at, head_at - head_sticks, ring_sticks - ring_at) == pytest.approx(CASES[case], abs=5e-5)


@pytest.mark.parametrize("case", CASES, ids=str)
def test_clearance_is_there_at_the_true_sizes_and_gone_after_either_allowance(case):
    pocket, ring, wanted, ring_id, head_id, ring_at = case
    found = seat_shrink(**entries(*case))
    head_at = found["head_temperature"] - ZERO
    assert clearance(pocket, ring, ring_id, head_id, ring_at, head_at) == pytest.approx(
        wanted, abs=0.0005
    )  # what first order leaves out
    assert clearance(
        pocket, ring, ring_id, head_id, ring_at, head_at - found["head_may_cool"]
    ) == pytest.approx(0.0, abs=0.0005)
    assert clearance(
        pocket, ring, ring_id, head_id, ring_at + found["ring_may_warm"], head_at
    ) == pytest.approx(0.0, abs=0.0005)


VERDICTS = {
    "heat": ("pass", "Heat the head to 161 °C", {}),
    "close to the limit": ("attention", "Heat to 161 °C, close to the limit", dict(head_limit="165 °C")),
    "near the edge": (
        "attention",
        "Heat to 181 °C: near the temper's edge",
        dict(pocket_bore="37.490 mm", ring_outside="37.613 mm"),
    ),
    "softens the head": (
        "attention",
        "Heat to 203 °C softens the head",
        dict(ring_temperature="20 °C", head_limit="250 °C"),
    ),
    "no hand is so quick": (
        "attention",
        "Hardly any room: 0.005 mm as the ring goes in",
        dict(clearance="0.005 mm"),
    ),
    "no hand is so quick, head cold": (
        "attention",
        "Hardly any room: 0.002 mm as the ring goes in",
        dict(ring_outside="37.569 mm", ring_temperature="-196 °C", clearance="0.001 mm"),
    ),
    "chill": ("fail", "Over the limit: the head would need 203 °C", dict(ring_temperature="20 °C")),
    "no ring is that cold": ("fail", "Does not drop in even at −196 °C", dict(ring_outside="37.750 mm")),
    "no ring that holds": (
        "fail",
        "Does not drop in even at −196 °C",
        dict(head_limit="60 °C", clearance="0.3 mm"),
    ),
    "cold is enough": (
        "pass",
        "No heat needed: the cold ring drops in",
        dict(ring_outside="37.520 mm", ring_temperature="-196 °C"),
    ),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, headline, given_entries = VERDICTS[name]
    verdict = seat_shrink(**given_entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, headline)


def test_advice_on_how_cold_is_true_and_no_colder_than_it_must_be():
    over = seat_shrink(ring_temperature="20 °C")
    assert over.verdict.do.plain() == (
        "Chill the ring. Out of dry ice at −78 °C the head needs 161 °C; "
        "with the head at its limit of 200 °C, 13 °C or colder is enough."
    )
    assert seat_shrink(ring_temperature="-78 °C")["head_temperature"] - ZERO == pytest.approx(161, abs=0.5)
    assert (
        seat_shrink(ring_temperature="13 °C")["margin"] >= 0 > seat_shrink(ring_temperature="14 °C")["margin"]
    )


def test_advice_serves_as_it_is_read_in_fahrenheit_and_inches_too():
    for entered, words, name in (
        (dict(ring_temperature="20 °C"), r"(−?[\d.]+ °F) or colder", "ring_temperature"),
        (
            dict(ring_outside="37.750 mm", ring_temperature="-196 °C"),
            r"a ring of ([\d.]+ in) at most",
            "ring_outside",
        ),
    ):
        told = re.search(words, seat_shrink(**entered).verdict.do.plain("inch"))[1]
        assert seat_shrink(**entered | {name: told})["margin"] >= 0, told


def test_a_colder_ring_is_preferred_to_an_oven_at_the_edge_of_the_temper():
    """An hour at 200 °C is the edge of the temper: the sheet's exhaust ring out of dry ice would need 188 °C, out of nitrogen 151."""
    warm = seat_shrink(valve="exhaust")
    assert (warm.verdict.state, warm.verdict.headline.plain()) == (
        "attention",
        "Heat to 188 °C: near the temper's edge",
    )
    assert "out of liquid nitrogen at −196 °C the head needs 151 °C" in warm.verdict.do.plain()
    assert seat_shrink(valve="exhaust", ring_temperature="-196 °C").verdict.state == "pass"
    here = Standing(engine("TS-16"), "exhaust")
    assert evaluate(shrink, dict(pocket_bore="33.5 mm", ring_outside="33.61 mm"), standing=here).next == (
        "ring_temperature",
    )  # what a shop has nobody can take


@pytest.mark.parametrize("name, valve", [("TS-16", "intake"), ("TS-16", "exhaust"), ("RC-40", "intake")])
def test_every_corner_of_a_sheets_own_limits_drops_in_out_of_nitrogen(name, valve):
    sheet = engine(name)
    pocket, ring = (sheet.feature(f"head.{id}_{valve}") for id in ("seat_pocket", "seat_ring_outside"))
    for p, r in product((pocket.low, pocket.high), (ring.low, ring.high)):
        found = evaluate(
            shrink,
            dict(pocket_bore=f"{p / MM!r} mm", ring_outside=f"{r / MM!r} mm", ring_temperature="-196 °C"),
            standing=Standing(sheet, valve),
        )
        assert found.verdict.state == "pass", (p, r, found.verdict.headline.plain())


def test_oven_is_warned_of_and_what_it_does_to_an_iron_guide():
    """Grey iron of 13.046 in 13.009 mm, less 0.0082 of roughness, at 200 °C: 13.009·(α_h − α_g)·180 K of growth leave 0.003 mm; the loose end of
    13.041 in 13.018 nothing. By hand, with the growths of this file."""

    def left(guide, hole):
        return guide - hole - 0.8 * 10.3e-3 - hole * (growth("al-si-cu-t6", 200) - growth("grey-iron", 200))

    assert left(13.046, 13.009) == pytest.approx(0.003, abs=0.001) and left(13.041, 13.018) < 0
    found = seat_shrink()
    assert "oven" in {c.id for c in found.cautions} and any(
        "iron guide" in r.text.plain() for r in found.remarks
    )
    assert not any(
        "iron guide" in r.text.plain()
        for r in seat_shrink(ring_outside="37.520 mm", ring_temperature="-196 °C").remarks
    )


def test_makers_own_expansion_goes_before_the_grades():
    """A ring of 15e-6 1/K shrinks more in dry ice, so that the head needs less."""
    assert seat_shrink(own="; ; 15 µm/(m·K)")["head_temperature"] < seat_shrink()["head_temperature"]


def test_bath_that_leaves_something_to_the_limit_is_advised_before_one_that_does_not():
    """At a limit of 190 °C the freezer would do with 4 K to spare, dry ice with 29."""
    assert (
        "Out of dry ice at −78 °C"
        in seat_shrink(ring_temperature="20 °C", head_limit="190 °C").verdict.do.plain()
    )
    assert (
        "Out of liquid nitrogen at −196 °C"
        in seat_shrink(ring_temperature="20 °C", head_limit="125 °C").verdict.do.plain()
    )


def test_largest_ring_that_is_named_drops_in():
    words = seat_shrink(ring_outside="37.75 mm").verdict.do.plain()
    assert "a ring of 37.673 mm at most drops in" in words
    cold = dict(ring_temperature="-196 °C")
    assert (
        seat_shrink(ring_outside="37.673 mm", **cold)["margin"]
        >= 0
        > seat_shrink(ring_outside="37.674 mm", **cold)["margin"]
    )
    assert "ask for less clearance" in seat_shrink(head_limit="60 °C", clearance="0.3 mm").verdict.do.plain()


def test_over_the_limit_the_clearance_is_that_of_the_limit():
    """What cannot be heated further goes in as it is: short of clearance, here by what the head lacks of 203 °C."""
    found = seat_shrink(ring_temperature="20 °C")
    assert found["clearance_in"] == found["clearance_limit"] < 0.05 * MM
    assert clearance(37.5, 37.605, "sintered-iron", "al-si-t6", 20, 200) * MM == pytest.approx(
        found["clearance_in"], abs=1e-12 + 0.0001 * MM
    )
    stuck = seat_shrink(ring_outside="37.75 mm")
    assert stuck["clearance_in"] < 0 and stuck["head_may_cool"] < 0 and stuck["ring_may_warm"] < 0


def test_table_says_what_each_bath_would_give():
    (table,) = seat_shrink().tables
    assert [row[0] for row in table.rows] == ["the room", "a freezer", "dry ice", "liquid nitrogen"]
    for _, bath, head, left in table.rows:
        alone = seat_shrink(ring_temperature=f"{float(bath) - ZERO!r} °C")
        assert (float(head), float(left)) == pytest.approx((alone["head_temperature"], alone["margin"]))
    assert table.states == ("fail", "attention", "pass", "pass")
    assert seat_shrink(head_limit="165 °C").tables[0].states == ("fail", "fail", "attention", "pass")


@pytest.mark.parametrize(
    "given_entries, warned",
    [
        (dict(head_limit="230 °C"), "begins to lose its temper above 200 °C, and the limit given is 230 °C"),
        (
            dict(ring_outside="37.80 mm", ring_temperature="20 °C"),
            "Expansion of Al–Si–Cu casting alloy, T6 is held only up to 300 °C",
        ),
    ],
)
def test_warning(given_entries, warned):
    assert any(warned in r.text.plain() for r in seat_shrink(**given_entries).remarks if r.level == "warning")
    assert not any(r.level == "warning" for r in seat_shrink().remarks)


def test_cold_is_warned_of_where_there_is_cold():
    def hazards(**given_entries):
        return {c.id for c in seat_shrink(**given_entries).cautions}

    assert "frozen-ring" in hazards() and "frozen-ring" in hazards(
        ring_temperature="20 °C"
    )  # advised to chill
    assert "frozen-ring" not in hazards(ring_temperature="20 °C", head_limit="230 °C")
    assert "hot-head" in hazards(ring_temperature="20 °C", head_limit="230 °C")


@pytest.mark.parametrize(
    "field, given_entries, sentence",
    [
        (
            "ring_outside",
            dict(ring_outside="37.4 mm"),
            "Ring outside: is 37.400 mm, not larger than the pocket 37.500 mm, so that it would drop in cold and hold nothing; give more than 37.500 mm.",
        ),
        (
            "ring_outside",
            dict(ring_outside="38.9 mm"),
            "Ring outside: is 38.900 mm, 1.400 mm over the pocket 37.500 mm, more than heat can make up; give 38.250 mm or less, or measure both again.",
        ),
        (
            "head_limit",
            dict(head_limit="340 °C"),
            "Head may be heated to, at most: is 340 °C, and properties of Al–Si–Cu casting alloy, T6 are held only up to 300 °C; give 300 °C or less, or another material.",
        ),
        (
            "ring_temperature",
            dict(ring_temperature="-210 °C"),
            "Ring temperature, when it goes in: −210 °C is below −196 °C, past what this calculator can answer for (liquid nitrogen boils at −196 °C); give −196 °C to 60 °C.",
        ),
    ],
)
def test_refusal(field, given_entries, sentence):
    with pytest.raises(Refused) as refused:
        seat_shrink(**given_entries)
    assert [(e.field, e.sentence()) for e in refused.value.errors] == [(field, sentence)]


def test_inches_and_fahrenheit_give_the_same():
    metric = seat_shrink(
        pocket_bore="37.465 mm", ring_outside="37.5666 mm", ring_temperature="-78 °C", head_limit="200 °C"
    )
    inch = seat_shrink(
        pocket_bore="1.475 in", ring_outside="1.479 in", ring_temperature="-108.4 °F", head_limit="392 °F"
    )
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9, abs=1e-12), output


def test_plot_runs_through_the_rings_own_point():
    (plot,) = seat_shrink(ring_temperature="20 °C").figures
    curve = dict(plot.series[0].points)
    ((x, y, _),) = plot.marks
    assert curve[x] == pytest.approx(y) and y == pytest.approx(ZERO + 203.1635, abs=0.001)


grips, baths = st.floats(0.01, 0.2), st.floats(-196.0, 60.0)


@given(grips, baths, baths)
def test_colder_ring_needs_no_hotter_head(grip, a, b):
    colder, warmer = (
        seat_shrink(ring_outside=f"{37.5 + grip!r} mm", ring_temperature=f"{t!r} °C")["head_temperature"]
        for t in sorted((a, b))
    )
    assert colder <= warmer


@given(grips, grips, baths)
def test_tighter_ring_needs_no_cooler_head(a, b, bath):
    loose, tight = (
        seat_shrink(ring_outside=f"{37.5 + g!r} mm", ring_temperature=f"{bath!r} °C")["head_temperature"]
        for g in sorted((a, b))
    )
    assert loose <= tight


@given(
    grips,
    baths,
    st.floats(0.01, 0.1),
    st.sampled_from(("sintered-iron", "high-chrome-iron", "cobalt-alloy", "grey-iron")),
)
def test_heated_as_told_the_ring_drops_in(grip, bath, wanted, ring_id):
    found = seat_shrink(
        ring_outside=f"{37.5 + grip!r} mm",
        ring_temperature=f"{bath!r} °C",
        clearance=f"{wanted!r} mm",
        ring_material=ring_id,
    )
    assume(found.verdict.state != "fail")
    assert found["clearance_in"] >= wanted * MM * (1 - 1e-9)
    there = clearance(37.5, 37.5 + grip, ring_id, "al-si-t6", bath, found["head_temperature"] - ZERO)
    assert there == pytest.approx(found["clearance_in"] / MM, abs=0.0005)


def test_heat_a_hair_past_the_limit_does_not_read_as_the_limit():
    limit = seat_shrink()["head_temperature"] - 273.15 - 0.004
    headline = seat_shrink(head_limit=f"{limit:.3f} °C").verdict.headline.plain()
    told = float(headline.removeprefix("Over the limit: the head would need ").removesuffix(" °C"))
    assert told > limit, headline
