"""Outside numbers for guides, asked of the calculator. Those marked library are worked anew in test_guide_fit.py."""
from tests.checks import Check, Trend, asked

BVP = "scipy solve_bvp on u″ + u′/r − u/r² = 0 in guide and head, with free thermal strain, and the stiffness and growth that the materials' table gives"
LEAN = "scipy brentq: a stem of that thickness turned in the bore until both ends touch"
SMOOTH = dict(guide_roughness="0 µm", hole_roughness="0 µm")


def guide(hole, outside, bore, stem, wall, guide, head, steel, guide_hot, head_hot, stem_hot):
    """A guide in the head, of those sizes when it went in."""
    return dict(hole_fitted=f"{hole} mm", outside_fitted=f"{outside} mm", guide_bore=f"{bore} mm", stem=f"{stem} mm", head_wall=f"{wall} mm", guide_material=guide, head_material=head, stem_material=steel,
                guide_temperature=f"{guide_hot} °C", head_temperature=f"{head_hot} °C", stem_temperature=f"{stem_hot} °C", worn_clearance="1 mm") | SMOOTH


CASES = {  # of the arguments of guide()
    "bronze guide, intake": (13.0, 13.03, 8.01, 7.96, 8, "bronze", "al-si-t6", "valve-steel", 130, 120, 150),
    "bronze guide, exhaust": (13.0, 13.03, 8.01, 7.93, 8, "bronze", "al-si-t6", "austenitic-valve-steel", 220, 170, 420),
    "iron guide, exhaust": (14.0, 14.04, 9.02, 8.95, 10, "grey-iron", "al-si-cu-t6", "valve-steel", 230, 180, 400),
}
COLUMNS = (("pressure", "contact pressure, cold, MPa", "MPa", 0.0005), ("interference_hot", "interference left running, mm", "mm", 5e-6), ("closing", "bore closes when pressed in by, mm", "mm", 5e-7),
           ("clearance_hot", "clearance running, mm", "mm", 5e-7), ("clearance_first", "clearance with the stem alone hot, mm", "mm", 5e-7))
FOUND = {
    "bronze guide, intake": (54.1903, 0.027170, 0.0127219, 0.0555006, 0.0386426),
    "bronze guide, exhaust": (54.1903, 0.034033, 0.0127219, 0.0525521, 0.0251785),
    "iron guide, exhaust": (65.7664, 0.024811, 0.0184404, 0.0608991, 0.0313894),
}
ROCKED = dict(stem="7.95 mm", guide_bore="8.05 mm", guide_length="46 mm", dial_height="35 mm")

# A new guide is reamed after it was pressed in: its bore moves with the change of grip as the thinner guide's does.
REAMED = dict(stage="new", valve="exhaust", supplied_bore="7.5 mm", stem="7.93 mm", wanted_clearance="0.078 mm", guide_hole="13.0 mm", guide_outside="13.03 mm", head_wall="8 mm", guide_material="bronze",
              head_material="al-si-t6", guide_temperature="220 °C", head_temperature="170 °C", stem_temperature="420 °C") | SMOOTH
REAMED_RUNNING = 0.0505454

CHECKS = [
    Check("guide-fit", "clearance running of a guide that was reamed by half a millimetre, mm", REAMED, REAMED_RUNNING, 5e-7, asked("guide-fit", "clearance_hot", "mm"), BVP, "library"),
    *(Check("guide-fit", what, guide(*CASES[case]), value, tolerance, asked("guide-fit", output, unit), BVP, "library")
      for case, values in FOUND.items() for value, (output, what, unit, tolerance) in zip(values, COLUMNS, strict=True)),
    Check("guide-fit", "rocking of 0.100 mm of clearance 35 mm beyond a guide of 46 mm, mm", ROCKED, 0.252, 0.0005, asked("guide-fit", "rocking", "mm"), LEAN, "library"),
    Check("guide-fit", "clearance shown by 0.30 mm of rocking at the guide's end, mm", dict(rocking="0.30 mm", dial_height="0 mm"), 0.3, 1e-9, asked("guide-fit", "clearance_rocking", "mm"),
          "at the end itself the stem moves by the clearance", "limit"),
]

TRENDS = {
    "clearance": Trend(rises="guide_bore wanted_clearance", falls="stem"),
    "clearance_hot": Trend(rises="guide_bore wanted_clearance head_temperature", falls="stem_temperature"),
    "interference": Trend(rises="guide_outside", falls="guide_hole"),
    "clearance_first": Trend(rises="guide_bore wanted_clearance", falls="stem stem_temperature"),
    "rocking": Trend(rises="guide_bore dial_height wanted_clearance", falls="stem guide_length"),
    "clearance_rocking": Trend(rises="rocking guide_length", falls="dial_height"),
    "rocking_worn": Trend(rises="dial_height worn_clearance", falls="guide_length"),
    "closing": Trend(
        rises="guide_bore supplied_bore guide_outside head_wall",
        falls="guide_hole guide_roughness hole_roughness",
    ),
    "bore_pressed": Trend(
        rises="guide_hole supplied_bore guide_roughness hole_roughness",
        falls="guide_outside head_wall",
    ),
    "ream": Trend(rises="stem wanted_clearance"),
    "to_ream": Trend(
        rises="stem guide_outside wanted_clearance head_wall",
        falls="guide_bore guide_hole supplied_bore guide_roughness hole_roughness",
    ),
    "interference_hot": Trend(
        rises="guide_outside guide_temperature",
        falls="guide_hole head_temperature guide_roughness hole_roughness",
    ),
    "interference_oven": Trend(rises="guide_outside", falls="guide_hole guide_roughness hole_roughness"),
    "grip_lost": Trend(rises="guide_outside", falls="guide_roughness hole_roughness"),
    "pressure": Trend(
        rises="guide_outside head_wall",
        falls="guide_bore supplied_bore guide_roughness hole_roughness",
    ),
    "guide_used": Trend(rises="guide_outside", falls="guide_roughness hole_roughness"),
    "head_used": Trend(
        rises="guide_outside",
        falls="guide_bore supplied_bore guide_roughness hole_roughness",
    ),
    "force": Trend(
        rises="guide_outside guide_length head_wall friction",
        falls="guide_bore supplied_bore guide_roughness hole_roughness",
    ),
    "guide_wanted": Trend(
        rises="guide_hole guide_roughness hole_roughness least_grip",
        falls="guide_temperature",
    ),
    "guide_most": Trend(rises="guide_hole guide_roughness hole_roughness"),
}
