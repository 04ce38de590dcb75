"""Limits of tolerance classes that stand in tables elsewhere, row by row. Whole tables are compared in test_iso_286.py."""
from calc.reference.standards.iso_286 import standard_tolerance, zone
from tests.checks import Check

PRESSFIT = "pressfit 0.1.0 (PyPI), tables entered by hand from two published ones"
ISOFITS = "isofits 1.0 (PyPI), table of limits by class and band"
STANDARD = "ISO 286-2:2010, tables of limit deviations, from memory"
PARALLEL_KEYS = "ISO/R 773 keyways: N9 of 8 mm in the shaft is 0/−36 µm, P9 −15/−51 µm, from memory"


def upper_um(class_, size_mm):
    return zone(class_, size_mm / 1000).upper * 1e6


def lower_um(class_, size_mm):
    return zone(class_, size_mm / 1000).lower * 1e6


def _rows(source, kind, *rows):
    for size, class_, upper, lower in rows:
        for what, expected, got in (("upper", upper, upper_um), ("lower", lower, lower_um)):
            yield Check("ISO 286", f"{what} deviation of {class_}, µm", {"size_mm": size}, expected, 0.001,
                        lambda size_mm, got=got, class_=class_: got(class_, size_mm), source, kind)


CHECKS = [
    *_rows(PRESSFIT, "library", (25, "H7", 21, 0), (25, "g6", -7, -20), (25, "k6", 15, 2), (25, "n6", 28, 15), (25, "p6", 35, 22), (50, "H7", 25, 0),
           (50, "p6", 42, 26), (50, "s6", 59, 43), (60, "H6", 19, 0), (60, "g5", -10, -23), (60, "s6", 72, 53), (40, "H8", 39, 0), (40, "f7", -25, -50),
           (85, "p6", 59, 37), (32, "g5", -9, -20), (14, "u6", 44, 33)),
    *_rows(ISOFITS, "library", (25, "K7", 6, -15), (25, "N7", -7, -28), (25, "P7", -14, -35), (100, "P7", -24, -59), (40, "N7", -8, -33),
           (25, "R7", -20, -41), (300, "M6", -9, -41), (40, "J7", 14, -11), (40, "j6", 11, -5), (40, "P8", -26, -65)),
    *_rows(STANDARD, "standard", (50, "K7", 7, -18), (50, "S7", -34, -59), (45, "t6", 70, 54), (28, "t6", 54, 41), (45, "T7", -45, -70), (25, "U7", -40, -61)),
    *_rows(PARALLEL_KEYS, "standard", (8, "N9", 0, -36), (8, "P9", -15, -51)),
    Check("ISO 286", "IT4, µm", {"grade": 4, "size_mm": 25}, 6, 0.001, lambda grade, size_mm: standard_tolerance(grade, size_mm / 1000) * 1e6, STANDARD, "standard"),
    Check("ISO 286", "IT11, µm", {"grade": 11, "size_mm": 500}, 400, 0.001, lambda grade, size_mm: standard_tolerance(grade, size_mm / 1000) * 1e6, STANDARD, "standard"),
]
