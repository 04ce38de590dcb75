"""Outside numbers for the speed of a grinding wheel, asked of the calculator."""
from tests.checks import Check, Trend, asked

MARK = dict(marked="speed", marked_speed="35 m/s", ring="clear", spindle="1100 1/min")
PI = "π·d·n in exact fractions with π from mpmath 1.3.0, 30 digits"
CHECKS = [
    Check("wheel-speed", "rim of a wheel of 600 mm, as new, m/s", MARK | dict(diameter="600 mm"), 34.5575, 5e-5, asked("wheel-speed", "rim", "m/s"), PI, "library"),
    Check("wheel-speed", "the same worn to 480 mm, m/s", MARK | dict(diameter="480 mm"), 27.6460, 5e-5, asked("wheel-speed", "rim", "m/s"), PI, "library"),
    Check("wheel-speed", "spindle at most, 600 mm at 35 m/s, 1/min", MARK | dict(diameter="600 mm"), 1114.0846, 5e-5, asked("wheel-speed", "most", "1/min"), PI, "library"),
    Check("wheel-speed", "rim of 7 in at 3450 rpm, ft/min", MARK | dict(diameter="7 in", spindle="3450 1/min"), 6322.455, 5e-4, asked("wheel-speed", "rim", "ft/min"), "surface feet a minute = π·d(in)·n/12, as tables of wheel speeds have it (from memory)", "handbook"),
    Check("wheel-speed", "spindle at most, worn to 480 mm, its own mark 1110 1/min, 1/min", MARK | dict(diameter="480 mm", marked="both", marked_turns="1110 1/min"), 1110.0, 1e-9, asked("wheel-speed", "most", "1/min"), "a worn wheel is allowed no more turns than stand on it", "limit"),
    Check("wheel-speed", "spindle at most of a wheel without a mark, 1/min", dict(diameter="600 mm", spindle="1100 1/min", marked="none", ring="clear"), 0.0, 1e-9, asked("wheel-speed", "most", "1/min"), "a wheel without a mark does not run", "limit"),
]

TRENDS = {
    "rim": Trend(rises="diameter spindle"),
    "most": Trend(rises="marked_speed marked_turns", falls="diameter"),
}
