"""Outside numbers for shrinking a seat ring in, asked of the calculator. Those marked library are worked anew in test_seat_shrink.py."""
from tests.checks import Check, Trend, asked

ROOT = "scipy brentq on the balance of free growths, with the growth that the materials' table gives"
CASES = {  # pocket, ring, clearance in mm, ring's and head's material, ring in °C -> head in °C, head may cool and ring may warm in K
    (37.5, 37.605, 0.05, "sintered-iron", "al-si-t6", -78): (160.8878, 58.0061, 126.1973),
    (37.5, 37.605, 0.05, "sintered-iron", "al-si-t6", -196): (122.7044, 60.1284, 163.3443),
    (37.0, 37.1, 0.05, "grey-iron", "al-si-t6", 20): (199.9179, 56.7657, 120.0135),
    (37.0, 37.1, 0.05, "grey-iron", "al-si-t6", -78): (160.0890, 58.8547, 134.9598),
    (33.5, 33.61, 0.04, "high-chrome-iron", "al-si-cu-t6", -78): (177.9777, 51.0012, 120.7523),
    (42.0, 42.05, 0.06, "aluminium-bronze", "grey-iron", -18): (194.0029, 119.3892, 88.7282),
}


def entries(pocket, ring, clearance, ring_material, head_material, ring_at):
    return dict(pocket_bore=f"{pocket} mm", ring_outside=f"{ring} mm", clearance=f"{clearance} mm", ring_material=ring_material,
                head_material=head_material, ring_temperature=f"{ring_at} °C")


CHECKS = [
    *(Check("seat-shrink", what, entries(*case), value, 0.001, asked("seat-shrink", output, unit), ROOT, "library")
      for case, values in CASES.items() for value, output, unit, what in zip(values, ("head_temperature", "head_may_cool", "ring_may_warm"), ("°C", "K", "K"), (
          "head temperature needed, °C", "head may cool, K", "ring may warm, K"), strict=True)),
    # With one coefficient, 21.5e-6 1/K, the worked example of the free growth d·α·ΔT = δ + c gives 208.56 °C. The alloy's
    # mean coefficient is that from 20 to 100 °C, and grows by 5 per cent up to 200 °C.
    Check("seat-shrink", "head temperature needed, °C; at one coefficient of 21.5e-6 1/K 208.561", entries(37.0, 37.1, 0.05, "grey-iron", "al-si-t6", 20),
          20 + (208.561 - 20) / 1.0481, 0.05, asked("seat-shrink", "head_temperature", "°C"),
          "free growth d·α·ΔT = δ + c, α raised by (1 + 5·10⁻⁴·180)/(1 + 5·10⁻⁴·80) for 200 °C", "limit"),
]

TRENDS = {
    "head_temperature": Trend(rises="ring_outside ring_temperature clearance", falls="pocket_bore"),
    "margin": Trend(rises="pocket_bore head_limit", falls="ring_outside ring_temperature clearance"),
    "head_may_cool": Trend(rises="pocket_bore head_limit clearance", falls="ring_outside ring_temperature"),
    "ring_may_warm": Trend(rises="head_limit clearance", falls="ring_outside ring_temperature"),
    "clearance_in": Trend(rises="pocket_bore head_limit clearance", falls="ring_outside ring_temperature"),
    "clearance_limit": Trend(rises="pocket_bore head_limit", falls="ring_outside ring_temperature"),
    "interference": Trend(rises="ring_outside", falls="pocket_bore"),
}
