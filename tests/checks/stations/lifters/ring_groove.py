"""Outside numbers for a snap ring's groove, asked of the calculator. Those marked library are worked anew in test_ring_groove.py."""
from tests.checks import Check, Trend, asked

AREAS = "loaded area integrated round the bore with scipy quad, units with pint; shear yield is von Mises' 1/√3"
A = dict(bore="17.52 mm", groove="18.60 mm", ring="1.00 mm", width="1.10 mm", lip="2.00 mm", body="21.00 mm", ring_shear="900 MPa", ring_safety="3", groove_safety="2", body_material="forged-steel")
B = dict(bore="0.75 in", groove="0.80 in", ring="0.042 in", width="0.046 in", lip="0.1 in", body="0.95 in", ring_shear="120 ksi", ring_safety="3", groove_safety="2", body_material="grey-iron")
CASES = {"steel body": A, "iron body, inches": B}
COLUMNS = (("ring_capacity", "thrust that the ring bears, N"), ("groove_capacity", "thrust that the groove's wall bears, N"), ("lip_capacity", "thrust that the lip bears, N"))
FOUND = {"steel body": (16512.2, 9957.4, 21928.8), "iron body, inches": (17607.9, 6382.3, 7723.3)}

CHECKS = [
    *(Check("ring-groove", f"{what} ({case})", CASES[case], value, 0.06, asked("ring-groove", output, "N"), AREAS, "library")
      for case, values in FOUND.items() for value, (output, what) in zip(values, COLUMNS, strict=True)),
    Check("ring-groove", "depth of a groove of 18.60 mm in 17.52 mm, mm", A, 0.54, 1e-9, asked("ring-groove", "depth", "mm"), "half of the difference of the diameters", "limit"),
]

TRENDS = {
    "capacity": Trend(rises="groove ring lip ring_shear", falls="ring_safety groove_safety"),
    "used": Trend(rises="load impact ring_safety groove_safety", falls="groove ring lip ring_shear"),
    "depth": Trend(rises="groove", falls="bore"),
    "ring_capacity": Trend(rises="bore ring ring_shear", falls="ring_safety"),
    "groove_capacity": Trend(rises="groove", falls="bore groove_safety"),
    "lip_capacity": Trend(rises="groove lip", falls="groove_safety"),
    "lip_ratio": Trend(rises="bore lip", falls="groove"),
    "wall": Trend(rises="body", falls="groove"),
    "overhang": Trend(rises="bore breadth", falls="groove"),
    "play": Trend(rises="width", falls="ring"),
}
