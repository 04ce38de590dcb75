"""Drawings that several calculators make alike."""

from calc.core.drawing import Area, Points


def on_both_sides(*faces: tuple[Points, str]) -> tuple[Area, ...]:
    """Cut faces right of the axis, each with its hatch, and the same left of it: turned parts, cut through
    their axis."""
    return tuple(
        Area(tuple((side * x, y) for x, y in points), hatch) for side in (-1, 1) for points, hatch in faces
    )
