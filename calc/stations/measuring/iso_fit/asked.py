"""What is asked of a fit: nominal size, both classes, and the sizes of the parts at hand."""

from calc.core.working import Number
from calc.declare.calculator import Inputs, choice, given, measured
from calc.stations.shared.forms import COARSE, SIZE

# What drawings of engines call for; every other class of the standard's main letters is in
# calc/reference/standards/iso_286.py.
HOLES = (
    "D9 D10 E7 E8 E9 F6 F7 F8 G6 G7 H5 H6 H7 H8 H9 H10 H11 JS6 JS7 JS8 J6 J7 J8 K6 K7 K8 M6 M7 M8 N6 N7 N8 N9"
    " P6 P7 P8 P9 R6 R7 S6 S7 T7 U7"
).split()
SHAFTS = (
    "d8 d9 d10 e7 e8 e9 f6 f7 f8 g5 g6 g7 h5 h6 h7 h8 h9 h10 h11 js5 js6 js7 j5 j6 j7 k5 k6 k7 m5 m6 m7 n5 n6"
    " n7 p5 p6 p7 r5 r6 r7 s5 s6 s7 t6 t7 u6 u7"
).split()


class In(Inputs):
    size: Number = given(
        "Nominal size", "D", COARSE, hard="0.5 to 500 mm", usual="3 to 500 mm", example="25 mm"
    )
    hole: str = choice("Hole, its class", {name: name for name in HOLES}, exact=True, must=True, example="H7")
    shaft: str = choice(
        "Shaft, its class", {name: name for name in SHAFTS}, exact=True, must=True, example="p6"
    )
    hole_read: Number | None = measured(
        "Your hole", "D_a", SIZE, tool="a bore gauge set in a ring", hard="0.4 to 530 mm"
    )
    shaft_read: Number | None = measured("Your shaft", "d_a", SIZE, tool="a micrometer", hard="0.4 to 530 mm")
