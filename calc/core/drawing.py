"""What a drawing or a plot shows, as data in metres; `calc.page.figure` writes it.

Coordinates: x to the right, y up. A drawing is to scale in itself unless `exaggerated` says by how much.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from functools import lru_cache
from typing import TypeVar

from calc.core.result import Text
from calc.core.working import Form, Number

Point = tuple[float, float]
Points = tuple[Point, ...]
Move = Callable[[Point], Point]


@dataclass(frozen=True)
class Area:
    """A cut face, hatched: pattern 'a' and 'b' lean against each other, 'c' is close, 'solid' is filled, ''
    is plain."""

    points: Points
    hatch: str = "a"
    role: str = "cut"

    def moved(self, at: Move) -> Area:
        return Area(tuple([at(p) for p in self.points]), self.hatch, self.role)


@dataclass(frozen=True)
class Line:
    """`style`: outline, thin, centre, hidden, band (the contact or limit that matters)."""

    points: Points
    style: str = "outline"

    def moved(self, at: Move) -> Line:
        return Line(tuple([at(p) for p in self.points]), self.style)


@dataclass(frozen=True)
class Circle:
    """A round face, hatched as an Area is; with a `style` only its line, as a Line's."""

    centre: Point
    radius: float
    hatch: str = ""
    style: str = ""

    def moved(self, at: Move) -> Circle:
        return Circle(at(self.centre), self.radius, self.hatch, self.style)


@dataclass(frozen=True)
class Dimension:
    """A dimension line from `start` to `end`, moved off by `away` along its normal (metres; sign picks the
    side)."""

    start: Point
    end: Point
    number: Number
    away: float = 0.0
    name: str = ""


@dataclass(frozen=True)
class Label:
    """Words at a point, with a leader to `target` where given. `anchor`: start, middle, end."""

    at: Point
    words: str | Text | Number
    anchor: str = "middle"
    target: Point | tuple[()] = ()


Shape = Area | Line | Circle | Dimension | Label
Face = TypeVar("Face", Area, Line, Circle, Area | Line | Circle)


@dataclass(frozen=True)
class Drawing:
    """`alt` says in words what is seen. `exaggerated` is a sentence, or empty where the drawing is to
    scale. `paper` is what is shown of the plane (left, bottom, right, top), where that is not what is drawn
    and a margin round it; what is laid out so is drawn in its order, else faces lie under lines."""

    title: str
    alt: Text
    shapes: tuple[Shape, ...]
    exaggerated: str | Text = ""
    paper: tuple[float, float, float, float] | None = None


@dataclass(frozen=True)
class Axis:
    label: str
    form: Form


@dataclass(frozen=True)
class Series:
    """A curve of (x, y) points in SI units. `style`: line, dashed, points, limit."""

    label: str
    points: Points
    style: str = "line"


@dataclass(frozen=True)
class Plot:
    title: str
    alt: Text
    x: Axis
    y: Axis
    series: tuple[Series, ...]
    marks: tuple[
        tuple[float, float, str | Text], ...
    ] = ()  # (x, y, words) where the reader's own number stands


def arc(centre: Point, radius: float, start: float, end: float, steps: int = 48) -> Points:
    """Points along an arc, angles in radians from +x, counter-clockwise."""
    x, y = centre
    return tuple([(x + radius * c, y + radius * s) for c, s in _directions(start, end, steps)])


@lru_cache(maxsize=64)  # each key draws the same arcs of other sizes
def _directions(start: float, end: float, steps: int) -> tuple[Point, ...]:
    angles = [start + (end - start) * i / steps for i in range(steps + 1)]
    return tuple([(math.cos(a), math.sin(a)) for a in angles])


def box(left: float, bottom: float, right: float, top: float) -> Points:
    """Corner points of a rectangle."""
    return ((left, bottom), (right, bottom), (right, top), (left, top))


def coils(
    x: float, bottom: float, height: float, wire: float, mean_diameter: float, active: float, total: float
) -> tuple[Area | Circle, ...]:
    """A helical spring in section on the axis `x`: the half turns behind the cut, then the cut wires, so that
    what stands in the middle can be drawn over the former. The end turns lie closed and are ground flat.
    Metres; turns may be fractions.
    """
    closed, pitch = (total - active) / 2, (height - (total - active) * wire) / active

    def middle(turn: float) -> float:
        return (
            bottom
            + wire * min(turn, closed)
            + pitch * min(max(turn - closed, 0), active)
            + wire * max(turn - closed - active, 0)
        )

    places = [(x + (-1) ** (k + 1) * mean_diameter / 2, middle(k / 2)) for k in range(int(2 * total) + 1)]

    def seen(points: Points, hatch: str) -> tuple[Area, ...]:
        kept = clip(points, x - mean_diameter, bottom, x + mean_diameter, bottom + height)
        return (Area(kept, hatch),) if kept else ()

    shapes: list[Area | Circle] = []
    for (x1, y1), (x2, y2) in zip(places[1::2], places[2::2]):
        length = math.hypot(x2 - x1, y2 - y1)
        nx, ny = -(y2 - y1) / length * wire / 2, (x2 - x1) / length * wire / 2
        shapes += seen(((x1 + nx, y1 + ny), (x2 + nx, y2 + ny), (x2 - nx, y2 - ny), (x1 - nx, y1 - ny)), "")
    for place in places:
        if bottom + wire / 2 <= place[1] <= bottom + height - wire / 2:
            shapes.append(Circle(place, wire / 2, "c"))
        else:
            shapes += seen(arc(place, wire / 2, 0, 2 * math.pi, 24), "c")
    return tuple(shapes)


def clip(points: Points, left: float, bottom: float, right: float, top: float) -> Points:
    """The part of a closed outline that lies in a rectangle (Sutherland and Hodgman); empty where none
    does."""
    if all([left <= x <= right and bottom <= y <= top for x, y in points]):
        return tuple(points)
    for axis, edge, way in ((0, left, 1), (0, right, -1), (1, bottom, 1), (1, top, -1)):
        kept: list[Point] = []
        for p, q in zip(points, (*points[1:], *points[:1])):
            a, b = (p[axis] - edge) * way, (q[axis] - edge) * way
            if a >= 0:
                kept.append(p)
            if a * b < 0:
                kept.append((p[0] + (q[0] - p[0]) * a / (a - b), p[1] + (q[1] - p[1]) * a / (a - b)))
        points = tuple(kept)
    return points


def placed(
    shapes: Iterable[Face], to: Point = (0.0, 0.0), turn: float = 0.0, mirror: bool = False
) -> tuple[Face, ...]:
    """Faces, lines and circles moved to where they belong: mirrored in x where wanted, then turned about the
    origin (radians, counter-clockwise), then shifted."""
    cos, sin = math.cos(turn), math.sin(turn)

    def at(p: Point) -> Point:
        x, y = -p[0] if mirror else p[0], p[1]
        return to[0] + x * cos - y * sin, to[1] + x * sin + y * cos

    return tuple([shape.moved(at) for shape in shapes])
