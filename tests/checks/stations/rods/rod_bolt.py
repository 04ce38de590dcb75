"""Outside numbers for rod bolts, asked of the calculator. Those marked library are worked anew in test_rod_bolt.py."""
from tests.checks import Check, Trend, asked

SYMPY = "sympy: second derivative of the exact slider-crank"
SERIES = "F·Σ(L/(E·A)) worked by hand, A_s = 51.05 mm²"
ROD = dict(torque="31.732 N·m", bearing="11.75 mm", shank="8 mm", shank_length="40 mm", thread_length="12 mm", stiffness="205 GPa", read_over="free")
M8 = dict(thread="M8x1.25", strength="8.8", torque="24.6 N·m", bearing="10.3 mm", shank="8 mm", spread="0 %", speed="100 1/min")
RUNS = {  # throw, rod: mm; speed, 1/min; piston and small end, big end without cap: g -> piston's acceleration, m/s²; pull on the joint, kN
    "square": ((34.5, 137, 4500, 590, 270), (9590.58, 7.726988)),
    "long stroke": ((39.2, 137, 5000, 700, 300), (13821.9, 12.899421)),
}


def run(throw, rod, speed, reciprocating, turning):
    return dict(throw=f"{throw} mm", rod_length=f"{rod} mm", speed=f"{speed} 1/min", piston_mass=f"{reciprocating - 160} g", small_end="160 g", big_end=f"{turning + 130} g", cap="130 g")


CHECKS = [
    Check("rod-bolt", "preload that 31.732 N·m makes, M9×1, kN", ROD, 22.0, 0.002, asked("rod-bolt", "preload", "kN"), "ISO 16047 worked by hand", "standard"),
    Check("rod-bolt", "stretch under 22 kN, µm", ROD, 110.63, 0.02, asked("rod-bolt", "stretch", "µm"), SERIES, "handbook"),
    Check("rod-bolt", "preload that 0.11063 mm of stretch makes, kN", ROD | dict(known="stretch", stretch="0.11063 mm"), 22.0, 0.005, asked("rod-bolt", "preload", "kN"), SERIES, "handbook"),
    Check("rod-bolt", "preload that 0.115 mm over the ends makes, kN", dict(known="stretch", stretch="0.115 mm"), 19.70, 0.02, asked("rod-bolt", "preload", "kN"),
          "the same and 4.5 mm of Ø 9 and of Ø 7.773, the lengths of VDI 2230-1 for head and thread in the nut, from memory", "handbook"),
    Check("rod-bolt", "share of yield at 24.6 N·m, M8, 8.8, %", M8, 90.0, 0.5, asked("rod-bolt", "used", "%"), "VDI 2230-1, table A1, µ = 0.12, from memory", "standard"),
    *(Check("rod-bolt", what, run(*case), value, tolerance, asked("rod-bolt", output, unit), SYMPY, "library")
      for case, values in RUNS.values() for value, output, what, unit, tolerance in zip(
          values, ("acceleration", "load"), ("acceleration of the piston at top dead centre, m/s²", "pull on the cap's joint, kN"), ("m/s²", "kN"), (0.05, 2e-5), strict=True)),
]

TRENDS = {
    "preload": Trend(
        rises="torque stretch shank stiffness",
        falls="thread_friction head_friction bearing shank_length thread_length",
    ),
    "margin": Trend(
        rises="torque stretch shank stiffness cap rod_length bolts joint_share",
        falls=(
            "speed thread_friction head_friction spread bearing shank_length thread_length "
            "piston_mass small_end big_end throw crush"
        ),
    ),
    "used": Trend(
        rises="torque stretch speed spread stiffness piston_mass small_end big_end throw joint_share",
        falls="head_friction bearing shank_length thread_length cap rod_length bolts",
    ),
    "torque": Trend(
        rises="torque stretch thread_friction head_friction bearing shank stiffness",
        falls="shank_length thread_length",
    ),
    "stretch": Trend(
        rises="torque stretch shank_length thread_length",
        falls="thread_friction head_friction bearing shank stiffness",
    ),
    "low": Trend(
        rises="torque stretch shank stiffness",
        falls="thread_friction head_friction spread bearing shank_length thread_length",
    ),
    "high": Trend(
        rises="torque stretch spread shank stiffness",
        falls="thread_friction head_friction bearing shank_length thread_length",
    ),
    "acceleration": Trend(rises="speed throw", falls="rod_length"),
    "load": Trend(rises="speed piston_mass small_end big_end throw", falls="cap rod_length"),
    "load_bolt": Trend(rises="speed piston_mass small_end big_end throw", falls="cap rod_length bolts"),
    "clamp": Trend(
        rises="torque stretch shank stiffness cap rod_length bolts joint_share",
        falls=(
            "speed thread_friction head_friction spread bearing shank_length thread_length "
            "piston_mass small_end big_end throw crush"
        ),
    ),
    "speed_open": Trend(
        rises="torque stretch shank stiffness cap rod_length bolts joint_share",
        falls=(
            "thread_friction head_friction spread bearing shank_length thread_length piston_mass "
            "small_end big_end throw crush"
        ),
    ),
}
