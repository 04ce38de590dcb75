"""Outside numbers for valve springs, asked of the calculator. What is marked library is worked anew in tests/formulas/test_spring.py,
but for springcalc's."""
from math import pi

from tests.checks import Check, Trend, asked

HAND = "G·d⁴/(8·D³·n) and Wahl's stress by hand"
CHAIN = "scipy eigh_tridiagonal: 4000 masses between springs, held at both ends"
SPRINGCALC = "springcalc 0.1.24, CompressionSpring"


def sizes(wire, mean, active, total, modulus, free, fitted, lift):
    return dict(method="sizes", wire=f"{wire} mm", mean_diameter=f"{mean} mm", active_turns=f"{active}", total_turns=f"{total}", modulus=f"{modulus} GPa",
                free_length=f"{free!r} mm", fitted_height=f"{fitted} mm", lift=f"{lift} mm", height_1="36 mm", height_2="30 mm")


FOUR = sizes(4, 27, 5, 7, 79.3, 50, 40, 9)
THIN = sizes(3.6, 22.4, 4.5, 6.5, 78.5, 46, 36, 8.5) | dict(height_1="35 mm")
LIBRARY = sizes(4, 27, 5.5, 7, 79.5, 50, 40, 9)
SIX_HUNDRED = sizes(4.2, 26.2, 5.5, 7.5, 79.3, 31 + 600 / (79300 * 4.2 ** 4 / (8 * 26.2 ** 3 * 5.5)), 40.0, 9.0) | dict(height_2="32 mm")
# The same spring of 4 mm wire as a tester reads it, to a hundredth of a newton.
READ = FOUR | dict(method="loads", loads="257.85; 489.91", height_1="40 mm", height_2="31 mm")
COLUMNS = (("rate", "rate, N/mm", "N/mm", 0.0005), ("seat_load", "seat load, N", "N", 0.005), ("open_load", "load at full lift, N", "N", 0.005),
           ("stress", "shear stress at full lift, MPa", "MPa", 0.005), ("solid_length", "length with all coils together, mm", "mm", 1e-9), ("bind_margin", "room to coil bind, mm", "mm", 1e-9))
BY_HAND = {"4 mm wire": (FOUR, (25.785, 257.85, 489.91, 642.91, 28.0, 3.0)), "3.6 mm wire": (THIN, (32.586, 325.86, 602.84, 915.73, 23.4, 4.1))}

CHECKS = [
    *(Check("valve-spring", what, entries, value, tolerance, asked("valve-spring", output, unit), HAND, "limit")
      for entries, values in BY_HAND.values() for value, (output, what, unit, tolerance) in zip(values, COLUMNS, strict=True)),
    Check("valve-spring", "length with all 7 coils together, ends not ground, mm", FOUR | dict(ends="wound"), 34.0, 1e-9, asked("valve-spring", "solid_length", "mm"),
          "EN 13906-1, (n_t + 1.5)·d of cold wound springs, from memory", "standard"),
    Check("valve-spring", "natural frequency, Hz", FOUR, 392.53, 0.005, asked("valve-spring", "frequency", "Hz"), CHAIN, "library"),
    Check("valve-spring", "natural frequency, Hz", THIN, 567.41, 0.005, asked("valve-spring", "frequency", "Hz"), CHAIN, "library"),
    Check("valve-spring", "rate, N/mm", LIBRARY, 23.5, 0.05, asked("valve-spring", "rate", "N/mm"), SPRINGCALC, "library"),
    Check("valve-spring", "load at full lift, N", LIBRARY, 446.5, 0.05, asked("valve-spring", "open_load", "N"), SPRINGCALC, "library"),
    Check("valve-spring", "shear stress at full lift, MPa", LIBRARY, 585.93, 0.02, asked("valve-spring", "stress", "MPa"), SPRINGCALC + " (π taken as 3.1416)", "library"),
    Check("valve-spring", "rate, N/mm", SIX_HUNDRED, 31.183, 0.0005, asked("valve-spring", "rate", "N/mm"), HAND, "limit"),
    Check("valve-spring", "shear stress at 600 N, MPa", SIX_HUNDRED, 670.94, 0.005, asked("valve-spring", "stress", "MPa"), HAND, "limit"),
    Check("valve-spring", "rate of two loads, N/mm", READ, 25.784, 0.001, asked("valve-spring", "rate", "N/mm"), "the spring that has these loads, by hand", "limit"),
    Check("valve-spring", "free length of two loads, mm", READ, 50.0, 0.001, asked("valve-spring", "free_length", "mm"), "the spring that has these loads, by hand", "limit"),
    Check("valve-spring", "engine speed whose 13th cam harmonic is at 392.53 Hz, 1/min", FOUR, 392.53 * 60 * 2 / 13, 0.05, asked("valve-spring", "surge_speed", "1/min"),
          "13 waves in a turn of the camshaft, which takes two of the engine", "limit"),
    Check("valve-spring", "shear stress of a straight bar twisted by 600 N at half of 26.2 mm, MPa", SIX_HUNDRED, 16 * 600 * 13.1 / (pi * 4.2 ** 3) * 1.2418, 0.03,
          asked("valve-spring", "stress", "MPa"), "torsion of a round bar 16T/(πd³), times Wahl's factor 1.2418 by hand", "limit"),
]

TRENDS = {
    "seat_load": Trend(
        rises="shim wire free_length modulus",
        falls="fitted_height mean_diameter active_turns",
    ),
    "open_load": Trend(
        rises="shim lift wire free_length modulus",
        falls="fitted_height mean_diameter active_turns",
    ),
    "bind_margin": Trend(rises="fitted_height", falls="shim lift wire total_turns"),
    "rate_by_sizes": Trend(rises="wire modulus", falls="mean_diameter active_turns"),
    "solid_length": Trend(rises="wire total_turns"),
    "stress": Trend(rises="shim lift", falls="fitted_height"),
    "stress_solid": Trend(falls="total_turns"),
    "endurance": Trend(rises="shim lift", falls="fitted_height"),
    "frequency": Trend(rises="modulus", falls="mean_diameter active_turns"),
    "order": Trend(rises="modulus", falls="mean_diameter active_turns top_speed"),
    "surge_speed": Trend(rises="modulus", falls="mean_diameter active_turns least_order"),
    "shim_wanted": Trend(rises="wanted_seat"),
    "shim_most": Trend(rises="fitted_height", falls="shim lift wire total_turns least_margin"),
}
