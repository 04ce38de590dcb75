"""Outside numbers for the cross-hatch, asked of the calculator. Those marked library are worked anew in test_hone_angle.py."""
from tests.checks import Check, Trend, asked

CASE = dict(bore="88 mm", stroke="95 mm", strokes="110 1/min", spindle="150 1/min", counted="single", drive="crank")
MEAN = CASE | dict(drive="even", wanted="45°")
PATH = "numpy: path of a stone on a sine, differentiated"
SPEEDS = dict(bore="95.49296586 mm", spindle="100 1/min", stroke="100 mm", strokes="150 1/min", counted="single", drive="even")

CHECKS = [
    Check("hone-angle", "88 mm bore, 95 mm stroke, 110 strokes, 150 1/min: by the mean speed, °", CASE, 28.288, 5e-4, asked("hone-angle", "mean", "°"), PATH, "library"),
    Check("hone-angle", "in the middle, driven by a crank, °", CASE, 43.191, 5e-4, asked("hone-angle", "judged", "°"), PATH, "library"),
    Check("hone-angle", "10 mm from the end, °", CASE, 27.312, 5e-4, asked("hone-angle", "near_end", "°"), PATH, "library"),
    Check("hone-angle", "spindle for 45° by the mean speed, 1/min", MEAN, 91.256, 5e-4, asked("hone-angle", "spindle", "1/min"), "scipy brentq on the angle", "library"),
    Check("hone-angle", "stones 30 m/min round and 15 m/min along, °", SPEEDS, 53.13, 5e-3, asked("hone-angle", "judged", "°"), "2·atan(1/2), the angles of a 3-4-5 triangle", "limit"),
    Check("hone-angle", "bore 110 mm, stones 60 mm, 20 mm out at each end: stroke, mm", CASE | dict(stroke_by="reach", length="110 mm", stones="60 mm", overrun="20 mm"), 90, 1e-9,
          asked("hone-angle", "stroke", "mm"), "geometry", "limit"),
]

TRENDS = {
    "judged": Trend(rises="strokes stroke", falls="bore spindle"),
    "mean": Trend(rises="strokes stroke", falls="bore spindle"),
    "near_end": Trend(rises="strokes end", falls="bore spindle"),
    "spindle": Trend(rises="strokes stroke", falls="bore wanted"),
    "strokes": Trend(rises="bore spindle wanted", falls="stroke"),
    "stroke": Trend(rises="stroke length overrun", falls="stones"),
    "axial": Trend(rises="strokes stroke"),
    "round": Trend(rises="bore spindle"),
}
