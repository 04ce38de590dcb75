"""Outside numbers for pairing a set, asked of the calculator. Those marked library are worked anew in test_set_pairing.py."""
from tests.checks import Check, asked

FIVE = dict(what="pair", bores="88.012 | 88.004 | 88.016 | 88.008", parts="87.955 | 87.963 | 87.958 | 87.965 | 87.959", low="0.035 mm", high="0.063 mm")
RODS = dict(what="masses", masses="399.6; 160.4 | 400.9; 160.1 | 399.8; 161.9 | 399.5; 160.2 | 400.1; 160.9 | 399.9; 160.0", count="4")
SPRINGS = dict(what="forces", forces="250; 650 | 262; 668 | 248; 646 | 251; 655 | 253; 652", count="4")
ASSIGNED = "scipy linear_sum_assignment, the worst that is allowed lowered until no pairing is left"
TRIED = "numpy, all sets of four"

CHECKS = [
    Check("set-pairing", "five pistons, four bores: least clearance, mm", FIVE, 0.049, 1e-9, asked("set-pairing", "tight", "mm"), ASSIGNED, "library"),
    Check("set-pairing", "most clearance, mm", FIVE, 0.051, 1e-9, asked("set-pairing", "loose", "mm"), ASSIGNED, "library"),
    Check("set-pairing", "four of six rods by both ends, g", RODS, 0.9, 1e-9, asked("set-pairing", "masses", "g"), TRIED, "library"),
    Check("set-pairing", "four of five springs by both loads, N", SPRINGS, 9, 1e-9, asked("set-pairing", "forces", "N"), TRIED, "library"),
    Check("set-pairing", "four alike chambers, cm³", dict(what="volumes", volumes="56 | 56 | 56 | 56 | 57"), 0, 1e-12, asked("set-pairing", "volumes", "cm³"), "alike parts do not differ", "limit"),
]

TRENDS = {}
