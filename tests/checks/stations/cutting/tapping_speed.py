"""Outside numbers for tapping by machine, asked of the calculator. Those marked library are worked anew in test_tapping_speed.py."""
from tests.checks import Check, Trend, asked

M10 = dict(thread="M10x1.5", hole="blind", depth="16 mm", lead="second", speed="12 m/min", drill="8.5 mm", room="1 mm", point="118°")
M8 = dict(thread="M8x1.25", hole="blind", depth="18 mm", lead="second", drill="6.8 mm", room="1 mm", point="118°")
PI = "n = v/(π·d) and feed = P·n, with π from mpmath 1.3.0"
CONE = "cone of 118° on 6.8 mm: half the diameter over the tangent of 59°, mpmath 1.3.0"
CHECKS = [
    Check("tapping-speed", "M10 at 12 m/min, spindle, 1/min", M10, 381.972, 5e-4, asked("tapping-speed", "spindle", "1/min"), PI, "library"),
    Check("tapping-speed", "M10 at 12 m/min, feed, mm/min", M10, 572.958, 5e-4, asked("tapping-speed", "feed", "mm/min"), PI, "library"),
    Check("tapping-speed", "M10, 22 mm with the tap's lead, turns in", M10, 14.6667, 5e-5, asked("tapping-speed", "turns"), "22 mm ÷ 1.5 mm", "limit"),
    Check("tapping-speed", "M8, 18 mm of full thread, drill deep to its full diameter, mm", M8, 24.0, 1e-9, asked("tapping-speed", "full", "mm"), "18 + 4 × 1.25 + 1", "limit"),
    Check("tapping-speed", "the same to the drill's point, mm", M8, 26.0429, 5e-5, asked("tapping-speed", "tip", "mm"), CONE, "library"),
    Check("tapping-speed", "1/4-20 at 50 ft/min, spindle, 1/min", dict(M10, thread="1/4-20", speed="50 ft/min", drill="0.201 in"), 763.944, 5e-4, asked("tapping-speed", "spindle", "1/min"), "12·v/(π·d), inches", "limit"),
]

TRENDS = {
    "spindle": Trend(rises="speed"),
    "feed": Trend(rises="speed"),
    "full": Trend(rises="depth room"),
    "tip": Trend(rises="depth room drill", falls="point"),
    "turns": Trend(rises="depth"),
}
