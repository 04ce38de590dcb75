"""The deck height is a chain of parts where all of them are read."""

import pytest

from calc.declare.calculator import evaluate
from calc.stations.index import find
from tests.stations.jobs import by_title, checks, nominal, titles


def test_deck_height_is_the_chain_of_the_parts():
    found = by_title(checks(*nominal("crankcase", "cylinder", "crank", "rod", "piston")), "Deck height")
    result = evaluate(find("stack-up"), found.entries)
    assert found.place == "1" and result["gap"] * 1000 == pytest.approx(101.70 + 110 - 34.5 - 137 - 39)
    assert by_title(checks(received="case, rods"), "Deck height").calculator == "reading-verdict"
    assert "Deck height" not in titles(received="case") and "Deck height" not in titles(
        received="rods, pistons"
    )
    doubtful = [
        told if told[0] != "crankcase.seat_height" else (*told[:3], "101.70 mm ± 20 µm")
        for told in nominal("crankcase", "cylinder", "crank", "rod", "piston")
    ]
    result = evaluate(find("stack-up"), by_title(checks(*doubtful), "Deck height").entries)
    assert [result[name] * 1000 for name in ("least_gap", "greatest_gap")] == pytest.approx([1.18, 1.22])
