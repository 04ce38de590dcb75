"""Outside numbers for stem heights, asked of the calculator. Those marked library are worked anew in test_stem_height.py."""
from tests.checks import Check, Trend, asked

SOLVER = "scipy milp: least sunk, then least off the tips, all stems within limits and spread"
SETS = {  # heights in mm -> most off a tip, most to sink a seat, in mm
    "one high": ((45.50, 45.00, 45.10, 45.00, 44.95, 45.00, 45.00, 45.00), 0.30, 0.0),
    "one low": ((44.70, 45.00, 45.00, 45.00, 45.00, 45.00, 45.00, 45.00), 0.0, 0.10),
    "uneven within limits": ((44.85, 45.15, 45.15, 45.00, 45.15, 45.15, 45.00, 45.00), 0.05, 0.0),
    "high and low": ((45.38, 44.74, 45.02, 45.05, 44.98, 45.01, 45.00, 45.03), 0.33, 0.06),
}


def heights(*mm):
    return dict(heights=" | ".join(f"{h} mm" for h in mm))


SUNK = dict(low="20 mm", high="70 mm", most_spread="5 mm", heights="45.40 mm | 45.00 mm | 45.00 mm")
CHECKS = [
    *(Check("stem-height", f"most {words}, mm", heights(*mm), value, 1e-6, asked("stem-height", output, "mm"), SOLVER, "library")
      for mm, tip, sink in SETS.values() for words, output, value in (("off a tip", "tip", tip), ("to sink a seat", "sink", sink))),
    Check("stem-height", "tallest fitted height where a seat is sunk by 0.4 mm, mm", SUNK, 36.9, 1e-9, asked("stem-height", "fitted_most", "mm"), "36.5 + 0.4", "limit"),
    Check("stem-height", "shim that keeps the spring as it was, mm", SUNK, 0.4, 1e-9, asked("stem-height", "shim", "mm"), "as thick as the seat was sunk", "limit"),
]

TRENDS = {
    "highest": Trend(rises="heights.1", falls="wanted exhaust_higher"),
    "lowest": Trend(rises="heights.1", falls="wanted exhaust_higher"),
    "fitted_most": Trend(falls="tip_to_retainer"),
    "shim": Trend(falls="tip_to_retainer fitted_height fitted_off"),
}
