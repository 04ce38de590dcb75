"""Outside numbers for spindle speed, feed and time, asked of the calculator. Those marked library are worked anew in test_spindle_speed.py."""
from tests.checks import Check, Trend, asked

STEPS = {f"steps.{n}.1": str(s) for n, s in enumerate((45, 63, 90, 125, 180, 250, 355, 500, 710, 1000), 1)}
BORE = dict(way="turned", cut="iron", tool="carbide", diameter="88 mm", speed="95 m/min", feed="0.08 mm", length="112 mm", drive="steps") | STEPS
FACE = dict(way="faced", cut="iron", tool="carbide", diameter="240 mm", inside="60 mm", speed="110 m/min", feed="0.12 mm", length="90 mm", drive="stepless")
FLY = dict(way="milled", cut="aluminium", tool="carbide", diameter="200 mm", speed="250 m/min", feed="0.10 mm", tips="1", length="180 mm", drive="stepless")
TRIED = "v = π·d·n with π from mpmath 1.3.0; the steps tried one by one, never above the speed wanted"
INTEGRAL = "scipy 1.17.1 quad: the time that each small ring of the face takes at one speed of the spindle"
WAY = "v_f = f·z·n and the way of a cutter that leaves the face, its own diameter behind it, by exact fractions over π"
CHECKS = [
    Check("spindle-speed", "spindle for 95 m/min at 88 mm, 1/min", BORE, 343.630, 5e-4, asked("spindle-speed", "wanted", "1/min"), TRIED, "library"),
    Check("spindle-speed", "step to set, 1/min", BORE, 250.0, 1e-9, asked("spindle-speed", "step", "1/min"), TRIED, "library"),
    Check("spindle-speed", "cutting speed at that step, m/min", BORE, 69.1150, 5e-5, asked("spindle-speed", "speed", "m/min"), TRIED, "library"),
    Check("spindle-speed", "feed at that step, mm/min", BORE, 20.0, 1e-9, asked("spindle-speed", "table", "mm/min"), "0.08 mm × 250", "limit"),
    Check("spindle-speed", "time for 112 mm, s", BORE, 336.0, 1e-6, asked("spindle-speed", "time", "s"), "112 mm ÷ 20 mm/min", "limit"),
    Check("spindle-speed", "time to face 240 mm down to 60 mm at one speed, s", FACE, 308.447, 5e-3, asked("spindle-speed", "time", "s"), INTEGRAL, "library"),
    Check("spindle-speed", "fly cutter of 200 mm, spindle, 1/min", FLY, 397.887, 5e-4, asked("spindle-speed", "step", "1/min"), WAY, "library"),
    Check("spindle-speed", "fly cutter, one pass over a face of 180 mm, s", FLY, 573.029, 5e-3, asked("spindle-speed", "time", "s"), WAY, "library"),
    Check("spindle-speed", "100 ft/min at 1 in, as shops reckon, 1/min", FACE | dict(way="turned", diameter="1 in", speed="100 ft/min"), 381.972, 5e-4, asked("spindle-speed", "step", "1/min"), "12·v/(π·d); rounded to 4·v/d = 400 by rule of thumb in handbooks (from memory)", "limit"),
]

TRENDS = {
    "step": Trend(rises="speed", falls="diameter"),
    "speed": Trend(rises="speed"),
    "wanted": Trend(rises="speed", falls="diameter"),
    "table": Trend(rises="feed tips speed", falls="diameter"),
    "time": Trend(rises="length diameter", falls="feed tips speed inside"),
}
