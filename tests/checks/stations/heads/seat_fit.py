"""Outside numbers for the fit of a seat ring, asked of the calculator. All are worked anew in test_seat_fit.py."""
from tests.checks import Check, Trend, asked

BVP = "scipy solve_bvp on u″ + u′/r − u/r² = 0 in two rings, joined at equal radial stress"
OWN = BVP + ", with the stiffness and expansion that the materials' table gives"
SMOOTH = dict(ring_roughness="0 µm", pocket_roughness="0 µm")


def ring(pocket, outside, bore, wall, ring, head, ring_hot, head_hot):
    return dict(pocket_bore=f"{pocket} mm", ring_outside=f"{outside} mm", ring_bore=f"{bore} mm", head_wall=f"{wall} mm", ring_material=ring,
                head_material=head, ring_temperature=f"{ring_hot} °C", head_temperature=f"{head_hot} °C",
                ring_warming="20 °C", head_warming="20 °C") | SMOOTH


CASES = {  # of the arguments of ring()
    "iron ring in aluminium": (38, 38.1, 31, 11, "grey-iron", "al-si-t6", 200, 200),
    "intake of the example": (37.5, 37.605, 31, 9, "sintered-iron", "al-si-t6", 230, 180),
    "hard exhaust ring": (33.5, 33.61, 27, 8, "high-chrome-iron", "al-si-cu-t6", 320, 200),
    "bronze ring in an iron head": (40, 40.02, 33, 12, "aluminium-bronze", "grey-iron", 250, 180),
}
COLUMNS = (  # output, what, unit, tolerance
    ("pressure", "contact pressure, cold, MPa", "MPa", 0.0005),
    ("ring_hoop", "hoop stress at the ring's bore, cold, MPa", "MPa", 0.005),
    ("head_hoop", "hoop stress at the pocket, cold, MPa", "MPa", 0.005),
    ("interference_hot", "interference left running, mm", "mm", 0.00005),
    ("pressure_hot", "contact pressure, running, MPa", "MPa", 0.002),
    ("interference_stopped", "interference left stopped hot, mm", "mm", 0.00005),
)
FOUND = {
    "iron ring in aluminium": (32.9032, -196.738, 76.978, 0.02555, 7.8400, 0.02555),
    "intake of the example": (34.0382, -215.008, 91.226, 0.06616, 19.9812, 0.04218),
    "hard exhaust ring": (52.1859, -297.855, 140.387, 0.09192, 39.8885, 0.04177),
    "bronze ring in an iron head": (7.7868, -48.763, 17.770, 0.10474, 37.6554, 0.05435),
}
# Rings of grey iron and Al–Si have the very stiffness of the published case: bore 31, joint 38, outside 60, interference 0.100 mm.
PUBLISHED = ring(*CASES["iron ring in aluminium"])

# Stiffness of another's parts, typed as a maker's own values: bore 33, joint 39, outside 52, interference 0.120 mm, 205 GPa and 0.29 in 70 GPa and 0.33.
OWN_VALUES = ring(39, 39.12, 33, 6.5, "high-chrome-iron", "al-si-t6", 20, 20) | dict(own="205 GPa; 0.29; ; 900 MPa | 70 GPa; 0.33; ; 900 MPa")

CHECKS = [
    Check("seat-fit", "contact pressure with a maker's own values, MPa", OWN_VALUES, 36.721, 0.0005, asked("seat-fit", "pressure", "MPa"), BVP, "library"),
    *(Check("seat-fit", what, ring(*CASES[case]), value, tolerance, asked("seat-fit", output, unit), BVP if case == "iron ring in aluminium" and "cold" in what else OWN, "library")
      for case, values in FOUND.items() for value, (output, what, unit, tolerance) in zip(values, COLUMNS, strict=True)),
    Check("seat-fit", "interference lost to Rz 4 and 6.3 µm, mm", PUBLISHED | dict(ring_roughness="4 µm", pocket_roughness="6.3 µm", ring_temperature="20 °C", head_temperature="20 °C"),
          0.1 - 0.8 * 0.0103, 1e-9, asked("seat-fit", "interference_hot", "mm"), "DIN 7190, older issue, from memory: 0.8(Rz₁ + Rz₂)", "standard"),
    Check("seat-fit", "force that holds, N", PUBLISHED | dict(friction="0.15", depth="6 mm"), 0.15 * 32.903 * 3.14159265 * 38 * 6, 0.1,
          asked("seat-fit", "hold", "N"), "µ·p·π·D·h by hand, from that pressure", "limit"),
]

TRENDS = {
    "interference": Trend(rises="ring_outside", falls="pocket_bore"),
    "interference_hot": Trend(
        rises="ring_outside",
        falls="head_temperature ring_roughness pocket_roughness",
    ),  # not with the pocket: once the ring has given way, its pressure is what it bears, and a larger ring springs further
    "interference_stopped": Trend(rises="ring_outside", falls="ring_roughness pocket_roughness"),
    "lost": Trend(rises="ring_outside", falls="ring_roughness pocket_roughness"),
    "spare": Trend(rises="ring_roughness pocket_roughness", falls="ring_outside"),
    "pressure": Trend(rises="ring_outside head_wall", falls="ring_bore ring_roughness pocket_roughness"),
    "pressure_hot": Trend(rises="ring_outside", falls="head_temperature ring_roughness pocket_roughness"),
    "ring_hoop": Trend(rises="ring_roughness pocket_roughness", falls="ring_outside head_wall"),
    "head_hoop": Trend(rises="ring_outside", falls="ring_roughness pocket_roughness"),
    "ring_used": Trend(rises="ring_outside head_wall", falls="ring_roughness pocket_roughness"),
    "head_used": Trend(rises="ring_outside", falls="ring_bore ring_roughness pocket_roughness"),
    "hold": Trend(
        rises="ring_outside depth head_wall friction",
        falls="ring_bore ring_roughness pocket_roughness",
    ),
    "hold_hot": Trend(
        rises="ring_outside depth friction",
        falls="head_temperature ring_roughness pocket_roughness",
    ),
    "ring_wanted": Trend(
        rises="pocket_bore ring_roughness pocket_roughness least_grip",
        falls="ring_temperature",
    ),
    "ring_most": Trend(rises="pocket_bore ring_roughness pocket_roughness"),
}
