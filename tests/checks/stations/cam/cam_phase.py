"""Outside numbers for a cam timed by wheel and dial. Those marked library are worked anew in test_cam_phase.py."""
import math

from calc.stations.cam.cam_phase.phase import across, tooth_at_crank
from tests.checks import Check, Trend, asked

RUN = "numpy: middle of the degrees run through from opening to closing; the plain average of the readings, 289.75, is the heel"
VECTORS = "numpy: mean of unit vectors"
# a stop at 20 and 340 puts dead centre at 0 of the wheel
LATE = dict(valve="intake", stop_before="20°", stop_after="340°", opening="350.5°", closing="229°", wanted="108°", low="107°", high="109°", teeth="58", radius="22 mm")
STOPS = LATE | dict(stop_before="37.6°", stop_after="319°")


def key(radius_mm, late_deg):
    return float(across(radius_mm, math.radians(late_deg)))


def tooth(teeth):
    return math.degrees(tooth_at_crank(teeth))


CHECKS = [
    *(
        Check("cam-phase", f"{what}, equal lifts at 350.5 and 229°, {unit}", LATE, value, tolerance, asked("cam-phase", output, unit), RUN, "library")
        for output, what, unit, value, tolerance in (
            ("centre", "centre", "°", 109.75, 1e-6),
            ("late", "late by", "°", 1.75, 1e-6),
            ("turn", "cam to be turned on", "°", 0.875, 1e-6),
        )
    ),
    Check("cam-phase", "dead centre, stop at 37.6 and 319°, °", STOPS, 358.3, 1e-6, asked("cam-phase", "top", "°"), VECTORS, "library"),
    Check("cam-phase", "offset key at 22 mm for 1.75° of the crank, mm", dict(radius_mm=22.0, late_deg=1.75), 0.335973, 1e-6, key, RUN, "library"),
    Check("cam-phase", "one tooth of 58, at the crank, °", dict(teeth=58.0), 12.4138, 5e-5, tooth, "720° ÷ 58: definition", "limit"),
]

TRENDS = {"room": Trend(rises="high", falls="low")}
