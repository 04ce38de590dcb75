"""Outside numbers for threads in sheet, asked of the calculator."""
from math import pi

from tests.checks import Check, Trend, asked

CFS = "published tables of #10 screws in 33 ksi / 45 ksi studs by AISI S100: allowable pull-out {} lbf at Ω = 3, from memory (ST4.8 is 0.5 % under #10)"


def screw(thickness):
    return dict(way="screw", thread="ST4.8", thickness=thickness, tensile="45 ksi")


COLLAR = dict(way="collar", thickness="1 mm", thread="M5x0.8", height="1")

CHECKS = [
    Check("sheet-insert", "pull-out of a #10 screw in 0.0451 in sheet, lbf", screw("0.0451 in"), 3 * 109, 3, asked("sheet-insert", "pull", "lbf"), CFS.format(109), "handbook"),
    Check("sheet-insert", "pull-out of a #10 screw in 0.0566 in sheet, lbf", screw("0.0566 in"), 3 * 137, 3, asked("sheet-insert", "pull", "lbf"), CFS.format(137), "handbook"),
    Check("sheet-insert", "pilot hole of a collar no taller than the sheet, mm", COLLAR, 4.134, 5e-4, asked("sheet-insert", "hole", "mm"), "nothing is drawn up: it is the thread's bore, ISO 724", "limit"),
    Check("sheet-insert", "shear of 1 mm of steel round 7 mm, N", dict(tensile="300 MPa"), pi * 7 * 1 * 180, 0.01, asked("sheet-insert", "pull", "N"), "π·D·t·τ by hand", "limit"),
]

TRENDS = {
    "pull": Trend(rises="thickness height tensile"),
    "turn": Trend(rises="thickness height tensile"),
    "edge_least": Trend(rises="thickness"),
    "across": Trend(rises="thickness"),
    "turns": Trend(rises="thickness height"),
    "pull_share": Trend(rises="thickness height tensile", falls="pull"),
    "turn_share": Trend(rises="thickness height tensile", falls="torque"),
}
