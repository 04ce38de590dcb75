"""Outside numbers for a unit in a lifter's body, asked of the calculator. Those marked library are worked anew in test_lifter_bore.py."""
from tests.checks import Check, Trend, asked

BVP = "scipy solve_bvp on u″ + u′/r − u/r² = 0 in unit and body, with the stiffness that the materials' table gives"


def pressed(body, unit, plunger_bore, grip, runout, material):
    return dict(fit_wanted="press", body=f"{body} mm", unit_outside=f"{unit} mm", plunger_bore=f"{plunger_bore} mm", plunger=f"{plunger_bore - 0.012} mm", grip=f"{grip} mm", runout=f"{runout} mm",
                body_material=material, lifter_hole=f"{body + 0.04} mm", bore=f"{unit - grip} mm")


CASES = {  # of the arguments of pressed()
    "steel body": (21.0, 17.5, 15.9, 0.005, 0.0, "forged-steel"),
    "iron body": (24.0, 19.0, 16.0, 0.01, 0.0, "grey-iron"),
}
COLUMNS = (("pressure", "contact pressure, MPa", "MPa", 0.0005), ("hoop", "hoop stress at the body's bore, MPa", "MPa", 0.002), ("closing", "plunger's bore closes by, µm", "µm", 0.0005),
           ("growth", "body's outside grows by, µm", "µm", 0.0005))
FOUND = {
    "steel body": (3.7043, 20.5107, 3.2543, 1.7050),
    "iron body": (7.6550, 33.2891, 4.0594, 5.5929),
}

CHECKS = [
    *(Check("lifter-bore", f"{what} ({case})", pressed(*CASES[case]), value, tolerance, asked("lifter-bore", output, unit), BVP, "library")
      for case, values in FOUND.items() for value, (output, what, unit, tolerance) in zip(values, COLUMNS, strict=True)),
    Check("lifter-bore", "wall of 21.00 mm over 17.52 mm with 0.04 mm of runout, mm", dict(body="21.000 mm", bore="17.520 mm", runout="0.04 mm", lifter_hole="21.05 mm"), 1.72, 1e-9, asked("lifter-bore", "wall", "mm"),
          "(21.00 − 17.52)/2 less half of the dial's full reading", "limit"),
]

TRENDS = {
    "target": Trend(rises="unit_outside slip", falls="grip"),
    "stock": Trend(rises="unit_outside slip", falls="bore grip"),
    "wall": Trend(rises="body grip", falls="bore unit_outside runout slip"),
    "clearance_now": Trend(rises="bore", falls="unit_outside"),
    "pressure": Trend(rises="body grip", falls="plunger_bore"),
    "hoop": Trend(rises="grip", falls="plunger_bore"),
    "body_used": Trend(rises="grip", falls="plunger_bore"),
    "unit_used": Trend(rises="body grip"),
    "growth": Trend(rises="grip", falls="plunger_bore"),
    "closing": Trend(rises="body grip plunger_bore"),
    "plunger_left": Trend(rises="plunger_bore", falls="body grip plunger"),
    "case_left": Trend(rises="lifter_hole", falls="body grip"),
}
