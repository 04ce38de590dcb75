"""Outside numbers for deck heights, asked of the calculator. Those marked library are worked anew in test_deck_height.py."""
from tests.checks import Check, Trend, asked

ONE = dict(readings="1.18; 1.24", span="70 mm", low="0.5 mm", high="2 mm")
PAIR = dict(readings="0.62; 0.62 | 0.70; 0.70", low="1.00 mm", high="1.60 mm", wanted="1.20 mm", sold="0.25 | 0.50 | 0.75 | 1.00")
GEOMETRY = "mean and difference of both ends; across the pin the piston rocks, 1.02 and 1.41 would give 1.215"
EVERY = "exact rational arithmetic over all sets of up to two shims (itertools)"

CHECKS = [
    Check("deck-height", "deck of 1.18 and 1.24 mm, mm", ONE, 1.21, 1e-9, asked("deck-height", "least", "mm"), GEOMETRY, "limit"),
    Check("deck-height", "tilt along the pin, 70 mm apart, °", ONE, 0.049111, 0.0000006, asked("deck-height", "angle", "°"), GEOMETRY, "limit"),
    Check("deck-height", "tilt over 100 mm of it, mm; 0.094286 over 110", ONE, 0.094286 / 1.1, 0.0000006, asked("deck-height", "slope", "mm"), GEOMETRY, "limit"),
    Check("deck-height", "shims under decks of 0.62 and 0.70 mm, mm", PAIR, 0.50, 1e-9, asked("deck-height", "shims", "mm"), EVERY, "library"),
    Check("deck-height", "lower deck then, mm", PAIR, 1.12, 1e-9, asked("deck-height", "least", "mm"), EVERY, "library"),
    Check("deck-height", "higher deck then, mm", PAIR, 1.20, 1e-9, asked("deck-height", "most", "mm"), EVERY, "library"),
    Check("deck-height", "spread left, mm", PAIR, 0.08, 1e-9, asked("deck-height", "spread", "mm"), EVERY, "library"),
]

TRENDS = {
    "slope": Trend(falls="span"),
    "angle": Trend(falls="span"),
}
