"""Outside numbers for the plunger's place, asked of the calculator. Worked anew in test_plunger_travel.py."""
from tests.checks import Check, Trend, asked

SWUNG = "every point of the chain placed cold and hot, the rocker swung by scipy brentq until it lies on the stem's tip again"
NAMES = ("case_length", "cylinder", "head", "lifter", "pushrod", "valve_length", "ratio", "case_material", "cylinder_material", "head_material", "valve_material", "pushrod_expansion",
         "case_temperature", "cylinder_temperature", "head_temperature", "valve_temperature", "rod_temperature")
UNITS = dict(zip(NAMES, (*["{} mm"] * 6, *["{}"] * 5, "{} µm/(m·K)", *["{} °C"] * 5)))
CASES = {  # in the order of NAMES
    "magnesium case, steel pushrod": (101.7, 110, 128, 67, 270, 112, 1.1, "mg-az91", "grey-iron", "al-si-t6", "valve-steel", 12, 90, 160, 150, 220, 95),
    "aluminium case and pushrod, exhaust": (100, 115, 125, 70, 265, 110, 1.3, "al-si-t6", "grey-iron", "al-si-t6", "austenitic-valve-steel", 23.6, 95, 170, 160, 350, 100),
}
FOUND = {"magnesium case, steel pushrod": (-0.490247, 1.192465), "aluminium case and pushrod, exhaust": (0.023833, 1.418856)}


def entries(case):
    return {name: UNITS[name].format(value) for name, value in zip(NAMES, CASES[case], strict=True)} | dict(preload="1.8 mm")


CHECKS = [
    *(Check("plunger-travel", f"{what} ({case})", entries(case), value, 5e-6, asked("plunger-travel", output, "mm"), SWUNG, "library")
      for case, values in FOUND.items() for value, (output, what) in zip(values, (("change", "pressed in more when running, mm"), ("warming", "pressed in while warming up, mm")), strict=True)),
    Check("plunger-travel", "shims that do what 1.26 mm of pushrod does with a ratio of 1.1, mm", dict(ratio="1.1", preload="3.15 mm"), 0.66, 0.0006, asked("plunger-travel", "shim", "mm"),
          "the shaft goes up by t and the rocker's other end by t·(1 + 1/i)", "limit"),
]

TRENDS = {
    "top": Trend(
        rises="preload valve_temperature rod_temperature",
        falls="case_temperature cylinder_temperature head_temperature wear",
    ),
    "bottom": Trend(
        rises="travel case_temperature cylinder_temperature head_temperature",
        falls="preload valve_temperature rod_temperature sinking",
    ),
    "pushrod_wanted": Trend(
        rises="travel pushrod case_temperature cylinder_temperature head_temperature wear least_top",
        falls="preload valve_temperature rod_temperature sinking least_bottom",
    ),
    "longer": Trend(
        rises="travel case_temperature cylinder_temperature head_temperature wear least_top",
        falls="preload valve_temperature rod_temperature sinking least_bottom",
    ),
    "shim": Trend(
        rises="preload valve_temperature rod_temperature sinking least_bottom",
        falls="travel case_temperature cylinder_temperature head_temperature wear least_top",
    ),
    "change": Trend(
        rises="valve_temperature rod_temperature",
        falls="case_temperature cylinder_temperature head_temperature",
    ),
    "running": Trend(
        rises="preload valve_temperature rod_temperature",
        falls="case_temperature cylinder_temperature head_temperature",
    ),
    "warming": Trend(rises="preload valve_temperature", falls="cylinder_temperature head_temperature"),
    "left_cold": Trend(rises="travel", falls="preload"),
    "left_running": Trend(
        rises="travel case_temperature cylinder_temperature head_temperature",
        falls="preload valve_temperature rod_temperature",
    ),
    "preload_least": Trend(
        rises="case_temperature cylinder_temperature head_temperature wear least_top",
        falls="valve_temperature rod_temperature",
    ),
    "preload_most": Trend(
        rises="travel case_temperature cylinder_temperature head_temperature",
        falls="valve_temperature rod_temperature sinking least_bottom",
    ),
}
