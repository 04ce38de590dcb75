"""Outside numbers for the compression ratio, asked of the calculator. Those marked library are worked anew in test_compression.py."""
from tests.checks import Check, Trend, asked

STACK = "scipy quad over a stack of areas, from the roof down"
CASE = dict(bore="88.0 mm", stroke="69.0 mm", chamber="54.2 cm³", crown_by="filled", lowered="12.7 mm", filled="71.9 cm³", deck="1.1 mm",
            land_height="6.0 mm", land_clearance="0.7 mm")
CHAMBER_ONLY = dict(bore="88.0 mm", stroke="69.0 mm", chamber="56.0 cm³", deck="1.20 mm", dome="0 cm³")
WANTED = CHAMBER_ONLY | dict(aim="wanted", wanted="8.60")
BACK = "definition, put back to 8.600; a deck below zero must be said to be impossible"
FLAT = dict(bore="100 mm", stroke="100 mm", chamber="78.53982 cm³", deck="0 mm", dome="0 cm³")

CHECKS = [
    Check("compression", "crown, filled to 71.9 cm³ at 12.7 mm down, cm³", CASE, 5.343, 0.0006, asked("compression", "crown", "cm³"), STACK, "library"),
    Check("compression", "volume left, cm³", CASE, 55.547, 0.0006, asked("compression", "left", "cm³"), STACK, "library"),
    Check("compression", "ratio", CASE, 8.5551, 0.00006, asked("compression", "ratio", ""), STACK, "library"),
    Check("compression", "ratio with the top land of 87.3 mm, 6.0 mm high", CASE, 8.4773, 0.00006, asked("compression", "ratio_land", ""), STACK, "library"),
    Check("compression", "swept by four, cm³", CASE, 1678.7, 0.06, asked("compression", "displacement", "cm³"), STACK, "library"),
    Check("compression", "volume left, flat crown, cm³", CHAMBER_ONLY, 63.299, 0.0006, asked("compression", "left", "cm³"), "56.0 + π/4·8.8²·0.12", "limit"),
    Check("compression", "chamber for 8.60, cm³", WANTED, 47.921, 0.0006, asked("compression", "chamber_wanted", "cm³"), BACK, "limit"),
    Check("compression", "deck for 8.60, mm", WANTED, -0.12836, 0.000006, asked("compression", "deck_wanted", "mm"), BACK, "limit"),
    Check("compression", "ratio where a tenth of the stroke is left", FLAT, 11.0, 1e-5, asked("compression", "ratio", ""), "1 + 10", "limit"),
    Check("compression", "a step of 120 mm across, 1 mm deep, cm³", FLAT | dict(step_across="120 mm", step_depth="1 mm"), 11.30973, 0.00001, asked("compression", "step_volume", "cm³"), "π/4·12²·0.1", "limit"),
]

TRENDS = {
    "ratio": Trend(rises="bore stroke dome", falls="chamber deck filled step_depth"),
    "left": Trend(rises="chamber deck filled step_depth", falls="dome lowered"),
    "swept": Trend(rises="bore stroke"),
    "displacement": Trend(rises="bore stroke cylinders"),
    "crown": Trend(rises="dome lowered", falls="filled"),
    "deck_volume": Trend(rises="deck"),
    "step_volume": Trend(rises="step_depth"),
    "land": Trend(rises="land_height land_clearance"),
    "ratio_land": Trend(falls="land_height land_clearance chamber deck filled step_depth"),
    "chamber_wanted": Trend(rises="stroke dome", falls="wanted deck filled step_depth"),
    "deck_wanted": Trend(rises="stroke dome", falls="wanted chamber filled step_depth"),
    "shim": Trend(rises="stroke dome", falls="wanted chamber filled step_depth deck"),
}
