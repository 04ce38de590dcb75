"""Outside numbers for a lobe from its lifts. Those marked library are worked anew in test_lift_table.py."""
import math

from calc.formulas import lobe
from calc.formulas.lift_curve import Curve, differences
from calc.stations.cam.lift_table.faults import fault_in
from tests.checks import Check, Trend

EXACT = "sympy derivatives and scipy brentq on the exact law of the lobe"
DIFFERENCES = "numpy differences of the table"
NOISE = "second difference (1, −2, 1) of independent readings: √6 of one's standard deviation"


def tabled(law, lift_mm, rise_deg, fall_deg, peak_deg, every_deg, decimals=9):
    """Angles (rad of the cam) and lifts (m) of a lobe read from 0 to well past its closing."""
    angles = [math.radians(every_deg * n) for n in range(int((peak_deg + fall_deg + 12) / every_deg) + 1)]
    peak = math.radians(peak_deg)
    lifts = [
        round(float(lobe.lift_at(law, lift_mm, math.radians(rise_deg if a < peak else fall_deg), a - peak)), decimals) * 1e-3
        for a in angles
    ]
    return angles, lifts


LOBE = dict(law="4567", lift_mm=8.2, rise_deg=70.0, fall_deg=70.0, peak_deg=110.0, every_deg=1.0)
UNEVEN = dict(law="345", lift_mm=7.6, rise_deg=62.0, fall_deg=74.0, peak_deg=105.0, every_deg=1.0)


def curve(**made):
    return Curve(*tabled(**made))


def duration(at_mm, **made):
    opens, closes = curve(**made).crossings(at_mm * 1e-3)
    return 2 * math.degrees(closes.value - opens.value)


def centre(at_mm, **made):
    opens, closes = curve(**made).crossings(at_mm * 1e-3)
    return math.degrees(closes.value + opens.value) / 2


def peak(**made):
    return math.degrees(curve(**made).extreme(0)[0])


def steepest(sign, **made):
    return abs(curve(**made).extreme(1, sign)[1].value) * 1e3 * math.radians(1)


def velocity(cam_per_minute, **made):
    return curve(**made).extreme(1)[1].value * cam_per_minute * 2 * math.pi / 60


def acceleration(cam_per_minute, **made):
    found = curve(**made)
    return max(abs(found.extreme(2, sign)[1].value) for sign in (1, -1)) * (cam_per_minute * 2 * math.pi / 60) ** 2


def area(**made):
    return curve(**made).area() * 1e3 / math.radians(1)


def slipped(every_deg=3.0):
    angles, lifts = tabled("cycloid", 8.0, 66.0, 66.0, 108.0, every_deg, 3)
    lifts[29] = 6.733e-3
    return angles, lifts


def third(wrong):
    angles, lifts = slipped() if wrong else tabled("cycloid", 8.0, 66.0, 66.0, 108.0, 3.0, 3)
    return max(map(abs, differences(lifts, 3))) * 1e3


def looked_at():
    angles, lifts = slipped()
    fault = fault_in(angles, lifts, [0.03e-3] * len(angles))
    return math.degrees(angles[fault.row]) if fault and fault.kind == "slip" else math.nan


def second_difference_of_noise():
    """Standard deviation of readings rounded to 0.01 mm, 0.01/√12, through the weights of a second difference, µm."""
    weights = differences([1.0 if n == 2 else 0.0 for n in range(5)], 2)
    return math.sqrt(sum(w * w for w in weights)) * 10 / math.sqrt(12)


CHECKS = [
    Check("lift-table", "duration at 1.00 mm, lobe 4-5-6-7 every 1°, ° of the crank", dict(LOBE, at_mm=1.0), 196.89, 0.02, duration, EXACT, "library"),
    Check("lift-table", "duration at 0.10 mm, the same, ° of the crank", dict(LOBE, at_mm=0.1), 237.91, 0.1, duration, EXACT, "library"),
    Check("lift-table", "centre, the same, ° of the cam", dict(LOBE, at_mm=1.0), 110.0, 0.01, centre, EXACT, "limit"),
    Check("lift-table", "largest velocity at 2250 1/min of the cam, the same, m/s", dict(LOBE, cam_per_minute=2250.0), 3.4594, 0.003, velocity, EXACT, "library"),
    Check("lift-table", "largest acceleration, the same, m/s²", dict(LOBE, cam_per_minute=2250.0), 2291.4, 11.5, acceleration, EXACT, "library"),
    Check("lift-table", "area under the lift, the same, mm·°", LOBE, 574.0, 0.1, area, EXACT, "library"),
    Check("lift-table", "duration at 1.27 mm, uneven lobe 3-4-5 every 1°, ° of the crank", dict(UNEVEN, at_mm=1.27), 189.577, 0.02, duration, EXACT, "library"),
    Check("lift-table", "centre at 1.27 mm, the same, ° of the cam", dict(UNEVEN, at_mm=1.27), 109.182, 0.01, centre, EXACT, "library"),
    Check("lift-table", "nose, the same, ° of the cam", UNEVEN, 105.0, 0.3, peak, EXACT, "limit"),
    Check("lift-table", "steepest opening, the same, mm/°", dict(UNEVEN, sign=1), 0.229839, 3e-4, steepest, EXACT, "library"),
    Check("lift-table", "steepest closing, the same, mm/°", dict(UNEVEN, sign=-1), 0.192568, 3e-4, steepest, EXACT, "library"),
    Check("lift-table", "second difference of a table read to 0.01 mm, standard deviation, µm", {}, 7.071, 0.001, second_difference_of_noise, NOISE, "limit"),
    Check("lift-table", "largest third difference of a lobe with 6.733 for 6.613 at 87°, mm", dict(wrong=1.0), 0.378, 5e-4, third, DIFFERENCES, "library"),
    Check("lift-table", "largest third difference of that lobe as it is, mm", dict(wrong=0.0), 0.029, 5e-4, third, DIFFERENCES, "library"),
    Check("lift-table", "angle told to be read again, °", {}, 87.0, 1e-6, looked_at, DIFFERENCES, "limit"),
]

TRENDS = {
    "velocity": Trend(rises="speed"),
    "acceleration": Trend(rises="speed"),
    "duration": Trend(falls="checking"),
}
