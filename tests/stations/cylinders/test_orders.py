"""Shims under the cylinders follow from the deck height."""

import re

import pytest

from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.index import find
from tests.stations.jobs import needed, said

DECK = {
    "crankcase.seat_height": "101.45 mm",
    "cylinder.length": "110.00 mm",
    "crank.throw": "34.500 mm",
    "rod.centre_distance": "137.00 mm",
    "piston.compression_height": "39.00 mm",
}


def deck(places="1", **changed):
    sizes = {**DECK, **{key.replace("__", "."): text for key, text in changed.items()}}
    return [(feature, place, "finished", text) for feature, text in sizes.items() for place in places]


def test_shims_under_the_cylinders_follow_from_the_deck_height():
    (row,) = needed(
        *deck()
    )  # by hand: 101.45 + 110 − 34.5 − 137 − 39 = 0.95; 1.20 is wanted, 1.025 to 1.375 allowed
    assert (
        said(row) == ("Shims under the cylinders", "0.25 mm", ("1",), "pass")
        and row.do.plain() == "Brings it to 1.20 mm."
    )
    assert row.because.plain() == "Deck height, piston crown below the cylinder's face 0.95 mm"
    assert needed(*deck(crankcase__seat_height="101.70 mm")) == []  # 1.20
    (both,) = needed(*deck("12"))
    assert both.places == ("1", "2")
    (thick,) = needed(*deck(crankcase__seat_height="100.72 mm"))  # 0.22: 0.98 is missing, and 1.00 there is
    assert thick.size.plain() == "1.00 mm"
    (too_high,) = needed(*deck(crankcase__seat_height="102.00 mm"))  # 1.50
    assert said(too_high)[1:] == ("none helps", ("1",), "fail")
    (two,) = needed(*deck(crankcase__seat_height="100.00 mm"))  # −0.50: 1.70 is missing, and 1.75 are two
    assert said(two)[1:] == ("0.75 mm + 1.00 mm", ("1",), "pass")
    (too_low,) = needed(*deck(crankcase__seat_height="99.00 mm"))  # −1.50: 2.70 is missing
    assert said(too_low)[1:] == ("2.70 mm, which is not made", ("1",), "fail")
    assert needed(*deck()[:-1]) == [], "not every size of the chain is read"


def test_a_doubtful_deck_height_leaves_the_shim_open():
    (row,) = needed(*deck(crankcase__seat_height="101.52 mm ± 0.05 mm"))  # 1.02 ± 0.05 of at least 1.025
    assert said(row)[1:] == ("0.25 mm or none", ("1",), "unsure")
    (row,) = needed(
        *deck(crankcase__seat_height="100.85 mm ± 0.3 mm")
    )  # 0.35 ± 0.3: no shim surely brings 1.025 to 1.375
    assert row.state == "unsure" and " or " in row.size.plain() and "Cannot tell" in row.do.plain()


def test_on_a_limit_exactly_a_shim_or_a_cleaned_up_size_is_right():
    # by hand: deck 101.70 + 110.00 − 34.50 − 137.00 − 39.175 = 1.025, the lower limit itself: no shim
    chain = [
        ("crankcase.seat_height", "1", "finished", "101.70 mm"),
        ("cylinder.length", "1", "finished", "110.00 mm"),
        ("crank.throw", "1", "finished", "34.500 mm"),
        ("rod.centre_distance", "1", "finished", "137.00 mm"),
        ("piston.compression_height", "1", "finished", "39.175 mm"),
    ]
    assert needed(*chain) == []
    # by hand: 54.780 less the 0.03 that must come off is 54.750, the first undersize's upper limit itself
    row = needed(("crank.main_journal", "1", "received", "54.780 mm"))[0]
    assert row.size.plain() == "0.25 mm undersize, once machined to it"


@pytest.mark.parametrize(
    "one, two",
    [
        (0.95, 0.97),
        (0.95, 1.20),
        (1.02, 1.10),
        (0.62, 0.70),
        (0.60, 1.00),
        (-0.40, -0.38),
        (-1.5, -1.5),
        (1.2, 1.2),
        (0.9, 1.03),
    ],
)
def test_what_is_ordered_is_what_the_calculator_says(one, two):
    """Both cylinders under a head get the same, though one alone would be right as it is."""
    decks = [("crankcase.deck_height", n, "finished", f"{d:.2f} mm") for n, d in (("1", one), ("2", two))]
    rows = needed(*decks)
    readings = f"{one}; {one} | {two}; {two}"
    found = evaluate(
        find("deck-height"), dict(readings=readings, span="70 mm"), standing=Standing(engine("TS-16"))
    )
    thick = found["shims"] * 1000
    if found.verdict.state == "fail":
        assert rows and all(row.state == "fail" for row in rows)
    elif not thick:
        assert rows == []
    else:
        (row,) = rows
        assert row.places == ("1", "2") and row.state == "pass"
        sizes = [float(x) for x in re.findall(r"([\d.]+) mm", row.size.plain())]
        assert sum(sizes) == pytest.approx(thick)


@pytest.mark.parametrize(
    "bore, bottom", [("88.130", "88.010"), ("88.250", "88.010"), ("88.440", "88.010"), ("88.640", "88.510")]
)
def test_pistons_are_ordered_as_the_calculator_of_bores_chooses_them(bore, bottom):
    """Read alike all over, the worst place is all that counts: the size sheet and the calculator name the same oversize."""
    (row,) = needed(("cylinder.bore", "1", "received", f"{bore} mm"))
    # worn alike at the top, and at the bottom as it was made: the hone follows it
    rows = f"{bore}; {bore} | {bore}; {bore} | {bottom}; {bottom}"
    found = evaluate(find("cylinder-bore"), dict(bores=rows, axis="free"), standing=Standing(engine("TS-16")))
    assert row.size.plain() == f"{found['oversize'] * 1000:.2f} mm oversize, once machined to it"


def test_rings_of_each_groove_are_ordered_when_their_gap_is_worn_out():
    for feature in ("piston.ring_gap", "piston.ring_gap_second", "piston.ring_gap_oil"):
        (row,) = needed((feature, "1", "received", "1.10 mm"))
        assert said(row)[0] == "Piston rings"
