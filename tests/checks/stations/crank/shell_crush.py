"""Outside numbers for the crush of shells, asked of the calculator; those of its formulas stand with shell_fit. Those marked library are worked anew in test_shell_crush.py."""
from tests.checks import Check, Trend, asked

BVP = "scipy solve_bvp on u″ + u′/r − u/r² = 0 in shell and housing"
STEEL_EYE = dict(bearing="rod", rod_housing="58.000 mm", rod_wall="1.970 mm", rod_wall_round="11 mm", rod_proud="0.030 mm")
CASE = dict(main_housing="65.000 mm", main_wall="2.500 mm", main_wall_round="22.5 mm", main_proud="0.035 mm", main_shell_metal="forged-steel",
            main_temperature="20 °C", shell_temperature="20 °C")
CHECKS = [
    Check("shell-crush", "interference 2a/π of 0.030 mm, mm", STEEL_EYE, 0.0191, 5e-6, asked("shell-crush", "interference", "mm"), "two excesses of a on the circumference", "limit"),
    Check("shell-crush", "stress in the shell, rigid housing, MPa", STEEL_EYE, -68.162, 1e-3, asked("shell-crush", "rigid", "MPa"), "thin ring: −E·2a/(πD)", "limit"),
    Check("shell-crush", "grip in an eye of the shell's own steel, MPa", STEEL_EYE, 3.905145, 5e-5, asked("shell-crush", "grip", "MPa"), BVP, "library"),
    Check("shell-crush", "grip in a magnesium case, MPa", CASE, 3.036, 1e-3, asked("shell-crush", "grip", "MPa"), "numpy 2.4.6, constants of both rings; finite elements agree within 0.3 %", "library"),
    Check("shell-crush", "stress round the shell there, MPa", CASE, -39.46, 5e-3, asked("shell-crush", "hoop", "MPa"), "numpy 2.4.6, constants of both rings; finite elements agree within 0.3 %", "library"),
    Check("shell-crush", "stress round the case's bore, MPa", CASE, 6.293, 1e-3, asked("shell-crush", "housing_hoop", "MPa"), "numpy 2.4.6, constants of both rings; finite elements agree within 0.3 %", "library"),
    Check("shell-crush", "case opens by, µm", CASE, 10.62, 6e-3, asked("shell-crush", "opened", "µm"), "numpy 2.4.6, constants of both rings; finite elements agree within 0.3 %", "library"),
]

TRENDS = {
    "interference": Trend(rises="main_proud other_proud"),
    "left_hot": Trend(rises="main_proud other_proud shell_temperature", falls="main_temperature"),
    "grip": Trend(rises="main_proud other_proud main_wall main_wall_round"),
    "grip_hot": Trend(rises="main_proud other_proud main_wall_round shell_temperature", falls="main_temperature"),
    "opened": Trend(rises="main_proud other_proud main_wall", falls="main_wall_round"),
    "hoop": Trend(falls="main_proud other_proud main_wall_round"),
    "rigid": Trend(rises="main_housing", falls="main_proud other_proud"),
    "housing_hoop": Trend(rises="main_proud other_proud main_wall", falls="main_wall_round"),
    "shell_used": Trend(rises="main_proud other_proud main_wall_round"),
    "housing_used": Trend(rises="main_proud other_proud", falls="main_wall_round"),
}
