"""The hand's tools, as pictures show them: each stands about its own 0, 0, and is `placed` from there."""

from __future__ import annotations

import math

from calc.core.drawing import Area, Line
from scripts.pictures.pen import Shapes, bow, disc, line, rect


def dial(x: float, y: float, radius: float, reading: float = 0.0) -> Shapes:
    """A dial gauge's face: `reading` turns its needle, degrees with the clock from upright."""
    ticks = (
        Line((_polar(x, y, radius, a), _polar(x, y, radius * 0.8, a)), "thin") for a in range(0, 360, 45)
    )
    tip = _polar(x, y, radius * 0.75, 90 - reading)
    return (disc((x, y), radius), *ticks, line((x, y), tip), disc((x, y), radius * 0.1, "solid"))


def _polar(x: float, y: float, radius: float, degrees: float) -> tuple[float, float]:
    a = math.radians(degrees)
    return x + radius * math.cos(a), y + radius * math.sin(a)


def bore_gauge(across: float, stem: float = 95.0, reading: float = 0.0) -> Shapes:
    """A two-point bore gauge, its feet `across` apart on 0, 0, its stem up to the dial."""
    half = across / 2
    return (
        rect(-4, 4, 4, stem),
        rect(-half + 12, -7, half - 12, 7),
        *(
            Area(
                (
                    (side * (half - 12), -4),
                    (side * (half - 3), -4),
                    *((side * px, py) for px, py in bow((half - 3, 0), 4, -60, 60)),
                    (side * (half - 3), 4),
                    (side * (half - 12), 4),
                ),
                "",
            )
            for side in (-1, 1)
        ),
        *dial(0, stem + 17, 19, reading),
    )


def micrometer(gap: float, deep: float = 46.0) -> Shapes:
    """A micrometer: its faces at 0, 0 and `gap`, 0, its frame below, its thimble to the right."""
    half, mid = gap / 2 + 15, gap / 2
    outer, inner = bow((mid, 0), half + 13, 180, 360), bow((mid, 0), half, 360, 180)
    squeeze = deep / (half + 13)
    frame = tuple((px, -6 + py * squeeze) for px, py in (*outer, *inner))
    return (
        Area(frame, ""),
        rect(-28, -7, -9, 7),
        rect(-9, -4, 0, 4),
        rect(gap, -4, gap + 16, 4),
        rect(gap + 15, -7, gap + 42, 7),
        Area(
            ((gap + 42, -7), (gap + 50, -11), (gap + 82, -11), (gap + 82, 11), (gap + 50, 11), (gap + 42, 7)),
            "",
        ),
        rect(gap + 82, -6, gap + 94, 6),
        *(line((gap + x, -7), (gap + x, -3), style="thin") for x in range(20, 42, 5)),
        *(line((gap + 54, y), (gap + 60, y), style="thin") for y in (-6, -2, 2, 6)),
    )
