"""Outside numbers for bearing clearances, asked of the calculator. Those marked library are worked anew in test_bearing_clearance.py."""
from tests.checks import Check, Trend, asked

CORNERS = "all corners of 65.000–65.019 − 2·(4.968–4.976) − (54.985–55.000), tried in exact rational arithmetic"
LIMITS = dict(main_housing="65.000 mm", bore_most="65.019 mm", main_wall="4.976 mm", wall_least="4.968 mm", main_journal="55.000 mm", journal_least="54.985 mm")
COLD = dict(main_temperature="20 °C", shell_temperature="20 °C", journal_temperature="20 °C")
ROD = dict(read="rod-apart", rod_housing="58.000 mm", rod_wall="1.970 mm", rod_journal="54.000 mm")
CHECKS = [
    Check("bearing-clearance", "least clearance at the limits, mm", LIMITS, 0.048, 1e-9, asked("bearing-clearance", "tight", "mm"), CORNERS, "limit"),
    Check("bearing-clearance", "most clearance at the limits, mm", LIMITS, 0.098, 1e-9, asked("bearing-clearance", "loose", "mm"), CORNERS, "limit"),
    Check("bearing-clearance", "rod bearing, 58.000 − 2·1.970 − 54.000 mm", ROD, 0.060, 1e-9, asked("bearing-clearance", "tight", "mm"), "difference of the sizes", "limit"),
    Check("bearing-clearance", "running at 20 °C, gained over the sizes by what the crush opens the case, mm", COLD, 0.0083967, 1e-5, lambda **x: asked("bearing-clearance", "running", "mm")(**x) - asked("bearing-clearance", "tight", "mm")(**x), "scipy solve_bvp on shell and case as two rings, strains counted on the sizes as they are before", "library"),
]

TRENDS = {
    "tight": Trend(rises="main_housing", falls="main_wall main_journal"),
    "loose": Trend(rises="main_housing bore_most", falls="wall_least journal_least"),
    "running": Trend(rises="main_housing", falls="main_wall main_journal journal_temperature"),
    "running_loose": Trend(rises="bore_most", falls="wall_least journal_least journal_temperature"),
    "opened": Trend(rises="main_proud main_wall", falls="main_wall_round"),
    "fitted": Trend(rises="main_housing main_proud", falls="main_journal main_wall_round"),
    "grip": Trend(rises="main_proud main_wall main_wall_round"),
    "grip_hot": Trend(rises="main_proud main_wall_round shell_temperature", falls="main_temperature"),
    "left_hot": Trend(rises="main_proud shell_temperature", falls="main_temperature"),
    "share": Trend(rises="main_housing", falls="main_wall main_journal"),
}
