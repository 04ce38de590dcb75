"""Outside numbers for small-end bushes, asked of the calculator. Those marked library are worked anew in test_small_end_bush.py."""
from tests.checks import Check, Trend, asked

BVP = "scipy solve_bvp on u″ + u′/r − u/r² = 0 in bush and rod, with free thermal strain, and the stiffness and growth that the materials' table gives"
SMOOTH = dict(bush_roughness="0 µm", bore_roughness="0 µm")
CASES = {  # rod bore, bush outside, bore as supplied, bore as honed, pin, wall of the eye: mm; bush; eye and pin running, °C
    "bronze": (26.0, 26.025, 21.85, 22.011, 21.998, 4.0, "bronze", 130, 140),
    "thin eye, hot": (24.0, 24.030, 19.8, 20.015, 19.998, 2.5, "aluminium-bronze", 160, 145),
}
COLUMNS = (("pressure", "contact pressure, cold, MPa", "MPa", 0.0005), ("closing", "bore closes when pressed in by, mm", "mm", 5e-7), ("clearance_hot", "pin clearance, running, mm", "mm", 5e-7))
FOUND = {
    "bronze": (13.8248, 0.0186966, 0.0114008),
    "thin eye, hot": (18.2923, 0.0189009, 0.0234031),
}


def bush(rod_bore, outside, supplied, honed, pin, wall, material, eye, pin_hot):
    return dict(rod_bore=f"{rod_bore} mm", bush_outside=f"{outside} mm", supplied_bore=f"{supplied} mm", honed=f"{honed} mm", pin=f"{pin} mm", rod_wall=f"{wall} mm", bush_material=material,
                rod_temperature=f"{eye} °C", pin_temperature=f"{pin_hot} °C") | SMOOTH


COLD = dict(rod_temperature="20 °C", pin_temperature="20 °C", honed="22.015 mm")
CHECKS = [
    *(Check("small-end-bush", f"{what} ({case})", bush(*CASES[case]), value, tolerance, asked("small-end-bush", output, unit), BVP, "library")
      for case, values in FOUND.items() for value, (output, what, unit, tolerance) in zip(values, COLUMNS, strict=True)),
    Check("small-end-bush", "pin clearance running where all is at 20 °C, mm", COLD, 0.017, 1e-9, asked("small-end-bush", "clearance_hot", "mm"), "22.015 − 21.998: nothing grows", "limit"),
    Check("small-end-bush", "bore closes where the bush has no interference, mm", dict(bush_outside="26.010 mm"), 0.0, 1e-12, asked("small-end-bush", "closing", "mm"), "no grip, no closing", "limit"),
    Check("small-end-bush", "wall of a bush honed to 22.010 in 26.010, mm", dict(honed="22.010 mm"), 2.0, 1e-9, asked("small-end-bush", "wall", "mm"), "half the difference", "limit"),
]

TRENDS = {
    "hone": Trend(rises="pin wanted_clearance"),
    "clearance": Trend(rises="honed wanted_clearance", falls="pin"),
    "clearance_hot": Trend(rises="honed wanted_clearance", falls="pin_temperature"),
    "interference": Trend(rises="bush_outside", falls="rod_bore"),
    "interference_hot": Trend(
        rises="bush_outside rod_temperature",
        falls="rod_bore bush_roughness bore_roughness",
    ),
    "grip_lost": Trend(rises="bush_outside", falls="bush_roughness bore_roughness"),
    "pressure": Trend(rises="bush_outside rod_wall", falls="supplied_bore bush_roughness bore_roughness"),
    "closing": Trend(
        rises="bush_outside supplied_bore rod_wall",
        falls="rod_bore bush_roughness bore_roughness",
    ),
    "bore_pressed": Trend(
        rises="rod_bore supplied_bore bush_roughness bore_roughness",
        falls="bush_outside rod_wall",
    ),
    "to_hone": Trend(
        rises="pin bush_outside wanted_clearance rod_wall",
        falls="rod_bore supplied_bore bush_roughness bore_roughness",
    ),
    "wall": Trend(rises="rod_bore", falls="pin honed wanted_clearance"),
    "bush_used": Trend(rises="bush_outside rod_wall", falls="bush_roughness bore_roughness"),
    "rod_used": Trend(rises="bush_outside", falls="supplied_bore bush_roughness bore_roughness"),
    "force": Trend(
        rises="bush_outside rod_wall length friction",
        falls="supplied_bore bush_roughness bore_roughness",
    ),
    "bush_wanted": Trend(rises="rod_bore least_grip bush_roughness bore_roughness", falls="rod_temperature"),
    "bush_most": Trend(rises="rod_bore bush_roughness bore_roughness"),
}
