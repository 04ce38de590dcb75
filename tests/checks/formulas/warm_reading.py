"""Sizes read warm. ISO 1 fixes 20 °C; what a size is there follows from L₂₀·(1 + α_p·θ_p) = reading·(1 + α_g·θ_g), solved anew with
sympy in test_warm_reading.py."""
from calc.formulas import warm_reading
from tests.checks import Check


def at_20(reading_mm, part, gauge, part_C, gauge_C):
    return warm_reading.at_reference(reading_mm, part * 1e-6, gauge * 1e-6, part_C, gauge_C, 20.0)


SOLVED = "equal lengths of part and gauge at the reading, solved with sympy in exact numbers"
CASES = [  # reading mm, α in 10⁻⁶/K of part and gauge, °C of part and gauge, size at 20 °C
    (85.512, 21.5, 0.0, 31.0, 20.0, 85.491781),
    (54.991, 11.5, 0.0, 27.5, 20.0, 54.986257),
    (90.0, 21.5, 11.5, 30.0, 30.0, 89.991002),
    (37.5, 21.5, 11.5, 5.0, 5.0, 37.505627),
]
NAMES = ("reading_mm", "part", "gauge", "part_C", "gauge_C")

CHECKS = [
    *(Check("Warm reading", f"size at 20 °C of a part at {case[3]:g} °C, mm", dict(zip(NAMES, case)), case[-1], 5e-7, at_20, SOLVED, "library") for case in CASES),
    Check("Warm reading", "part and gauge of one metal and one warmth, mm", dict(zip(NAMES, (100.0, 11.5, 11.5, 33.0, 33.0))), 100.0, 1e-12, at_20, "no correction is needed", "limit"),
    Check("Warm reading", "50 mm of aluminium at 35 °C read with steel at 20 °C, mm too large", dict(zip(NAMES, (50.0, 21.5, 11.5, 35.0, 20.0))), 0.016, 0.0005,
          lambda **case: case["reading_mm"] - at_20(**case), "handbook rule of 0.0022 mm per 100 mm and kelvin for aluminium, from memory", "handbook"),
]
