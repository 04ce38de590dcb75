"""Outside numbers for a cut of the cylinder seats, asked of the calculator. Those marked library are worked anew in test_deck_cut.py."""
from tests.checks import Check, Trend, asked

QUAD = "scipy quad: the bore's area over the stroke and the deck, plus the chamber"
SLOPE = "scipy: derivative of that ratio by differences, for 0.10 mm"
ROOT = "scipy brentq: the cut at which that ratio is 0.30 higher"
ENGINE = dict(bore="88.0 mm", stroke="69.0 mm", chamber="56.0 cm³", deck="1.2 mm", cut="0.3 mm")

CHECKS = [
    Check("deck-cut", "deck after 0.3 mm off each side, mm", ENGINE, 0.9, 1e-9, asked("deck-cut", "deck_then", "mm"), "1.2 less 0.3", "limit"),
    Check("deck-cut", "ratio before", ENGINE, 7.6300, 5e-5, asked("deck-cut", "ratio"), QUAD, "library"),
    Check("deck-cut", "ratio after", ENGINE, 7.8267, 5e-5, asked("deck-cut", "ratio_then"), QUAD, "library"),
    Check("deck-cut", "ratio gained by 0.10 mm more", ENGINE, 0.067543, 5e-7, asked("deck-cut", "tenth"), SLOPE, "library"),
    Check("deck-cut", "pushrods shorter by, mm", ENGINE, 0.3, 1e-9, asked("deck-cut", "pushrods", "mm"), "as much as the cylinders came nearer", "limit"),
    Check("deck-cut", "barrel shim that restores it, mm", ENGINE, 0.3, 1e-9, asked("deck-cut", "restores", "mm"), "as much as came off", "limit"),
    Check("deck-cut", "heads nearer together, both sides cut, mm", ENGINE, 0.6, 1e-9, asked("deck-cut", "heads", "mm"), "both cuts", "limit"),
    Check("deck-cut", "cut for 0.30 more of ratio, mm", ENGINE, 0.4505, 5e-5, asked("deck-cut", "cut_wanted", "mm"), ROOT, "library"),
    Check("deck-cut", "deck that this leaves, mm", ENGINE, 0.7495, 5e-5, asked("deck-cut", "deck_wanted", "mm"), ROOT, "library"),
]

TRENDS = {
    "deck_then": Trend(rises="deck shim_more", falls="cut"),
    "ratio_then": Trend(rises="cut stroke", falls="shim_more deck chamber"),
    "ratio": Trend(rises="stroke", falls="deck chamber"),
    "tenth": Trend(rises="cut stroke", falls="shim_more deck chamber"),
    "restores": Trend(rises="cut", falls="shim_more"),
    "nearer": Trend(rises="cut", falls="shim_more"),
    "pushrods": Trend(rises="cut", falls="shim_more"),
    "heads": Trend(rises="cut", falls="shim_more"),
    "seat_then": Trend(rises="seat_height", falls="cut"),
    "cut_wanted": Trend(rises="gain"),
    "deck_wanted": Trend(rises="deck", falls="gain"),
    "most_cut": Trend(rises="deck shim_more", falls="deck_low"),
}
