"""Outside numbers for a shrunk ring gear, asked of the calculator. Those marked library are worked anew in test_ring_gear_shrink.py."""
from tests.checks import Check, Trend, asked

RINGS = "numpy 2.4.6: ring constants, both spinning; finite elements agree within 0.6 %"
ROOT = "numpy 2.4.6: root of the free growth with an expansion that grows with heat"
OWN = "110; 0.26; 10.5; | 207; 0.29; 11.5;"
FIT = dict(seat="250.00 mm", bore="249.60 mm", root="268 mm", outside="268 mm", width="12 mm", hub="50 mm", speed="6000", clearance="0.25 mm", material="grey-iron", gear_material="forged-steel", own=OWN, low="0.1 mm", high="1 mm", friction="0.12", hottest="260 °C", chamfer="pinion", heated="oven")
CHILLED = FIT | dict(seat="254.00 mm", bore="253.55 mm")


def _of(what, output, expected, tolerance, unit, source=RINGS, entries=FIT):
    return Check("ring-gear-shrink", what, entries, expected, tolerance, asked("ring-gear-shrink", output, unit), source, "library")


CHECKS = [
    _of("grip at rest, seat 250 mm, ring gear 268 mm, 0.4 mm, MPa", "pressure", 20.39, 0.005, "MPa"),
    _of("pull in the ring gear at rest, the same, MPa", "hoop", 293.7, 0.05, "MPa"),
    _of("grip at 6000 1/min, the same, MPa", "pressure_left", 18.16, 0.005, "MPa"),
    _of("torque held at rest, friction 0.12, the same, N·m", "torque_rest", 2882, 0.5, "N·m"),
    # With the mean expansion of 20 to 100 °C kept up to the fitting heat this would be 246.1 °C: steel grows by more per degree as it warms.
    _of("heat for 0.25 mm of clearance, the same, °C", "heat", 234.00, 0.02, "°C", ROOT),
    _of("heat, seat 254 mm, 0.45 mm, flywheel at 20 °C, °C", "heat", 245.77, 0.02, "°C", ROOT, CHILLED),
    _of("heat, the same, flywheel chilled to −60 °C, °C", "heat", 187.73, 0.02, "°C", ROOT, CHILLED | dict(flywheel_temperature="-60 °C")),
]

TRENDS = {
    "heat": Trend(rises="seat clearance flywheel_temperature", falls="bore"),
    "interference": Trend(rises="seat", falls="bore"),
    "pressure": Trend(falls="bore"),
    "hoop": Trend(falls="bore"),
    "lost": Trend(rises="speed outside"),
    "pressure_left": Trend(falls="speed outside"),
    "left": Trend(falls="speed outside"),
    "torque": Trend(rises="friction width", falls="speed outside"),
    "torque_rest": Trend(rises="friction width", falls="bore"),
}
