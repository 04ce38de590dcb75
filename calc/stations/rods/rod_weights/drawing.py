"""The rod lying level: big end on the balance, small end hung; the pads that may lose metal are filled."""

import math

from calc.core.drawing import Area, Dimension, Drawing, Label, Line, arc, box
from calc.core.result import say
from calc.core.working import Number


def beam(centre_distance: Number, beyond_big: Number, beyond_small: Number) -> Drawing:
    L, eb, es = float(centre_distance), float(beyond_big), float(beyond_small)
    big, small = 0.2 * L, 0.09 * L
    pad = 0.03 * L

    def ring(x: float, r: float, inner: float) -> tuple[Area, Area]:
        return Area(arc((x, 0), r, 0, 2 * math.pi), "a"), Area(arc((x, 0), inner, 0, 2 * math.pi), "")

    return Drawing(
        "Weighing one end",
        say(
            "Rod level, {L} from bore to bore: the big end on the balance, the small end hung at its centre."
            " Pads lie {b} and {s} beyond the centres.",
            L=centre_distance,
            b=beyond_big,
            s=beyond_small,
        ),
        (
            Area(box(0, -0.05 * L, L, 0.05 * L), "a"),
            *ring(0, 1.35 * big, big),
            *ring(L, 1.55 * small, small),
            Area(box(-eb - pad, -pad, -eb + pad, pad), "solid"),
            Area(box(L + es - pad, -pad, L + es + pad, pad), "solid"),
            Area(((0, -big), (-0.06 * L, -big - 0.14 * L), (0.06 * L, -big - 0.14 * L)), ""),
            Area(box(-0.22 * L, -big - 0.24 * L, 0.22 * L, -big - 0.14 * L), "b"),
            Line(((L, small), (L, 0.5 * L))),
            Label((0, -big - 0.36 * L), "balance"),
            Label((L, 0.54 * L), "hung"),
            Dimension((0, 0), (L, 0), centre_distance, 0.36 * L, "L"),
        ),
        "lengths to scale; the rod's shape is the example's",
    )
