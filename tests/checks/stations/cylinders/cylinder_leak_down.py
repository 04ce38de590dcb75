"""Outside numbers for the leak-down test, asked of the calculator. Those marked library are worked anew in test_cylinder_leak_down.py."""
from math import pi, sqrt

from tests.checks import Check, Trend, asked

MACH = "isentropic flow by its Mach number, m = p₀·A·M·√(κ/RT)·(1 + (κ−1)/2·M²)^(−(κ+1)/(2(κ−1))); steady state by scipy brentq"
OWN = dict(supply="550 kPa", left="515 kPa", orifice="1.00 mm")
OTHER = dict(supply="700 kPa", left="560 kPa", orifice="1.50 mm")
LOW = dict(supply="200 kPa", left="60 kPa", orifice="1.20 mm")
CHOKED = dict(supply="550 kPa", left="100 kPa", orifice="1.00 mm", discharge="1")
# both holes choked: areas as the pressures, and the closed form of the flow, as volume at 0 °C
BOTH = sqrt((550 + 101.3) / (100 + 101.3))
CLOSED = pi / 4 * 1e-6 * 651.3e3 * sqrt(1.4 / (287.055 * 293.15)) * 1.2 ** -3 * 287.055 * 273.15 / 101325 * 60e3

CHECKS = [
    Check("cylinder-leak-down", "hole behind 1.00 mm, 550 kPa before it and 515 behind, mm", OWN, 0.7008503, 5e-7, asked("cylinder-leak-down", "hole", "mm"), MACH, "library"),
    Check("cylinder-leak-down", "its flow as air at 0 °C, L/min", OWN, 22.14855, 5e-5, asked("cylinder-leak-down", "flow", "L/min"), MACH, "library"),
    Check("cylinder-leak-down", "hole that leaves 410 of 550 kPa, mm", OWN, 1.0345234, 5e-7, asked("cylinder-leak-down", "hole_worn", "mm"), MACH, "library"),
    Check("cylinder-leak-down", "what the sheet's tester leaves, where 700 kPa through 1.50 mm leave 560, kPa", OTHER, 205.61904, 5e-5, asked("cylinder-leak-down", "standard", "kPa"), MACH, "library"),
    Check("cylinder-leak-down", "hole behind 1.20 mm at low pressure, neither choked, mm", LOW, 1.6585339, 5e-7, asked("cylinder-leak-down", "hole", "mm"), MACH, "library"),
    Check("cylinder-leak-down", "its flow, L/min", LOW, 31.740706, 5e-5, asked("cylinder-leak-down", "flow", "L/min"), MACH, "library"),
    Check("cylinder-leak-down", "hole where both are choked, mm", CHOKED, BOTH, 1e-9, asked("cylinder-leak-down", "hole", "mm"), "both choked: areas are as the absolute pressures, √(651.3/201.3)", "limit"),
    Check("cylinder-leak-down", "its flow, L/min", CHOKED, CLOSED, 1e-6, asked("cylinder-leak-down", "flow", "L/min"), "choked closed form A·p₀·√(κ/RT)·1.2⁻³, (2/(κ+1))^((κ+1)/(2(κ−1))) for κ = 1.4", "limit"),
    Check("cylinder-leak-down", "force on a piston of 88 mm, N", OWN | dict(bore="88 mm"), 3132.2935, 5e-4, asked("cylinder-leak-down", "force", "N"), "515 kPa × π/4·88²", "limit"),
    Check("cylinder-leak-down", "turning of the crank 10° off the top, N·m", OWN | dict(bore="88 mm", stroke="69 mm", rod="137 mm"), 23.423331, 5e-6, asked("cylinder-leak-down", "torque", "N·m"),
          "numpy: force × slope of the piston's way over the crank's angle", "library"),
]

TRENDS = {
    "standard": Trend(rises="left", falls="supply orifice"),
    "hole": Trend(rises="supply orifice", falls="left"),
    "flow": Trend(rises="supply orifice discharge", falls="left"),
    "loss": Trend(rises="supply", falls="left"),
    "hole_worn": Trend(rises="sheet_supply sheet_orifice", falls="worn"),
    "choking": Trend(rises="room", falls="left"),
    "force": Trend(rises="left bore"),
    "torque": Trend(rises="left bore stroke", falls="rod"),
}
