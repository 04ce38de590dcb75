"""Compression against a stack of areas; verdicts, refusals, both ways back, and what must always be so."""

import re
from itertools import product

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.cylinders.compression import compression
from tests.checks.stations.cylinders.compression import CASE, CHAMBER_ONLY, WANTED

MM, CC = 1e-3, 1e-6
READ = dict(bore="88.010 mm", chamber="56.0 cm³", deck="1.20 mm")


def on(sheet, **entries):
    return evaluate(compression, entries, standing=Standing(engine(sheet) if sheet else None))


def test_checks_are_a_stack_of_areas():
    """Areas over the height, the crown as a plateau of 10 mm² less than the bore that takes the room away: only its volume counts."""
    area = np.pi / 4 * 0.088**2
    crown = quad(lambda _: area, 0, 12.7e-3)[0] - 71.9e-6
    left = 54.2e-6 + quad(lambda _: area, 0, 1.1e-3)[0] - crown
    swept = quad(lambda _: area, 0, 69e-3)[0]
    ring = quad(lambda _: np.pi / 4 * (0.088**2 - 0.0873**2), 0, 6e-3)[0]
    found = compression(**CASE)
    for name, value in (("crown", crown), ("left", left), ("swept", swept), ("land", ring)):
        assert found[name] == pytest.approx(value, rel=1e-9), name
    assert found["ratio"] == pytest.approx((swept + left) / left, rel=1e-12)
    assert found["ratio_land"] == pytest.approx((swept + left + ring) / (left + ring), rel=1e-12)


VERDICTS = {
    "the example": ({}, "pass", "Ratio 7.43: within 7.20 to 7.80"),
    "chamber cut too far": (dict(chamber="52.0 cm³"), "fail", "Ratio 7.85: over 7.80"),
    "deck too large": (dict(chamber="58.0 cm³", deck="1.37 mm"), "fail", "Ratio 7.14: under 7.20"),
    "the sign of a bowl mistaken": (dict(dome="2.0 cm³"), "fail", "Ratio 7.85: over 7.80"),
    "wanted, by shims": (dict(aim="wanted", wanted="7.5"), "pass", "Shims 0.12 mm thinner give 7.50"),
    "wanted lower, by shims": (dict(aim="wanted", wanted="7.35"), "pass", "Shims 0.13 mm thicker give 7.35"),
    "as it is wanted": (dict(aim="wanted", wanted="7.4282"), "pass", "Nothing to change: it is 7.43"),
    "not by shims": (
        dict(aim="wanted", wanted="7.70"),
        "attention",
        "Not by shims: they leave 0.76 mm of deck",
    ),
    "proud": (
        dict(aim="wanted", wanted="7.70", chamber="62 cm³", high="9", deck="1.2 mm"),
        "attention",
        "Not by shims: piston 0.22 mm proud",
    ),
    "not this engine's": (
        dict(aim="wanted", wanted="8.60"),
        "fail",
        "Ratio 8.60 wanted: 7.20 to 7.80 allowed",
    ),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    entries, state, headline = VERDICTS[name]
    verdict = on("TS-16", **READ | dict(dome="-2.0 cm³", stroke="69 mm") | entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, headline)


@pytest.mark.parametrize("system", ["metric", "inch"])
@pytest.mark.parametrize(
    "entries",
    [dict(chamber="53.0 cm³", deck="1.03 mm"), dict(chamber="56.9 cm³", deck="1.37 mm", dome="-3 cm³")],
)
def test_the_shim_that_is_told_brings_it_within(entries, system):
    told = on("TS-16", **READ | dict(dome="-2.0 cm³") | entries).verdict
    assert told.state == "fail"
    thick, unit, way = re.search(r"shims ([\d.]+) (\w+) (thicker|thinner)", told.do.plain(system)).groups()
    by = float(thick) * (25.4 if unit == "in" else 1) * (1 if way == "thicker" else -1)
    deck = float(entries["deck"].split()[0]) + by
    done = on("TS-16", **READ | dict(dome="-2.0 cm³") | entries | dict(deck=f"{deck!r} mm"))
    assert done.verdict.state == "pass", done.verdict.headline.plain()


def test_a_chamber_that_is_told_brings_it_within():
    for entries in (dict(chamber="60.0 cm³", deck="1.05 mm"), dict(chamber="50.0 cm³")):
        told = on("TS-16", **READ | dict(dome="-2.0 cm³") | entries).verdict
        by, way = re.search(r"chamber must be ([\d.]+) cm³ (larger|smaller)", told.do.plain()).groups()
        chamber = float(entries["chamber"].split()[0]) + float(by) * (1 if way == "larger" else -1)
        done = on("TS-16", **READ | dict(dome="-2.0 cm³") | entries | dict(chamber=f"{chamber!r} cm³"))
        assert done.verdict.state == "pass", done.verdict.headline.plain()


ratios = st.floats(4.0, 14.0)


tenths = st.integers(-80, 80).map(lambda n: n / 10)


@given(ratios, tenths, st.floats(0.2, 3))
def test_both_ways_back_are_put_back_exactly(ratio, dome, deck):
    given_ = CHAMBER_ONLY | dict(dome=f"{dome!r} cm³", deck=f"{deck!r} mm")
    found = compression(**given_ | dict(aim="wanted", wanted=repr(ratio)))
    if found["chamber_wanted"] > 5 * CC:
        by_chamber = compression(**given_ | dict(chamber=f"{found['chamber_wanted'] / CC!r} cm³"))
        assert by_chamber["ratio"] == pytest.approx(ratio, rel=1e-9)
    if -3 * MM < found["deck_wanted"] < 15 * MM:
        by_deck = compression(**given_ | dict(deck=f"{found['deck_wanted'] / MM!r} mm"))
        assert by_deck["ratio"] == pytest.approx(ratio, rel=1e-9)
        assert found["shim"] == pytest.approx(found["deck_wanted"] - deck * MM, abs=1e-12)


@given(tenths)
def test_filling_finds_the_crown_that_was_there(dome):
    """Fill over a crown that is known, lowered by 12.7 mm: the same ratio both ways."""
    fill = np.pi / 4 * 8.8**2 * 1.27 - dome
    known = compression(**CHAMBER_ONLY | dict(dome=f"{dome!r} cm³"))
    filled = compression(**CHAMBER_ONLY, crown_by="filled", lowered="12.7 mm", filled=f"{fill!r} cm³")
    assert filled["ratio"] == pytest.approx(known["ratio"], rel=1e-12)


def test_an_oversize_sweeps_its_own_volume():
    by = {b: compression(**CHAMBER_ONLY | dict(bore=f"{b} mm")) for b in (88.0, 89.0)}
    assert by[89.0]["swept"] / by[88.0]["swept"] == pytest.approx((89 / 88) ** 2, rel=1e-12)
    assert by[89.0]["ratio"] > by[88.0]["ratio"]


def test_all_corners_of_the_sheet_are_in_order_at_every_size_of_bore():
    """What the sheet's own limits allow of bore, throw, chamber, deck and crown; a deck below nothing or a worn bore are no part of it."""
    sheet = engine("TS-16").features
    ids = ("cylinder.bore", "crank.stroke", "chamber.volume", "crankcase.deck_height", "piston.dome")
    names = ("bore", "stroke", "chamber", "deck", "dome")
    units = ("m", "m", "m³", "m", "m³")
    for step in (0.0, 0.5e-3, 1.0e-3):
        for corner in product(*((sheet[id].low, sheet[id].high) for id in ids)):
            sizes = (corner[0] + step, *corner[1:])
            entries = {n: f"{x!r} {u}" for n, x, u in zip(names, sizes, units)}
            found = on("TS-16", **entries)
            assert found.verdict.state == "pass", (entries, found.verdict.headline.plain())


def test_limits_are_those_of_the_engine_in_hand():
    assert on("TS-16", **READ).verdict.state == "pass"  # the crown is what the sheet says, wherever it lies
    rc40 = on("RC-40", bore="3.7504 in", chamber="58 cm³", deck="0.045 in", dome="0 cm³")
    assert rc40.verdict.state == "unjudged" and rc40["ratio"] > 1
    assert on("", **READ, dome="0 cm³", stroke="69 mm").verdict.state == "unjudged"
    assert on("TS-16", bore="88.010 mm", chamber="56.0 cm³").verdict.state == "awaited"
    typed = dict(low="7.2", high="7.8", least_deck="1.0 mm", most_deck="1.4 mm")
    own = on("", **READ, dome="-2 cm³", stroke="69 mm", **typed)
    assert own.verdict.state == "pass"
    stepped = on("", **READ, dome="-2 cm³", stroke="69 mm", step_depth="0.5 mm", **typed)
    assert stepped.verdict.state == "awaited" and "step, across" in stepped.verdict.headline.plain()


def test_a_deck_out_of_its_own_limits_is_not_in_order_whatever_the_ratio():
    for deck, headline in (
        ("0.90", "Deck 0.90 mm: 1.025 mm is the least"),
        ("1.50", "Deck 1.50 mm: 1.375 mm is the most"),
    ):
        verdict = on("TS-16", **READ | dict(deck=f"{deck} mm")).verdict
        assert (verdict.state, verdict.headline.plain()) == ("fail", headline)
    open_ = on("TS-16", **READ | dict(deck="1.03 ± 0.03 mm")).verdict
    assert open_.state == "unsure" and "deck height" in open_.headline.plain()


def test_a_doubt_that_reaches_the_limit_leaves_it_open():
    """7.43 ± what 2 cm³ of chamber are worth: 0.2; exact by two ends, first order within a fiftieth."""
    found = on("TS-16", **READ | dict(chamber="53.5 ± 2 cm³", dome="-2 cm³", stroke="69 mm"))
    assert found.verdict.state == "unsure" and "compression ratio" in found.verdict.headline.plain()
    ends = [compression(**READ | dict(chamber=c)) for c in ("51.5 cm³", "55.5 cm³")]
    half = (ends[0]["ratio"] - ends[1]["ratio"]) / 2
    assert found.doubts["ratio"] == pytest.approx(half, rel=0.02)


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(chamber="5 cm³", deck="-3 mm"), "chamber", "no room at all"),
        (dict(crown_by="filled", lowered="20 mm", filled="20 cm³"), "filled", "no room at all"),
        (dict(bore="8.8 mm"), "bore", "below 20"),
        (dict(chamber="54 in³"), "chamber", "above 400"),
        (dict(deck="20 mm"), "deck", "above 15"),
        (dict(aim="wanted", wanted="1"), "wanted", "below 2"),
        (dict(stroke="69 cm³"), "stroke", "a volume"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        compression(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error), str(error)


def test_what_a_page_would_not_see_is_told():
    def said(**entries):
        return " ".join(r.text.plain() for r in compression(**entries).remarks)

    assert "proud" in said(deck="-0.10 mm") and "proud" not in said()
    assert "no wider than the bore" in said(step_depth="1 mm", step_across="80 mm")
    assert "a bowl of 2.0" in said() and "bowl" not in said(dome="1 cm³")
    assert "a dome of 5.3" in said(**CASE)
    assert "not judged" in said()


def test_inches_give_the_same():
    metric = evaluate(
        compression, dict(bore="88.9 mm", deck="1.27 mm", chamber="57.3547235 cm³", stroke="69.85 mm")
    )
    inch = evaluate(compression, dict(bore="3.5", deck="0.05", chamber="3.5", stroke="2.75"), "inch")
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-5, abs=1e-11), output


def test_the_table_is_the_difference_of_two_runs():
    (table,) = compression(**CHAMBER_ONLY).tables
    by = {row[0]: float(row[2]) for row in table.rows}
    now = compression(**CHAMBER_ONLY)["ratio"]
    for words, change in (
        ("Chamber", dict(chamber="56.5 cm³")),
        ("Crown", dict(dome="0.5 cm³")),
        ("Deck height", dict(deck="1.30 mm")),
        ("Bore", dict(bore="88.1 mm")),
        ("Stroke", dict(stroke="69.1 mm")),
    ):
        moved = compression(**CHAMBER_ONLY | change)["ratio"]
        assert by[words] == pytest.approx(moved - now, rel=1e-9), words


def test_drawing_has_the_deck_and_volumes_of_the_reading():
    (drawing,) = compression(**CHAMBER_ONLY | dict(deck="3 mm", dome="-4 cm³")).figures
    piston = next(s for s in drawing.shapes if getattr(s, "hatch", "") == "c")
    edge = max(y for x, y in piston.points)
    assert edge == pytest.approx(-3 * MM, abs=1e-9)
    crown = [p for p in piston.points[:-2]]  # the last two are the cut below
    r = max(x for x, _ in crown)
    bowl = sum(  # turned about the axis: rings of 2π·r·dr under the edge, of both sides the half
        np.pi * abs(a[0] + b[0]) / 2 * abs(b[0] - a[0]) * (edge - (a[1] + b[1]) / 2)
        for a, b in zip(crown, crown[1:])
    )
    assert bowl / CC == pytest.approx(4, rel=0.01) and r == pytest.approx(43.65 * MM, abs=1e-9)


def test_a_ratio_wanted_is_told_only_where_it_is_asked_for():
    assert "chamber_wanted" not in on("TS-16", **READ).outputs
    assert "chamber_wanted" in on("TS-16", **READ, aim="wanted").outputs
    assert compression(**WANTED)["deck_wanted"] < 0
