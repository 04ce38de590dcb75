"""Outside numbers for flatness and tilt, asked of the calculator. Those marked library are worked anew in test_face_plane.py."""
from tests.checks import Check, Trend, asked

LINPROG = "scipy linprog: plane of least largest deviation, by linear programming"
WIDE = 104.0  # mm, the circle of the places
# heights of places evenly round that circle, mm
FACES = {
    "four, twisted": (0.02, 0.0, 0.02, 0.0),
    "four, tilted": (0.03, 0.015, 0.0, 0.015),
    "six": (0.011, 0.019, 0.004, 0.0, 0.006, 0.002),
    "eight, one burr": (0.0, 0.001, 0.0, 0.06, 0.001, 0.0, 0.001, 0.0),
    "eight": (0.012, 0.003, 0.017, 0.008, 0.021, 0.014, 0.002, 0.006),
}
WIDTHS = {"six": 0.0095, "eight, one burr": 0.0507132, "eight": 0.0128492}  # of the narrowest zone, mm


def face(heights, **more):
    return dict(readings=" | ".join(map(str, heights)), across=f"{WIDE} mm", reads="height", **more)


CHECKS = [
    *(Check("face-plane", f"out of flat, {name}, mm", face(FACES[name]), width, 1e-7, asked("face-plane", "flatness", "mm"), LINPROG, "library") for name, width in WIDTHS.items()),
    Check("face-plane", "out of flat, four places twisted by 0.020 mm, mm", face(FACES["four, twisted"]), 0.02, 1e-9, asked("face-plane", "flatness", "mm"), "two opposite places high, two low: level planes through both pairs", "limit"),
    Check("face-plane", "tilt of that, mm", face(FACES["four, twisted"]), 0.0, 1e-9, asked("face-plane", "tilt", "mm"), "neither pair is higher on one side", "limit"),
    Check("face-plane", "out of flat, four places that only fall, mm", face(FACES["four, tilted"]), 0.0, 1e-9, asked("face-plane", "flatness", "mm"), "all four lie in one plane", "limit"),
    Check("face-plane", "tilt of that over 104 mm, mm", face(FACES["four, tilted"]), 0.03, 1e-9, asked("face-plane", "tilt", "mm"), "0.030 mm from the first place to the one opposite", "limit"),
    Check("face-plane", "least cut parallel to the datum, no allowance, mm", face(FACES["eight"], allowance="0"), 0.019, 1e-9, asked("face-plane", "cut", "mm"), "highest less lowest, 0.021 and 0.002 mm", "limit"),
]

TRENDS = {
    "cut": Trend(rises="allowance"),
    "cut_along": Trend(rises="allowance"),
    "tilt_angle": Trend(falls="across"),
}
