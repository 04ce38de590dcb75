"""Drawings that several calculators make alike."""

import math

from calc.core.drawing import Area, Points


def on_both_sides(*faces: tuple[Points, str]) -> tuple[Area, ...]:
    """Cut faces right of the axis, each with its hatch, and the same left of it: turned parts, cut through
    their axis."""
    return tuple(
        Area(tuple((side * x, y) for x, y in points), hatch) for side in (-1, 1) for points, hatch in faces
    )


def cap(a: float, h: float) -> Points:
    """A round cap from edge to edge, left to right: its edge of radius `a` at height 0, its top at `h`; below
    where that is less than nothing, m."""
    high = abs(h)
    if high < 1e-9:
        return ((-a, 0.0), (a, 0.0))
    radius = (a * a + high * high) / (2 * high)
    half, side = math.atan2(a, radius - high), math.copysign(1.0, h)
    angles = [half * (n / 24 - 1) for n in range(49)]
    return tuple(
        (radius * math.sin(phi), side * (radius * math.cos(phi) - (radius - high))) for phi in angles
    )
