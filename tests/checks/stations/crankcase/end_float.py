"""Outside numbers for a crank's end float. Those marked limit are counted anew in test_end_float.py by exact fractions."""
from calc.stations.crankcase.end_float.warm import change
from tests.checks import Check, Trend, asked

FRACTIONS = "exact fractions over all 120 sets (itertools)"
SOLD = dict(float_read="0.46 mm", trial="0.24; 0.24", stock="sold", shims="0.24; 0.26; 0.28; 0.30; 0.32; 0.34; 0.36; 0.38", low="0.07 mm", high="0.13 mm")
FREE = "free expansion: the float is the shoulders' distance less the bearing's width"


def warm_mm(width_mm: float, crank: float, body: float, warming: float) -> float:
    """`crank` and `body` expand by so many 10⁻⁶/K."""
    return change(width_mm, crank * 1e-6 * warming, body * 1e-6 * warming)


CHECKS = [
    Check("end-float", "shims wanted in all, mm", SOLD, 0.84, 1e-9, asked("end-float", "in_all", "mm"), FRACTIONS, "limit"),
    Check("end-float", "float with the best three, mm", SOLD, 0.10, 1e-9, asked("end-float", "float_then", "mm"), FRACTIONS, "limit"),
    Check("end-float", "thickest of the three that keeps both trial shims, mm", SOLD, 0.36, 1e-9, asked("end-float", "third", "mm"), FRACTIONS, "limit"),
    Check("end-float", "sets of three within the limits", SOLD, 20, 0.5, asked("end-float", "sets"), FRACTIONS, "limit"),
    Check("end-float", "sets of three within the limits, the eight once each in a drawer", SOLD | dict(stock="drawer"), 9, 0.5, asked("end-float", "sets"), "exact fractions over all 56 sets (itertools)", "limit"),
    Check("end-float", "change warm, steel in steel, mm", dict(width_mm=22.0, crank=11.5, body=11.5, warming=80), 0.0, 1e-12, warm_mm, FREE, "limit"),
    Check("end-float", "change warm, magnesium saddle of 22 mm by 80 K, mm", dict(width_mm=22.0, crank=11.5, body=26.0, warming=80), -0.02552, 1e-9, warm_mm, FREE, "limit"),
    Check("end-float", "change warm where nothing gets warm, mm", dict(case_temperature="20 °C", crank_temperature="20 °C"), 0.0, 1e-12, asked("end-float", "change", "mm"), FREE, "limit"),
]

TRENDS = {
    "in_all": Trend(rises="float_read trial", falls="low high"),
    "least": Trend(rises="float_read trial", falls="shims"),
    "most": Trend(rises="float_read trial", falls="shims"),
    "change": Trend(rises="crank_temperature", falls="case_temperature"),
}
