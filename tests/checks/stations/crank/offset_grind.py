"""Outside numbers for a longer stroke, asked of the calculator. Those marked library are worked anew in test_offset_grind.py."""
from tests.checks import Check, Trend, asked

BRENTQ = "scipy brentq on the distance of the new circle to the old profile, 7200 points"
VECTORS = "numpy: vector sum of throw and offset, hypot and atan2"
SLIDER = "numpy: the crown's height over a turn, exact slider and crank, largest and smallest"
OLD = dict(pin="55.000 mm", along="55.000 mm", new_pin="50.000 mm", throw="34.500 mm", main="55.000 mm", stroke="73.8 mm", clean_up="0.10 mm")
WORN = OLD | dict(along="54.950 mm")
TURNED = OLD | dict(stroke="71.993 mm", off_plane="4°")
CHECKS = [
    Check("offset-grind", "most off the old axis, 55 to 50 mm, 0.10 mm a side to clean up, mm", OLD, 2.4, 1e-9, asked("offset-grind", "largest_offset", "mm"), BRENTQ, "library"),
    Check("offset-grind", "largest stroke, the same, mm", OLD, 73.8, 1e-9, asked("offset-grind", "largest", "mm"), BRENTQ, "library"),
    Check("offset-grind", "stock on the inner side, the same, mm", OLD, 4.9, 1e-9, asked("offset-grind", "inner_stock", "mm"), BRENTQ, "library"),
    Check("offset-grind", "overlap as it is, mm", OLD, 20.5, 1e-9, asked("offset-grind", "overlap", "mm"), "half the sum of both journals less the throw", "limit"),
    Check("offset-grind", "overlap then, mm", OLD, 15.6, 1e-9, asked("offset-grind", "overlap_then", "mm"), "half the sum of both journals less the throw", "limit"),
    Check("offset-grind", "the crown rises by, mm", OLD, 2.4, 1e-9, asked("offset-grind", "shim", "mm"), SLIDER, "library"),
    Check("offset-grind", "most off the old axis, worn 0.050 mm on the outer side, mm", WORN, 2.35, 1e-9, asked("offset-grind", "largest_offset", "mm"), BRENTQ, "library"),
    Check("offset-grind", "offset for a throw of 35.9965 mm, 4° off its plane, mm", TURNED, 1.500, 5e-5, asked("offset-grind", "offset", "mm"), VECTORS, "library"),
    Check("offset-grind", "out of its angle by, °", TURNED, 0.166548, 5e-6, asked("offset-grind", "index", "°"), VECTORS, "library"),
    Check("offset-grind", "compression of 88 × 69 mm, 56 cm³ and 1.20 mm of deck", dict(bore="88 mm", throw="34.5 mm", deck="1.2 mm", chamber="56 cm³"), 7.62995, 5e-6, asked("offset-grind", "ratio"), "419.6665 cm³ swept over 56 + 7.29855 cm³, and one, by hand", "limit"),
]

TRENDS = {
    "gain": Trend(rises="stroke", falls="throw"),
    "largest": Trend(rises="along", falls="new_pin clean_up"),
    "largest_offset": Trend(rises="along", falls="new_pin clean_up pin"),
    "offset": Trend(rises="stroke"),
    "inner_stock": Trend(rises="pin stroke", falls="new_pin"),
    "outer_stock": Trend(rises="pin", falls="new_pin stroke"),
    "overlap": Trend(rises="main pin", falls="throw"),
    "overlap_then": Trend(rises="main new_pin", falls="stroke"),
    "deck_then": Trend(rises="deck throw", falls="stroke"),
    "shim": Trend(rises="stroke", falls="throw"),
    "ratio": Trend(rises="throw", falls="chamber"),
    "ratio_then": Trend(rises="stroke", falls="chamber deck"),
}
