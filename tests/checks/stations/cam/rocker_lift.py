"""Outside numbers for a rocker's lift and sweep. Those marked library are worked anew in test_rocker_lift.py."""
import math

from calc.formulas import rocker
from tests.checks import Check, Trend, asked

CLOSED = "scipy brentq on the closed loop of the linkage"
PARALLEL = "scipy brentq on the rocker's angle, pushrod parallel to the valve; vectors in 100 000 steps agree"
# tip 40·sin 6.6150° above the shaft, so that the arm stands as far from square shut as open
LOOP = dict(valve_arm="40 mm", pushrod_arm="36 mm", tip="4.607926 mm", cup="8°", offset="33 mm", depth="205 mm", lobe_lift="8.2 mm", lash="0", pad="0")
LOOP_FOUND = {"pushrod": (205.892, 1e-3), "lift": (9.21583, 2e-4), "sweep": (0.266297, 2e-5)}
MM = 1e-3


def parallel(arm_deg: float):
    """Rocker of 40 and 36 mm whose pushrod's arm stands 12° past square at rest, the valve arm at `arm_deg`; a pushrod so long that
    it stays parallel to the valve. Angle turned in degrees, lift and sweep in mm for 8.2 mm of the lobe."""
    arm = math.radians(arm_deg)
    cup, offset, depth = arm + math.radians(12), 36 * MM * math.cos(math.radians(12)), 1e4
    rod = rocker.pushrod_for(arm, cup, 36 * MM, offset, depth)
    opened = rocker.arm_at(rod, cup, 36 * MM, offset, depth - 8.2 * MM)
    return math.degrees(arm - opened), rocker.valve_lift(arm, opened, 40 * MM) / MM, rocker.sweep(arm, opened, 40 * MM) / MM


def turned(arm_deg):
    return parallel(arm_deg)[0]


def lifted(arm_deg):
    return parallel(arm_deg)[1]


def swept(arm_deg):
    return parallel(arm_deg)[2]


HALF = 13.829 / 2
CHECKS = [
    *(Check("rocker-lift", f"{name} of a rocker square at half lift, mm", LOOP, value, tolerance, asked("rocker-lift", name, "mm"), CLOSED, "library")
      for name, (value, tolerance) in LOOP_FOUND.items()),
    Check("rocker-lift", "valve arm over square when shut, °", LOOP, 6.6150, 1e-4, asked("rocker-lift", "shut", "°"), CLOSED, "library"),
    Check("rocker-lift", "the same at full lift, °", LOOP, -6.6150, 2e-4, asked("rocker-lift", "opened", "°"), CLOSED, "library"),
    Check("rocker-lift", "rocker turns by, °", dict(arm_deg=HALF), 13.829, 6e-4, turned, PARALLEL, "library"),
    Check("rocker-lift", "valve lift, valve arm square at half lift, mm", dict(arm_deg=HALF), 9.6312, 1e-4, lifted, PARALLEL, "library"),
    Check("rocker-lift", "sweep then, mm", dict(arm_deg=HALF), 0.29093, 2e-5, swept, PARALLEL, "library"),
    Check("rocker-lift", "valve lift, valve arm square at rest, mm", dict(arm_deg=0.0), 9.5611, 1e-4, lifted, PARALLEL, "library"),
    Check("rocker-lift", "sweep then, mm", dict(arm_deg=0.0), 1.1595, 1e-4, swept, PARALLEL, "library"),
]

TRENDS = {
    "lift": Trend(rises="lobe_lift", falls="lash"),
    "shut": Trend(rises="tip pad", falls="valve_arm"),
    "opened": Trend(falls="lobe_lift"),
    "pushrod": Trend(rises="depth"),
}
