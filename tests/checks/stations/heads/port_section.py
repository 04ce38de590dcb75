"""Outside numbers for ports, asked of the calculator. Those marked library are worked anew in test_port_section.py."""
from math import pi, sqrt

from tests.checks import Check, Trend, asked

PIPE = dict(shape="round", width="32 mm", manifold_width="32 mm", manifold_height="32 mm", bore="85.5 mm", stroke="69 mm", engine_speed="4500 1/min")
DEE = dict(shape="d", width="36 mm", height="32 mm", corner="5 mm", manifold_width="36 mm", manifold_height="32 mm")
ROUNDS = dict(shape="round", width="29 mm", manifold_width="30 mm")
QUAD = "scipy quad of the width over the height"

CHECKS = [
    Check("port-section", "mean piston speed at a stroke of 69 mm, m/s", PIPE, 10.35, 1e-9, asked("port-section", "piston_speed", "m/s"), "twice the stroke, 75 times a second", "limit"),
    Check("port-section", "gas speed in a round port of 32 mm, m/s", PIPE, 73.888, 0.0005, asked("port-section", "speed", "m/s"), "continuity: 10.35·(85.5/32)²", "limit"),
    Check("port-section", "hydraulic diameter of a round port of 32 mm, mm", PIPE, 32.0, 1e-9, asked("port-section", "hydraulic", "mm"), "of a circle it is the diameter", "limit"),
    Check("port-section", "area of an oval port as wide as high, mm²", PIPE | dict(shape="oval", height="32 mm"), 256 * pi, 1e-6, asked("port-section", "area", "mm²"), "it is a circle", "limit"),
    Check("port-section", "area of a D of that size with corners of 16 mm, mm²", PIPE | dict(shape="d", height="32 mm", corner="16 mm"), 256 * pi, 1e-6, asked("port-section", "area", "mm²"), "it is a circle", "limit"),
    Check("port-section", "area of a slot 36 by 30 mm, mm²", dict(), 886.858, 0.0005, asked("port-section", "area", "mm²"), QUAD, "library"),
    Check("port-section", "area of a D 36 by 32 mm, corners of 5 mm, mm²", DEE, 1002.208, 0.0005, asked("port-section", "area", "mm²"), QUAD, "library"),
    Check("port-section", "way round that D, mm", DEE, 116.2566, 0.00005, asked("port-section", "perimeter", "mm"), "sympy: arcs and straights integrated", "library"),
    Check("port-section", "step facing the flow, 30 mm pipe into 29 mm port, 1 mm aside, mm", ROUNDS | dict(aside="1 mm"), 1.5, 1e-6, asked("port-section", "facing", "mm"), "half the difference and the offset", "limit"),
    Check("port-section", "and falling away on the other side, mm", ROUNDS | dict(aside="1 mm"), 0.5, 1e-6, asked("port-section", "drop", "mm"), "the offset less half the difference", "limit"),
    Check("port-section", "step of equal rounds 0.3 mm aside and 0.4 mm higher, mm", dict(shape="round", manifold_width="36 mm", aside="0.3 mm", above="0.4 mm"), 0.5, 0.0002, asked("port-section", "facing", "mm"),
          "offset along the line of the middles, 3-4-5", "limit"),
    Check("port-section", "step of a round port of 36 mm behind a square-cornered D, mm", dict(shape="round", width="36 mm", manifold_shape="d", manifold_width="36 mm", manifold_height="36 mm", corner="0 mm"),
          18 * (1 - 1 / sqrt(2)), 0.001, asked("port-section", "facing", "mm"), "at 45° down the circle stands R·(1 − 1/√2) from both sides", "limit"),
]

TRENDS = {
    "area": Trend(rises="width height", falls="corner"),
    "speed": Trend(rises="engine_speed bore stroke corner", falls="width height"),
    "perimeter": Trend(rises="width height", falls="corner"),
    "hydraulic": Trend(rises="width height"),
    "equal_round": Trend(rises="width height", falls="corner"),
    "manifold_area": Trend(rises="manifold_width manifold_height", falls="corner"),
    "ratio": Trend(rises="manifold_width manifold_height"),
    "piston_speed": Trend(rises="engine_speed stroke"),
    "swept": Trend(rises="bore stroke"),
    "speed_limit": Trend(rises="width height most_speed", falls="bore stroke corner"),
}
