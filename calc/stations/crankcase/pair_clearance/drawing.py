"""The shaft in its bore, cut through the axis, the room between them drawn larger."""

import math

from calc.core.drawing import Area, Dimension, Drawing, Line, box
from calc.core.result import say
from calc.core.working import Number
from calc.stations.shared.drawings import on_both_sides


def section(bore: Number, shaft: Number, clearance: Number) -> Drawing:
    R, gap = float(bore) / 2, abs(float(clearance)) / 2
    times = max(1, math.floor(0.08 * R / gap)) if gap > 1e-7 else 1
    r = R - math.copysign(gap * times, float(clearance))
    tall, out = 1.2 * R, 1.7 * R
    return Drawing(
        "Shaft and bore, the room between them enlarged",
        say(
            "Shaft of {d} in a bore of {D}, cut: {c} between them on the diameter.",
            d=shaft,
            D=bore,
            c=clearance,
        ),
        (
            *on_both_sides((((R, -tall), (out, -tall), (out, tall), (R, tall)), "a")),
            Area(box(-r, -1.4 * tall, r, 1.4 * tall), "b"),
            Line(((0, -1.6 * tall), (0, 1.6 * tall)), "centre"),
            Dimension((-R, tall), (R, tall), bore, 0.9 * tall, "D"),
            Dimension((-r, -1.4 * tall), (r, -1.4 * tall), shaft, -0.4 * tall, "d"),
        ),
        say("room drawn {n} times as wide", n=str(times)),
    )
