"""Outlines that many parts share."""

from calc.core.drawing import Area, Line, Point, Points, arc, box
from calc.page.engine.view import Solids


def turned(right: Points) -> Points:
    """The whole outline of a part round the y axis, from its right half: from the top down, or from the
    bottom up."""
    return (*right, *((-x, y) for x, y in reversed(right)))


def halves(right: Points, hatch: str = "a") -> Solids:
    """Both cut faces of a hollow part round the y axis, from its right one."""
    return Area(right, hatch), Area(tuple((-x, y) for x, y in right), hatch)


def plate(left: float, bottom: float, right: float, top: float, hatch: str = "") -> Area:
    return Area(box(left, bottom, right, top), hatch)


def centre(*points: Point) -> Line:
    """A centre line."""
    return Line(points, "centre")


def combed(inner: float, outer: float, low: float, high: float, pitch: float) -> Points:
    """The outline of cast fins from `low` up to `high`, thinner towards their ends."""
    count = max(2, round((high - low) / pitch))
    step = (high - low) / count
    points: list[Point] = []
    for i in range(count):
        y = low + (i + 0.5) * step
        points += [
            (inner, y - 0.27 * step),
            (outer, y - 0.15 * step),
            (outer, y + 0.15 * step),
            (inner, y + 0.27 * step),
        ]
    return tuple(points)


def rounded(left: float, bottom: float, right: float, top: float, radius: float) -> Points:
    """A rectangle with round corners."""
    quarter = 1.5707963267948966
    corners = (
        ((right - radius, top - radius), 0),
        ((left + radius, top - radius), 1),
        ((left + radius, bottom + radius), 2),
        ((right - radius, bottom + radius), 3),
    )
    return tuple(p for c, n in corners for p in arc(c, radius, n * quarter, (n + 1) * quarter, 4))
