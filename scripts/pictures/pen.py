"""What the pictures are put together from: marks, words, arrows, and shapes moved to their place.

A picture is laid out on paper 360 units wide (`calc.page.svg`), y up; words are 12 units high. Where it
says that it is to scale, one unit is as many millimetres all over it.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import replace

from calc.core.drawing import Area, Circle, Dimension, Drawing, Label, Line, Point, Points, Shape, arc, box
from calc.core.result import Text, as_text
from calc.core.working import Number
from calc.page.drawing import extent
from calc.page.svg import WIDTH, length_of
from scripts.pictures.sheet import Sheet

Shapes = tuple[Shape, ...]
Words = str | Text | Number

LINE = 14.0  # from one line of words to the next
EDGE = 3.0  # above and below all
NOT_TO_SCALE = "not to scale"


def sketch(
    caption: str, alt: str | Text, *parts: object, scale: str = NOT_TO_SCALE, sizes: Sheet | None = None
) -> Drawing:
    """A picture as high as what is drawn. `parts` are shapes, in whatever heaps they were made; `sizes` is
    the sheet that they took sizes from, if any. An empty `scale` says that the picture is to scale."""
    told = scale
    if sizes:  # without a size of the sheet nothing is to its scale
        told = f"{scale or 'to scale'}; sizes of {sizes.name}" if sizes.shown else NOT_TO_SCALE
    shapes = tuple(_each(parts))
    heights = [y + more for shape in shapes for _, y in extent(shape) for more in _beyond(shape)]
    paper = (0.0, min(heights) - EDGE, float(WIDTH), max(heights) + EDGE)
    return Drawing(caption, as_text(alt), shapes, told, paper)


def _beyond(shape: Shape) -> tuple[float, ...]:
    """How far a shape reaches below and above the points between which it lies."""
    return (-3.0, 10.0) if isinstance(shape, Label) else (0.0,)


def _each(parts: object) -> Iterator[Shape]:
    if isinstance(parts, Shape):
        yield parts
    elif isinstance(parts, Iterable):
        for part in parts:
            yield from _each(part)


def placed(
    parts: object, x: float = 0.0, y: float = 0.0, turn: float = 0.0, times: float = 1.0, flip: bool = False
) -> Shapes:
    """Shapes made smaller or larger, mirrored left to right, turned by degrees against the clock about
    0, 0, and moved: in this order."""
    c, s, side = math.cos(math.radians(turn)), math.sin(math.radians(turn)), -1.0 if flip else 1.0

    def at(p: Point) -> Point:
        px, py = p[0] * times * side, p[1] * times
        return (x + px * c - py * s, y + px * s + py * c)

    def one(shape: Shape) -> Shape:
        if isinstance(shape, Circle):
            return replace(shape, centre=at(shape.centre), radius=shape.radius * times)
        if isinstance(shape, Dimension):
            return replace(shape, start=at(shape.start), end=at(shape.end), away=shape.away * times * side)
        if isinstance(shape, Label):
            return replace(shape, at=at(shape.at), target=at(shape.target) if shape.target else ())
        return shape.moved(at)

    return tuple(map(one, _each(parts)))


# words


def words(x: float, y: float, *lines: Words, anchor: str = "start") -> Shapes:
    """Lines of words, the first at that height."""
    return tuple(Label((x, y - LINE * i), line, anchor) for i, line in enumerate(lines))


def note(x: float, y: float, target: Point, *lines: Words, anchor: str = "start") -> Shapes:
    """Words with a leader to what they are about, which ends in a dot there."""
    long = max(
        length_of(line.text() if isinstance(line, Number) else as_text(line).plain()) for line in lines
    )
    left = x - {"start": 0.0, "middle": long / 2, "end": long}[anchor]
    if left - 3 <= target[0] <= left + long + 3:
        end = (x, y + 12) if target[1] > y else (x, y - LINE * (len(lines) - 1) - 4)
    else:
        end = (left - 3 if target[0] < left else left + long + 3, y + 4)
    return (*words(x, y, *lines, anchor=anchor), Line((end, target), "thin"), dot(target))


def dot(at: Point, radius: float = 1.9) -> Circle:
    return Circle(at, radius, "solid")


def right(x: float, y: float, *lines: str) -> Shapes:
    """A tick, and in words what is right."""
    x, lines = _signed(x, "Right", lines)
    tick = Line(((x, y + 4), (x + 4, y), (x + 12, y + 10)), "good")
    return (tick, *words(x + 17, y, *lines))


def wrong(x: float, y: float, *lines: str) -> Shapes:
    """A cross, and in words what is wrong."""
    x, lines = _signed(x, "Wrong", lines)
    cross = (Line(((x + 1, y), (x + 11, y + 10)), "bad"), Line(((x + 1, y + 10), (x + 11, y)), "bad"))
    return (*cross, *words(x + 17, y, *lines))


def _signed(x: float, sign: str, lines: tuple[str, ...]) -> tuple[float, tuple[str, ...]]:
    """The lines behind the word for the sign, and where they begin so that they stay on the paper."""
    lines = (f"{sign}: {lines[0]}", *lines[1:])
    return min(x, WIDTH - 19 - max(map(length_of, lines))), lines


def numbered(x: float, y: float, number: str | int, radius: float = 9.0) -> Shapes:
    """A number in a circle: a place, or a step."""
    return (Circle((x, y), radius), Label((x, y - 4.2), str(number)))


# movement


def arrow(*points: Point, double: bool = False) -> Shapes:
    """A movement along these points, to the last of them."""
    tips = [_tip(points[-1], points[-2])] + ([_tip(points[0], points[1])] if double else [])
    return (Line(points, "motion"), *tips)


def turning(centre: Point, radius: float, start: float, end: float, double: bool = False) -> Shapes:
    """A movement along an arc, degrees from +x against the clock."""
    steps = max(6, int(abs(end - start) / 9))
    return arrow(*arc(centre, radius, math.radians(start), math.radians(end), steps), double=double)


def _tip(at: Point, behind: Point, long: float = 9.0) -> Area:
    length = math.hypot(at[0] - behind[0], at[1] - behind[1]) or 1.0
    ux, uy = (at[0] - behind[0]) / length, (at[1] - behind[1]) / length
    tip, back = (at[0] + ux * 4, at[1] + uy * 4), (at[0] - ux * (long - 4), at[1] - uy * (long - 4))
    wide = long * 0.42
    return Area(
        (tip, (back[0] - uy * wide, back[1] + ux * wide), (back[0] + uy * wide, back[1] - ux * wide)),
        "solid",
        "motion",
    )


# shapes


def disc(at: Point, radius: float, hatch: str = "") -> Circle:
    """A round face."""
    return Circle(at, radius, hatch)


def circle(at: Point, radius: float, style: str = "outline") -> Circle:
    """A round line."""
    return Circle(at, radius, style=style)


def curve(at: Point, radius: float, start: float, end: float, style: str = "outline") -> Line:
    """An arc, degrees from +x against the clock."""
    return Line(bow(at, radius, start, end), style)


def bow(at: Point, radius: float, start: float, end: float) -> Points:
    """Points of an arc, degrees, as many as its length asks for."""
    a, b = math.radians(start), math.radians(end)
    return arc(at, radius, a, b, max(6, min(40, int(0.85 * math.sqrt(radius) * abs(b - a)))))


def ring(at: Point, outer: float, inner: float, hatch: str = "a", start: float = 0, end: float = 360) -> Area:
    """A ring, or a part of one, cut."""
    return Area((*bow(at, outer, start, end), *bow(at, inner, end, start)), hatch)


def rect(left: float, bottom: float, right: float, top: float, hatch: str = "") -> Area:
    return Area(box(left, bottom, right, top), hatch)


def both_sides(*points: Point, hatch: str = "a") -> Shapes:
    """A face right of 0, and the same left of it."""
    return tuple(Area(tuple((side * x, y) for x, y in points), hatch) for side in (-1, 1))


def line(*points: Point, style: str = "outline") -> Line:
    return Line(points, style)


def centre(*points: Point) -> Line:
    return Line(points, "centre")


def thread(x: float, low: float, high: float, deep: float, pitch: float) -> Points:
    """The flanks of a thread along an upright edge, from low to high; `deep` to the right, or to the left
    where it is negative."""
    turns = max(1, round((high - low) / pitch))
    step = (high - low) / turns
    points: list[Point] = [(x, low)]
    for i in range(turns):
        points += [(x + deep, low + step * (i + 0.5)), (x, low + step * (i + 1))]
    return tuple(points)
