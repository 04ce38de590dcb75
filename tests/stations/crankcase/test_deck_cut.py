"""A cut of the cylinder seats: volumes by integration, the cut wanted by a root, verdicts, refusals."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad
from scipy.optimize import brentq

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.crankcase.deck_cut import deck_cut
from tests.checks.stations.crankcase.deck_cut import ENGINE
from tests.corners import corners

MM = 1e-3


def ratio(cut):
    """In mm: the bore's area by rings, swept by the stroke."""
    area, _ = quad(lambda r: 2 * math.pi * r, 0, 44.0)
    top = 56_000 + area * (1.2 - cut)
    return (top + area * 69.0) / top


def test_ratio_is_that_of_the_volumes():
    found = deck_cut(**ENGINE)
    assert found["ratio"] == pytest.approx(ratio(0), rel=1e-9)
    assert found["ratio_then"] == pytest.approx(ratio(0.3), rel=1e-9)
    slope = (ratio(0.3 + 1e-5) - ratio(0.3 - 1e-5)) / 2e-5
    assert found["tenth"] == pytest.approx(0.1 * slope, rel=1e-6)


@pytest.mark.parametrize("gain", [0.1, 0.3, 0.8])
def test_the_cut_wanted_is_the_root(gain):
    root = brentq(lambda c: ratio(c) - ratio(0) - gain, 0, 1.9)
    assert deck_cut(**ENGINE, gain=str(gain))["cut_wanted"] / MM == pytest.approx(root, abs=1e-9)


VERDICTS = {
    "the example": ("pass", "Deck 1.05 mm, ratio 7.73, then", {}),
    "not cut": ("pass", "Deck 1.20 mm, ratio 7.63, then", dict(cut="0")),
    "on its limit": ("pass", "Deck 1.02 mm, ratio 7.74, then", dict(cut="0.175 mm")),
    "little deck": ("attention", "Little deck: 0.90 mm, 1.025 mm as made", dict(cut="0.3 mm")),
    "shimmed back": ("pass", "Deck 1.20 mm, ratio 7.63, then", dict(cut="0.3 mm", shim_more="0.3 mm")),
    "much deck": (
        "attention",
        "Much deck: 1.60 mm, 1.375 mm as made",
        dict(cut="0.1 mm", shim_more="0.5 mm"),
    ),
    # what 0.30 more of ratio takes: under the 0.8 mm below which piston and head may meet
    "for the ratio": ("fail", "Piston may meet the head: 0.75 mm of deck", dict(cut="0.4505 mm")),
    "above the face": (
        "fail",
        "Piston may meet the head: −0.10 mm of deck",
        dict(deck="0.2 mm", cut="0.3 mm"),
    ),
    "ratio too high": ("fail", "Ratio too high: 7.73, 7.50 allowed", dict(ratio_most="7.5")),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = deck_cut(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)


@pytest.mark.parametrize(
    "entries", [dict(cut="0.3 mm"), dict(cut="0.6 mm"), dict(cut="0.7123 mm", deck_low="0.7 mm")]
)
def test_the_shim_that_is_advised_serves(entries):
    found = deck_cut(**entries)
    words = found.verdict.do.plain()
    more = words.partition("Put ")[2].partition(" mm")[0]
    assert deck_cut(**entries, shim_more=f"{more} mm").verdict.state == "pass", words


def test_both_sides_come_nearer_twice_and_one_side_is_warned_of():
    both, one = deck_cut(), deck_cut(sides="one")
    assert both["heads"] == pytest.approx(2 * one["heads"]) and both["deck_then"] == one["deck_then"]
    warned = [r.text.plain() for r in one.remarks if r.level == "warning"]
    assert len(warned) == 1 and "unlike halves" in warned[0]
    assert not [r for r in both.remarks if r.level == "warning"]


def test_an_engine_at_every_corner_of_its_sheet_that_is_not_cut_is_in_order():
    for deck, chamber, bore in corners("crankcase.deck_height", "chamber.volume", "cylinder.bore"):
        read = dict(cut="0", deck=deck, chamber=chamber, bore=bore)
        assert evaluate(deck_cut, read, standing=Standing(engine("TS-16"))).verdict.state == "pass", read


def test_limits_come_from_the_engine_s_sheet_or_from_the_reader():
    told = dict(cut="0.1", deck="1.2", chamber="56", bore="88", stroke="69", seat_height="101.7")
    by = {
        name: evaluate(deck_cut, told, standing=Standing(engine(name) if name else None))
        for name in ("TS-16", "")
    }
    assert by["TS-16"].verdict.state == "pass" and by[""].verdict.state == "unjudged"
    assert evaluate(deck_cut, told | dict(deck_low="1.0")).verdict.state == "pass"
    assert evaluate(deck_cut, {}, standing=Standing(engine("TS-16"))).verdict.state == "awaited"


@pytest.mark.parametrize(
    "entries",
    [dict(deck="1.18 ± 0.05 mm"), dict(deck="0.96 ± 0.05 mm"), dict(deck="1.48 ± 0.03 mm", cut="0.1 mm")],
)
def test_a_doubt_that_reaches_a_limit_leaves_it_open(entries):
    found = deck_cut(**entries)
    assert found.verdict.state == "unsure" and "deck height" in found.verdict.headline.plain()


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(bore="0"), "bore", "below 40"),
        (dict(stroke="0"), "stroke", "below 30"),
        (dict(cut="-0.1 mm"), "cut", "below 0"),
        (dict(deck="-2 mm", chamber="10 cm³"), "deck", "leaves no volume"),
        (dict(deck="-1 mm", chamber="10 cm³", cut="1 mm"), "cut", "leaves no volume"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        deck_cut(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error), str(error)


@given(st.integers(0, 60), st.integers(0, 60))
def test_a_shim_as_thick_as_the_cut_changes_nothing_but_the_seat(cut, other):
    found = deck_cut(cut=f"{cut / 100} mm", shim_more=f"{cut / 100} mm")
    assert found["ratio"] == pytest.approx(found["ratio_then"]) and found["heads"] == pytest.approx(
        0, abs=1e-12
    )
    assert found["seat_then"] == pytest.approx(0.1017 - cut * 1e-5)
    more = deck_cut(cut=f"{cut / 100} mm", shim_more=f"{other / 100} mm")
    assert more["restores"] == pytest.approx(max(0, cut - other) * 1e-5, abs=1e-12)


def test_inches_give_the_same():
    metric = dict(cut="0.254 mm", deck="1.27 mm", bore="88.9 mm", stroke="69.85 mm", seat_height="101.6 mm")
    inch = dict(cut="0.010", deck="0.050", bore="3.5", stroke="2.75", seat_height="4")
    first, second = evaluate(deck_cut, metric), evaluate(deck_cut, inch, "inch")
    for output in first.outputs:
        assert second[output] == pytest.approx(first[output], rel=1e-9, abs=1e-12), output


def test_drawing_shows_the_deck_and_the_cut():
    (drawing,) = deck_cut(cut="0.2 mm").figures
    (deck,) = (s for s in drawing.shapes if hasattr(s, "away"))
    (cut,) = (s.words.plain() for s in drawing.shapes if hasattr(s, "words"))
    assert (
        deck.end[1] > deck.start[1]
        and cut == "0.20 mm off each seat"
        and "times as thick" in drawing.exaggerated.plain()
    )
