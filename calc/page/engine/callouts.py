"""Where the words of a view's places stand: in its margins, each a target for a thumb, with a line to its
place."""

from collections.abc import Callable
from dataclasses import dataclass

from calc.core.drawing import Point
from calc.page.drawing import extent
from calc.page.engine.view import Place, View
from calc.page.svg import WIDTH

TOUCH = 44  # units, and pixels on a phone: what a thumb needs
COLUMN = 72
GAP = 10  # between words and drawing
EDGE = 3


@dataclass(frozen=True)
class Room:
    """How much of it words and drawing take, units: the height of a target, and of the tallest drawing beside
    which words stand."""

    touch: float
    tallest: float


SCREEN = Room(TOUCH, 330)
PAPER = Room(62, 165)  # nothing is touched; up to four lines stand at a place


@dataclass(frozen=True)
class Callout:
    """A target (left, top, width, height) in the paper's units; the line to its place begins at `foot` and
    ends at `tip`."""

    place: Place
    box: tuple[float, float, float, float]
    foot: Point
    tip: Point
    side: str  # left, right, top, bottom


@dataclass(frozen=True)
class Layout:
    """A view on its paper: `at` turns metres into units, of which `scale` go to a metre."""

    height: float
    scale: float
    at: Callable[[Point], Point]
    callouts: tuple[Callout, ...]


def laid_out(view: View, room: Room = SCREEN) -> Layout:
    return _wide(view, room) if view.wide else _upright(view, room)


def bounds(view: View) -> tuple[float, float, float, float]:
    """Left, bottom, right and top of all that is drawn, m."""
    points = [p for s in (*view.shapes, *view.over) for p in extent(s)]
    for place in view.places:
        part = [p for s in place.part for p in extent(s)]
        points += [place.at, place.end or place.at, *part, *(t.at(p) for t in place.twins for p in part)]
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return min(xs), min(ys), max(xs), max(ys)


def _placer(around, scale: float, middle: Point) -> Callable[[Point], Point]:
    left = middle[0] - (around[0] + around[2]) / 2 * scale
    top = middle[1] + (around[1] + around[3]) / 2 * scale

    def at(p: Point) -> Point:
        return left + p[0] * scale, top - p[1] * scale

    return at


def _upright(view: View, room: Room) -> Layout:
    """Words left and right of the drawing, half of them each."""
    around = bounds(view)
    across = WIDTH - 2 * (COLUMN + GAP)
    scale = min(across / (around[2] - around[0]), room.tallest / (around[3] - around[1]))
    named = [p for p in view.places if p.of]
    rows = (len(named) + 1) // 2
    height = max((around[3] - around[1]) * scale + 2 * EDGE, rows * room.touch)
    at = _placer(around, scale, (WIDTH / 2, height / 2))
    by_x = sorted(named, key=lambda p: _middle(p, at))
    callouts = (
        *_column(by_x[: len(by_x) // 2], "left", height, room.touch, at),
        *_column(by_x[len(by_x) // 2 :], "right", height, room.touch, at),
    )
    return Layout(height, scale, at, callouts)


def _wide(view: View, room: Room) -> Layout:
    """Words above and below the drawing."""
    around = bounds(view)
    scale = (WIDTH - 2 * EDGE) / (around[2] - around[0])
    named = [p for p in view.places if p.of]
    height = (around[3] - around[1]) * scale + 2 * (room.touch + GAP if named else EDGE)
    at = _placer(around, scale, (WIDTH / 2, height / 2))
    by_y = sorted(named, key=lambda p: at(p.at)[1])
    half = len(by_y) // 2
    callouts = (
        *_row(by_y[:half], "top", height, room.touch, at),
        *_row(by_y[half:], "bottom", height, room.touch, at),
    )
    return Layout(height, scale, at, callouts)


def _middle(place: Place, at) -> Point:
    (x, y), (x2, y2) = at(place.at), at(place.end or place.at)
    return (x + x2) / 2, (y + y2) / 2


def _tip(place: Place, at, side: str) -> Point:
    """Where the line to a place ends: on what is measured across, its near end; on what is measured along,
    its middle."""
    if place.end is None:
        return at(place.at)
    a, b = at(place.at), at(place.end)
    level, upright = abs(a[1] - b[1]) < abs(a[0] - b[0]) / 2, abs(a[0] - b[0]) < abs(a[1] - b[1]) / 2
    if side in ("left", "right") and level:
        return min(a, b) if side == "left" else max(a, b)
    if side in ("top", "bottom") and upright:
        return min(a, b, key=lambda p: p[1]) if side == "top" else max(a, b, key=lambda p: p[1])
    return (a[0] + b[0]) / 2, (a[1] + b[1]) / 2


def _column(places: list[Place], side: str, height: float, touch: float, at) -> list[Callout]:
    tips = {p.of: _tip(p, at, side) for p in places}
    foot = COLUMN if side == "left" else WIDTH - COLUMN
    order = sorted(places, key=lambda p: tips[p.of][1])
    tops = _apart([tips[p.of][1] - touch / 2 for p in order], touch, height)
    order = _uncrossed(order, [(foot, t + touch / 2) for t in tops], tips)
    left = 0 if side == "left" else foot
    return [
        Callout(p, (left, t, COLUMN, touch), (foot, t + touch / 2), tips[p.of], side)
        for p, t in zip(order, tops)
    ]


def _row(places: list[Place], side: str, height: float, touch: float, at) -> list[Callout]:
    tips = {p.of: _tip(p, at, side) for p in places}
    wide = WIDTH / max(len(places), 1)
    top = 0 if side == "top" else height - touch
    foot = touch if side == "top" else height - touch
    order = sorted(places, key=lambda p: tips[p.of][0])
    order = _uncrossed(order, [((i + 0.5) * wide, foot) for i in range(len(order))], tips)
    return [
        Callout(p, (i * wide, top, wide, touch), ((i + 0.5) * wide, foot), tips[p.of], side)
        for i, p in enumerate(order)
    ]


def _apart(wanted: list[float], pitch: float, room: float) -> list[float]:
    """Places as near as may be to where they are wanted (in rising order), a pitch apart, within the room."""
    placed: list[float] = []
    for w in wanted:
        placed.append(max(w, 0, placed[-1] + pitch if placed else 0))
    most = room - pitch
    for i in reversed(range(len(placed))):
        placed[i] = min(placed[i], most)
        most = placed[i] - pitch
    return placed


def _uncrossed(order: list[Place], feet: list[Point], tips: dict[str, Point]) -> list[Place]:
    """Neighbours change seats until no two lines cross, or as few as can be in some rounds."""
    for _ in range(len(order)):
        changed = False
        for i in range(len(order)):
            for j in range(i + 1, len(order)):
                a, b = order[i], order[j]
                if _cross(feet[i], tips[a.of], feet[j], tips[b.of]) and not _cross(
                    feet[i], tips[b.of], feet[j], tips[a.of]
                ):
                    order[i], order[j] = b, a
                    changed = True
        if not changed:
            break
    return order


def _cross(p: Point, q: Point, r: Point, s: Point) -> bool:
    def left(a: Point, b: Point, c: Point) -> float:
        return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])

    return left(p, q, r) * left(p, q, s) < 0 and left(r, s, p) * left(r, s, q) < 0
