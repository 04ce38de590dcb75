"""Outside numbers for a spinning flywheel of stepped section, asked of the calculator. Those marked library are worked anew in test_spin_stress.py."""
from tests.checks import Check, Trend, asked

MATCHED = "numpy 2.4.6: ring constants matched at the steps; quadratic finite elements agree within 0.4 %"
BALANCE = "balance of half a disc, numpy 2.4.6"
OWN = dict(looked="sound", density="7150 kg/m³", material="grey-iron", circle="", maker="9000 1/min")
FIRST = OWN | dict(section="40; 120; 30 | 120; 210; 10 | 210; 280; 28", speed="6000 1/min", strength="220 MPa")
SECOND = OWN | dict(section="60; 220; 14 | 220; 280; 30", speed="6500 1/min", strength="250 MPa")
FLAT = OWN | dict(section="60; 280; 20", speed="6000 1/min", strength="250 MPa")


def _of(entries, what, output, expected, tolerance, unit, source, kind="library"):
    return Check("spin-stress", what, entries, expected, tolerance, asked("spin-stress", output, unit), source, kind)


ONE, TWO = "radius 20–60 × 30, 60–105 × 10, 105–140 × 28 mm, 6000 1/min", "radius 30–110 × 14, 110–140 × 30 mm, 6500 1/min"
CHECKS = [
    _of(FIRST, f"hoop at the bore, {ONE}, MPa", "bore", 36.177, 5e-4, "MPa", MATCHED),
    _of(FIRST, "hoop at the rim, the same, MPa", "rim", 13.936, 5e-4, "MPa", MATCHED),
    _of(FIRST, "greatest hoop, the same, MPa", "peak", 36.177, 5e-4, "MPa", MATCHED),
    _of(FIRST, "mean hoop, the same, MPa", "mean", 21.492, 5e-4, "MPa", BALANCE),
    _of(FIRST, "bursts at, the same, 1/min", "burst", 19197, 0.5, "1/min", BALANCE),
    _of(FIRST, "outside grows on its diameter, the same, µm", "growth", 35.474, 1e-3, "µm", MATCHED),
    _of(SECOND, f"hoop at the bore, {TWO}, MPa", "bore", 69.651, 5e-4, "MPa", MATCHED),
    _of(SECOND, "hoop at the rim, the same, MPa", "rim", 19.293, 5e-4, "MPa", MATCHED),
    _of(SECOND, "mean hoop, the same, MPa", "mean", 33.153, 5e-4, "MPa", BALANCE),
    _of(SECOND, "bursts at, the same, 1/min", "burst", 17849, 0.5, "1/min", BALANCE),
    _of(SECOND, "outside grows on its diameter, the same, µm", "growth", 49.110, 1e-3, "µm", MATCHED),
    _of(FLAT, "mean hoop, flat, radius 30 to 140 mm, 6000 1/min, MPa", "mean", 23.24, 0.005, "MPa", "scipy 1.17.1: quad of the hoop stress of a flat disc"),
    _of(FLAT, "bursts at, the same, 1/min", "burst", 19679, 0.5, "1/min", "scipy 1.17.1: quad of the hoop stress of a flat disc"),
    _of(FLAT, "ring by ring as in closed form, hoop at the bore, MPa", "bore", 45.560, 5e-4, "MPa", "Timoshenko's flat disc; scipy 1.17.1 solve_bvp", "handbook"),
]

TRENDS = {
    "peak": Trend(rises="speed density"),
    "hole": Trend(rises="speed density"),
    "bore": Trend(rises="speed density"),
    "rim": Trend(rises="density"),
    "mean": Trend(rises="speed density"),
    "factor": Trend(rises="strength", falls="speed density"),
    "burst": Trend(rises="strength", falls="density"),
    "margin": Trend(rises="strength", falls="speed density"),
    "flat": Trend(rises="speed density"),
    "growth": Trend(rises="density"),
}
