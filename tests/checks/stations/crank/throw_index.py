"""Outside numbers for throws and their angles, asked of the calculator. Those marked library are worked anew in test_throw_index.py."""
from tests.checks import Check, Trend, asked

ARCSINE = "arcsine of height over throw, exact; heights of pins at given angles"
SPACE = "numpy: pins turned in the plane as complex numbers, heights of their tops to a tenth of a micrometre"
AXIS = 120.0
PINS, THROWS, LEVEL = (51.990, 51.988, 51.991, 51.986), (34.50, 34.49, 34.51, 34.50), (146.095, 145.944, 146.0155, 146.133)  # mm
AGAINST_FIRST = (0.0, 0.0830, 0.1993, -0.0664)  # °, against the clock


def heights(rows):
    return dict(heights=" | ".join("; ".join(f"{x:.7f} mm" for x in row) for row in rows))


def standing(level, throws=THROWS, pins=PINS):
    """Heights at top, bottom and level over pins of that throw and diameter, mm."""
    return heights((AXIS + r + d / 2, AXIS - r + d / 2, h) for r, d, h in zip(throws, pins, level))


FOUR = standing(LEVEL) | dict(side="left", beside="4", turns="counter")
ONE = heights([(180.455, 111.461, 145.958)] * 4)
CHECKS = [
    Check("throw-index", "stroke of a pin at 180.455 and 111.461 mm, mm", ONE, 68.994, 1e-9, asked("throw-index", "longest", "mm"), "top less bottom: pin and blocks drop out", "limit"),
    Check("throw-index", "the farthest of four pins against pin 1, °", FOUR, 0.1993, 5e-5, asked("throw-index", "index", "°"), ARCSINE, "limit"),
    Check("throw-index", "longest less shortest of 34.49 to 34.51 mm, mm", FOUR, 0.02, 1e-9, asked("throw-index", "spread", "mm"), ARCSINE, "limit"),
    Check("throw-index", "its axis off its place, pin 3 of 34.51 mm, mm", FOUR, 0.1204276, 1e-6, asked("throw-index", "shift", "mm"), SPACE, "library"),
]

TRENDS = {
    "longest": Trend(rises="heights.1", falls="heights.2"),
    "shortest": Trend(rises="heights.1", falls="heights.2"),
}
