"""Outside numbers for larger cylinder holes, asked of the calculator. Those marked library are worked anew in test_spigot_bore.py."""
from tests.checks import Check, Trend, asked

POINTS = "numpy: least distance of 200 001 points of the bore to the stud hole"
CORNERS = "corners by enumeration, free expansion: magnesium 26·10⁻⁶ at 100 °C, iron 11·10⁻⁶ at 120 °C"
STUDS = dict(register_small="96.9 mm", register_large="96.9 mm", bored_small="97.0 mm", bored_large="97.0 mm", stud_along="91 mm", stud_up="88 mm", stud_hole="10.5 mm")
# mean expansions of exactly 26 and 11·10⁻⁶/K at these temperatures: the grades' own change with heat
FIT = {
    "register_small": "93.946 mm", "register_large": "94.000 mm", "bored_small": "94.100 mm", "bored_large": "94.135 mm",
    "case_material": "mg-az91", "foot_material": "grey-iron", "case_temperature": "100 °C", "foot_temperature": "120 °C", "own.2.3": "10.87155 µm/(m·K)",
}

CHECKS = [
    Check("spigot-bore", "wall to the stud hole, 97.0 mm bore, holes of 10.5 at ±45.5 and ±44.0 mm, mm", STUDS, 9.54494, 5e-6, asked("spigot-bore", "wall", "mm"), POINTS, "library"),
    Check("spigot-bore", "largest bore that leaves 4.0 mm, mm", STUDS | dict(wall_least="4 mm", wall_good="4 mm"), 108.09, 5e-3, asked("spigot-bore", "largest", "mm"), POINTS, "library"),
    Check("spigot-bore", "clearance cold, least, mm", FIT, 0.100, 1e-9, asked("spigot-bore", "cold_least", "mm"), CORNERS, "limit"),
    Check("spigot-bore", "clearance cold, most, mm", FIT, 0.189, 1e-9, asked("spigot-bore", "cold_most", "mm"), CORNERS, "limit"),
    Check("spigot-bore", "clearance running, least, mm", FIT, 0.1923, 5e-5, asked("spigot-bore", "hot_least", "mm"), CORNERS, "library"),
    Check("spigot-bore", "clearance running, most, mm", FIT, 0.2815, 5e-5, asked("spigot-bore", "hot_most", "mm"), CORNERS, "library"),
]

TRENDS = {
    "bore_least": Trend(rises="register_large clearance_low"),
    "bore_most": Trend(rises="register_small clearance_high"),
    "wall": Trend(rises="stud_along stud_up stud_circle", falls="stud_hole"),
    "land": Trend(rises="spacing"),
    "largest": Trend(rises="stud_along stud_up stud_circle", falls="stud_hole wall_least"),
    "largest_land": Trend(rises="spacing", falls="land_least"),
    "stock": Trend(falls="old_bore"),
    "cold_least": Trend(rises="clearance_low"),
    "cold_most": Trend(rises="clearance_high"),
    "hot_least": Trend(rises="case_temperature clearance_low", falls="foot_temperature"),
    "hot_most": Trend(rises="case_temperature clearance_high", falls="foot_temperature"),
    "warm_least": Trend(rises="case_warming clearance_low", falls="foot_temperature"),
}
