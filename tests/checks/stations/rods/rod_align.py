"""Outside numbers for bend and twist, asked of the calculator. Those marked library are worked anew in test_rod_align.py."""
from tests.checks import Check, Trend, asked

VECTORS = "numpy: angle of two vectors along the bores, from their cross and dot product"
SLOPES = {(0.02, 0.04, 150): 0.0170823, (0.5, 0.0, 100): 0.2864765, (1.5, -2.0, 120): 1.1934894}  # bend, twist over the span, span in mm -> degrees between the bores


def read(bend, twist, span):
    return dict(bend_left="0", bend_right=f"{bend} mm", twist_left="0", twist_right=f"{twist} mm", span=f"{span} mm")


TURNED = dict(bend_left="0.10 mm", bend_right="0.16 mm", bend_turned="0.02 mm", span="100 mm")
CHECKS = [
    *(Check("rod-align", "angle between the bores, °", read(*slopes), value, 1e-6, asked("rod-align", "skew", "°"), VECTORS, "library") for slopes, value in SLOPES.items()),
    Check("rod-align", "bend over 100 mm, of 0.06 mm over 200 mm, mm", read(0.06, 0, 200), 0.03, 1e-9, asked("rod-align", "bend", "mm"), "half the span, half the reading", "limit"),
    Check("rod-align", "bend where the rod reads 0.06 mm, turned 0.02 mm, mm", TURNED, 0.02, 1e-9, asked("rod-align", "bend", "mm"), "rod + gauge = 0.06, gauge − rod = 0.02", "limit"),
    Check("rod-align", "the gauge's own, the same, mm", TURNED, 0.04, 1e-9, asked("rod-align", "gauge_bend", "mm"), "rod + gauge = 0.06, gauge − rod = 0.02", "limit"),
]

TRENDS = {
    "bend": Trend(falls="span"),
    "twist": Trend(falls="span"),
    "bend_angle": Trend(falls="span"),
    "twist_angle": Trend(falls="span"),
    "skew": Trend(falls="span"),
    "lean": Trend(rises="piston_height", falls="span"),
    "gauge_bend": Trend(rises="bend_right bend_turned", falls="bend_left"),
    "gauge_twist": Trend(rises="twist_right twist_turned", falls="twist_left"),
}
