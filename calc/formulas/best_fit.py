"""The line, and the plane, from which a handful of points stray least: the largest deviation as small as
it can
be (Chebyshev; the minimum zone of ISO 1101), found exactly among the few candidates that there are.

The zone's width is a convex function of the slopes, made of flat pieces. So it is least where a line runs
along two of the points, and a plane along three of them, or along two pairs.

Lengths in any one unit. A few points only: the work grows with the fourth power of their number.
"""

from collections.abc import Iterator
from itertools import combinations
from typing import NamedTuple

Point2 = tuple[float, float]  # place, height
Point3 = tuple[float, float, float]  # x, y, height
Slopes = tuple[float, float]  # of a plane, to the right and upwards
SAME = 1e-12  # widths nearer to each other than this are one
FLAT = 1e-9  # of a triangle's area against its sides: less is no triangle


class Line(NamedTuple):
    """height = start + slope·place; no point lies farther off than `most`."""

    start: float
    slope: float
    most: float

    def at(self, place: float) -> float:
        return self.start + self.slope * place


class Plane(NamedTuple):
    """height = start + right·x + up·y; all points lie within `width`, half of it to either side."""

    start: float
    right: float
    up: float
    width: float

    def at(self, x: float, y: float) -> float:
        return self.start + self.right * x + self.up * y


def best_line(points: list[Point2]) -> Line:
    """Of two or more points at places that differ; ValueError where they do not."""
    slopes = [(b[1] - a[1]) / (b[0] - a[0]) for a, b in combinations(points, 2) if b[0] != a[0]]
    if not slopes:
        raise ValueError("points at one place only make no line")

    def along(slope: float) -> Line:
        off = [height - slope * place for place, height in points]
        return Line((max(off) + min(off)) / 2, slope, (max(off) - min(off)) / 2)

    found = [along(slope) for slope in slopes]
    least = min(line.most for line in found)
    return min((line for line in found if line.most <= least + SAME), key=lambda line: abs(line.slope))


def best_plane(points: list[Point3]) -> Plane:
    """Of three or more points that do not lie in one line, seen along the heights; ValueError where they do.
    Of planes that are as good the one that leans least."""
    found = [zone(points, *slopes) for slopes in _slopes(points)]
    if not found:
        raise ValueError("points in one line make no plane")
    least = min(plane.width for plane in found)
    return min((plane for plane in found if plane.width <= least + SAME), key=lambda p: p.right**2 + p.up**2)


def zone(points: list[Point3], right: float, up: float) -> Plane:
    """The narrowest zone of those slopes round all points."""
    off = [h - right * x - up * y for x, y, h in points]
    return Plane((max(off) + min(off)) / 2, right, up, max(off) - min(off))


def resting_plane(points: list[Point3], middle: Point2) -> Plane:
    """The plane on which something flat comes to rest whose weight bears on `middle`: it goes through
    three of
    the highest points round that place, and none stands above it. `width` is how deep the lowest lies
    under it.
    ValueError where the points lie in one line."""
    best, best_height = None, 0.0
    for right, up in _through_three(points):
        top = max(h - right * x - up * y for x, y, h in points)
        height = top + right * middle[0] + up * middle[1]
        if best is None or height < best_height - SAME:
            best, best_height = Plane(top, right, up, zone(points, right, up).width), height
    if best is None:
        raise ValueError("points in one line make no plane")
    return best


def _slopes(points: list[Point3]) -> Iterator[Slopes]:
    """Slopes of every plane along three points, or along two pairs of them."""
    yield from _through_three(points)
    edges = [({i, j}, _step(a, b)) for (i, a), (j, b) in combinations(list(enumerate(points)), 2)]
    for (ends, one), (others, other) in combinations(edges, 2):
        if not ends & others:
            yield from _along(one, other)


def _through_three(points: list[Point3]) -> Iterator[Slopes]:
    for a, b, c in combinations(points, 3):
        yield from _along(_step(a, b), _step(a, c))


def _step(a: Point3, b: Point3) -> Point3:
    return b[0] - a[0], b[1] - a[1], b[2] - a[2]


def _along(one: Point3, other: Point3) -> Iterator[Slopes]:
    """Slopes of the plane that runs along two directions, unless these are one."""
    (x1, y1, h1), (x2, y2, h2) = one, other
    area = x1 * y2 - x2 * y1
    if abs(area) <= FLAT * (abs(x1) + abs(y1)) * (abs(x2) + abs(y2)):
        return
    yield (h1 * y2 - h2 * y1) / area, (x1 * h2 - x2 * h1) / area
