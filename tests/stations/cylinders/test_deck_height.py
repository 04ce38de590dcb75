"""Deck heights: every set of shims tried in whole fractions, verdicts, refusals, and what must always be so."""

from fractions import Fraction
from itertools import combinations_with_replacement, product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.cylinders.deck_height import deck_height
from tests.checks.stations.cylinders.deck_height import PAIR

MM = 1e-3
SOLD = ("0.25", "0.50", "0.75", "1.00")
LIMITS = dict(low="1.025 mm", high="1.375 mm", wanted="1.20 mm")


def on(sheet, **entries):
    return evaluate(deck_height, entries, standing=Standing(engine(sheet) if sheet else None))


def rows(*decks, slope=0.0):
    return " | ".join("" if d is None else f"{d - slope / 2:.4f}; {d + slope / 2:.4f}" for d in decks)


def by_fractions(decks, low, high, wanted, sold=SOLD, most=2):
    """The stack that serves, by trying each in whole fractions; None where none does."""
    decks, low, high, wanted = [Fraction(d) for d in decks], Fraction(low), Fraction(high), Fraction(wanted)
    serving = []
    for n in range(most + 1):
        for stack in combinations_with_replacement([Fraction(s) for s in sold], n):
            then = [d + sum(stack) for d in decks]
            if all(low <= d <= high for d in then):
                serving.append((abs(sum(then) / len(then) - wanted), sum(stack)))
    return min(serving)[1] if serving else None


hundredths = st.integers(-60, 250).map(lambda n: f"{n / 100:.2f}")


@given(hundredths, st.integers(0, 12))
def test_every_set_of_shims_was_tried(deck, apart):
    decks = (deck, f"{float(deck) + apart / 100:.2f}")
    found = on("TS-16", readings=" | ".join(f"{d}; {d}" for d in decks), span="70 mm")
    served = by_fractions(decks, "1.025", "1.375", "1.20")
    if all(1.025 <= float(d) <= 1.375 for d in decks):
        served = 0  # what is in serves, and stays
    assert (found.verdict.state == "fail") == (served is None)
    if served is not None:
        assert found["shims"] / MM == pytest.approx(float(served), abs=1e-9)
        assert 1.025 - 1e-9 <= found["least"] / MM <= found["most"] / MM <= 1.375 + 1e-9


def test_the_row_of_the_checks_by_fractions():
    assert by_fractions(("0.62", "0.70"), "1.00", "1.60", "1.20") == Fraction("0.50")
    assert deck_height(**PAIR)["shims"] / MM == pytest.approx(0.5)


VERDICTS = {
    "as it should be": (rows(1.20, 1.21, 1.19, 1.20), "pass", "Decks right: 1.190 mm to 1.210 mm"),
    "one alone": (rows(1.20), "pass", "Deck right: 1.200 mm"),
    "one head too near": (
        rows(0.95, 0.97, 1.20, 1.20),
        "pass",
        "Shims: 0.25 mm under 1 and 2, none under 3 and 4",
    ),
    "two shims": (rows(0.00, 0.01), "pass", "Shims: 0.25 mm + 1.00 mm under 1 and 2"),
    "a pair unlike": (rows(1.10, 1.18), "attention", "1 and 2 unlike: 0.080 mm apart, 0.05 mm wanted"),
    "too much deck": (rows(1.40, 1.41), "fail", "1 and 2: 1.410 mm of deck without any shim"),
    "too unlike": (rows(0.60, 1.00), "fail", "1 and 2 too unlike: 0.400 mm apart"),
    "nothing sold": (rows(-1.50, -1.50), "fail", "1 and 2: no shims sold fit"),
    "leans": (rows(1.20, 1.20, slope=0.10), "fail", "Piston 1 leans: 0.143 mm, 0.12 mm allowed"),
    "leans a little": (
        rows(1.20, 1.20, slope=0.05),
        "attention",
        "Piston 1 leans: 0.071 mm, 0.06 mm is good",
    ),
    "shims in already": ("1.20; 1.20; 0.25 | 1.21; 1.21; 0.25", "pass", "Decks right: 1.200 mm to 1.210 mm"),
    "shims in that are too many": (
        "1.45; 1.45; 0.50 | 1.46; 1.46; 0.50",
        "pass",
        "Shims: 0.25 mm under 1 and 2",
    ),
    "shims in that differ": ("1.20; 1.20; 0.25 | 1.20; 1.20", "fail", "1 and 2 too unlike: 0.250 mm apart"),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    readings, state, headline = VERDICTS[name]
    verdict = on("TS-16", readings=readings, span="70 mm").verdict
    assert verdict.state == state and headline in (None, verdict.headline.plain()), verdict.headline.plain()


def test_both_limits_belong_to_what_is_allowed():
    for deck in ("1.025", "1.375"):
        assert on("TS-16", readings=f"{deck}; {deck}", span="70 mm").verdict.state == "pass"
    beyond = on("TS-16", readings="1.376; 1.376", span="70 mm").verdict
    assert beyond.state == "fail"
    under = on("TS-16", readings="1.024; 1.024", span="70 mm")
    assert under.verdict.state == "pass" and under["shims"] / MM == pytest.approx(0.25)


def test_all_corners_of_the_sheet_are_in_order():
    """Decks at the ends of what the sheet's sizes allow, each head alike, slopes at what is good."""
    deck = engine("TS-16").features["crankcase.deck_height"]
    good = engine("TS-16").features["crankcase.deck_slope"].high / MM * 0.7  # over the 70 mm of the readings
    for one, other in product((deck.low / MM, deck.high / MM), repeat=2):
        readings = rows(one, one, other, other, slope=good)
        assert on("TS-16", readings=readings, span="70 mm").verdict.state == "pass", readings


def test_pairs_are_those_under_one_head():
    readings = rows(0.95, 1.20, 0.96, 1.21)
    assert on("TS-16", readings=readings, span="70 mm").verdict.state == "fail"
    found = on("TS-16", readings=readings, span="70 mm", pairs="13")
    assert found.verdict.headline.plain() == "Shims: 0.25 mm under 1 and 3, none under 2 and 4"


def test_sizes_sold_and_limits_are_those_of_the_engine_in_hand():
    read = dict(readings="0.94; 0.94 | 0.95; 0.95", span="70 mm")
    assert on("TS-16", **read)["shims"] / MM == pytest.approx(0.25)
    inch = on("RC-40", **read)  # 0.0355 to 0.0595 in: in its own limits; no slope on its sheet
    assert inch.verdict.state == "pass" and any("not judged" in r.text.plain() for r in inch.remarks)
    near = on("RC-40", readings="0.60; 0.60 | 0.60; 0.60", span="70 mm")
    sold = {0.010, 0.020, 0.030}
    assert near.verdict.state == "pass"
    assert any(near["shims"] / 0.0254 == pytest.approx(a + b, abs=1e-9) for a in sold for b in sold | {0})
    none = on("", **read)
    assert none.verdict.state in ("awaited", "unjudged") and "least" not in none.outputs
    typed = on("", **read, sold="0.30", **LIMITS)
    assert typed.verdict.state == "pass" and typed["shims"] / MM == pytest.approx(0.30)


def test_readings_too_far_apart_are_refused():
    with pytest.raises(Refused) as refused:
        deck_height(readings="1.02; 1.60", span="70 mm")
    (error,) = refused.value.errors
    assert error.field == "readings" and "a piston rocks" in str(error) and "cylinder 1" in str(error)


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(readings=" | "), "readings", "no row is filled"),
        (dict(readings="1.2"), "readings.1.2", "is empty"),
        (dict(span="5 mm"), "span", "below 10"),
        (dict(low="1.5 mm", high="1.2 mm"), "low", "not below"),
        (dict(readings="1.2 kg; 1.2"), "readings.1.1", "a mass"),
        (dict(sold="7 mm"), "sold.1.1", "above 5"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        deck_height(**entries)
    error = refused.value.errors[0]
    assert error.field == field and words in str(error), (error.field, str(error))


@pytest.mark.parametrize(
    "readings, what",
    [
        ("1.030 ± 0.02; 1.030 ± 0.02", None),  # a shim serves however it lies
        ("1.36 ± 0.03; 1.36 ± 0.03", "deck height of 1"),
        ("1.20 ± 0.02; 1.275 ± 0.02", "slope of piston 1"),
        ("1.10; 1.10 | 1.145 ± 0.02; 1.145 ± 0.02", "how alike 1 and 2"),
    ],
)
def test_a_doubt_that_reaches_a_limit_leaves_it_open(readings, what):
    verdict = on("TS-16", readings=readings, span="70 mm").verdict
    if what is None:
        assert verdict.state == "pass"
    else:
        assert verdict.state == "unsure" and what in verdict.headline.plain(), verdict.headline.plain()


@given(st.integers(80, 140), st.integers(-8, 8))
def test_a_lean_either_way_is_the_same_lean(deck, lean):
    a, b = f"{(deck - lean / 2) / 100:.3f}", f"{(deck + lean / 2) / 100:.3f}"
    one = deck_height(readings=f"{a}; {b}", span="70 mm")
    other = deck_height(readings=f"{b}; {a}", span="70 mm")
    assert one["slope"] == pytest.approx(other["slope"], abs=1e-12) and one["least"] == pytest.approx(
        other["least"], abs=1e-12
    )
    assert one["slope"] / MM == pytest.approx(abs(float(b) - float(a)) / 70 * 100, abs=1e-9)


def test_what_a_page_would_not_see_is_told():
    def said(readings):
        return " ".join(r.text.plain() for r in on("TS-16", readings=readings, span="70 mm").remarks)

    assert "Only one cylinder" in said("1.2; 1.2") and "Only one" not in said("1.2; 1.2 | 1.2; 1.2")
    assert "stands proud" in said("-0.1; -0.1 | 1.2; 1.2")
    assert "Shims differ under 1 and 2" in said("1.2; 1.2; 0.25 | 1.2; 1.2")


def test_inches_give_the_same():
    metric = evaluate(deck_height, dict(readings="1.0160; 1.0414 | 1.0160; 1.0160", span="76.2 mm"))
    inch = evaluate(deck_height, dict(readings="0.040; 0.041 | 0.040; 0.040", span="3"), "inch")
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9, abs=1e-12), output


def test_drawing_leans_as_the_pistons_do():
    (drawing,) = deck_height(readings="1.10; 1.20 | 1.15; 1.15", span="70 mm").figures
    first, second = (s.points for s in drawing.shapes if getattr(s, "hatch", "") == "c")
    times = float(drawing.exaggerated.plain().split()[2])
    assert (first[0][1] - first[1][1]) / times == pytest.approx(0.10 * MM)
    assert second[0][1] == second[1][1] and -second[0][1] / times == pytest.approx(1.15 * MM)
