"""The small end, drawn."""

import math

from calc.core.drawing import Area, Dimension, Drawing, Line, arc
from calc.core.result import say
from calc.core.working import Number


def section(
    rod_bore: Number, bush_outside: Number, bore: Number, pin: Number, outside: Number, wall: Number
) -> Drawing:
    """Small end seen along the pin."""
    joint, inside, eye = float(rod_bore) / 2, float(bore) / 2, float(outside) / 2
    radius = min(float(pin), float(bore)) / 2
    shank = 0.45 * eye

    def disc(r: float, hatch: str) -> Area:
        return Area(arc((0, 0), r, 0, 2 * math.pi), hatch)

    return Drawing(
        "Bush in the small end",
        say(
            "Small end seen along the pin: rod bore {s}, bush outside {b}, bore of the bush {D}, pin {d},"
            " wall of the bush {t}.",
            s=rod_bore,
            b=bush_outside,
            D=bore,
            d=pin,
            t=wall,
        ),
        (
            disc(eye, "a"),
            disc(joint, "b"),
            disc(inside, ""),
            disc(radius, ""),
            *(Line(((side * shank, -0.9 * eye), (side * 0.9 * shank, -1.5 * eye))) for side in (-1, 1)),
            Line(((-1.2 * eye, 0), (1.2 * eye, 0)), "centre"),
            Line(((0, -1.6 * eye), (0, 1.15 * eye)), "centre"),
            Dimension((-inside, 0), (inside, 0), bore, 1.2 * eye, "D_H"),
            Dimension((-joint, 0), (joint, 0), rod_bore, 1.5 * eye, "D_s"),
            Dimension((-radius, 0), (radius, 0), pin, -1.75 * eye, "d"),
        ),
    )
