"""A view of an engine as SVG: each place a link, with a target that a thumb can hit."""

import math
import re
from collections.abc import Iterator, Mapping
from dataclasses import replace
from itertools import groupby

from calc.core.drawing import Circle, Line, Point, box
from calc.core.result import Text
from calc.core.working import Number
from calc.page.drawing import hatches, shape_drawn
from calc.page.engine.callouts import PAPER, SCREEN, Callout, Layout, laid_out
from calc.page.engine.view import Place, Solids, Twin, View
from calc.page.html import Html, both, children, el
from calc.page.svg import TEXT, WIDTH, path_by_steps, trimmed

Words = str | Text | Number
Lines = Words | tuple[Words, ...]
ARROW = 6.0
LINE = 13  # from one line of words to the next
DOT = "m-2 0a2 2 0 1 0 4 0a2 2 0 1 0-4 0"


def picture(
    view: View, id: str, written: Mapping[str, Lines] | None = None, *, on_paper: bool = False
) -> Html:
    """The view as one svg. `id` keeps its patterns' names apart on a page. A place of a size is a link to
    `#size-<id of the size>`, one of another view to `#view-<its name>`. With `written` only the sizes in it
    are shown, each with what it says under its words. `on_paper` it is smaller and has no links.
    """
    if written is not None:
        view = _only(view, written)
    shown = laid_out(view, PAPER if on_paper else SCREEN)
    solids = (*view.shapes, *(s for p in view.places for s in p.part), *view.over)
    return el(
        "svg",
        hatches(solids, id),
        *_painted(view.shapes, shown, id),
        *(_part(place, shown, id, f"{id}-{i}") for i, place in enumerate(view.places) if place.part),
        *_painted(view.over, shown, id),
        *_callouts(shown, written or {}, "g" if on_paper else "a"),
        viewBox=f"0 0 {WIDTH} {trimmed(shown.height)}",
        role="img" if on_paper else "group",
        aria_label=view.title,
        class_="engine-view whole" if any(p.part for p in view.places) else "engine-view",
    )


def _only(view: View, written: Mapping[str, Lines]) -> View:
    """With the places of these sizes only; parts stay drawn, and are no links."""
    places = (
        p if p.of in written else replace(p, of="", words="")
        for p in view.places
        if p.of in written or p.part
    )
    return replace(view, places=tuple(places))


def _painted(shapes: Solids, shown: Layout, id: str) -> Iterator[Html]:
    """Shapes in their order, but those that were cut away entirely; neighbouring lines of a style are one
    path."""
    left = [s for s in shapes if isinstance(s, Circle) or s.points]
    for style, run in groupby(left, key=lambda s: s.style if isinstance(s, Line) else None):
        if style is None:
            yield from (shape_drawn(s, shown.at, shown.scale, id, path_by_steps) for s in run)
        else:
            paths = [path_by_steps(map(shown.at, s.points), False) for s in run if isinstance(s, Line)]
            yield el("path", d=Html("".join(paths)), class_=f"line {style}")


def _part(place: Place, shown: Layout, id: str, name: str) -> Html:
    """A part, once more for each of its twins; a link where it is shown larger."""
    drawn = _painted(place.part, shown, id)
    inside = (
        [
            el("g", *drawn, id=name),
            *(el("use", href=f"#{name}", transform=_moved(t, shown)) for t in place.twins),
        ]
        if place.twins
        else [*drawn]
    )
    if not place.of:
        return children(*inside)
    return el("a", *inside, href=_address(place), class_="part", tabindex="-1", aria_hidden="true")


def _moved(twin: Twin, shown: Layout) -> str:
    x, y = shown.at((0.0, 0.0))
    across = x * (1 - twin.x) + twin.shift[0] * shown.scale
    down = y * (1 - twin.y) - twin.shift[1] * shown.scale
    return f"matrix({twin.x} 0 0 {twin.y} {trimmed(across)} {trimmed(down)})"


def _address(place: Place) -> str:
    return f"#{'size' if place.size else 'view'}-{place.of}"


def _callouts(shown: Layout, written: Mapping[str, Lines], tag: str) -> Iterator[Html]:
    """The places' words, in the order in which they are read: each margin from its top, or its left."""
    for side, run in groupby(shown.callouts, key=lambda c: c.side):
        anchor = {"left": "end", "right": "start"}.get(side, "middle")
        yield el("g", *(_callout(c, shown, written.get(c.place.of), tag) for c in run), text_anchor=anchor)


def _callout(c: Callout, shown: Layout, size: Lines | None, tag: str) -> Html:
    if tag == "g":
        return el("g", el("path", d=Html(_pointer(c, shown)), class_="dim"), _words(c, size))
    left, top, wide, high = c.box
    return el(
        tag,
        el("path", d=path_by_steps(box(left, top, left + wide, top + high), True), class_="hit"),
        el("path", d=Html(_pointer(c, shown)), class_="dim"),
        _words(c, size),
        href=_address(c.place),
        data_feature=c.place.of if c.place.size else None,
        aria_label=_called(c.place),
    )


def _pointer(c: Callout, shown: Layout) -> str:
    """The line to the place: to a dot on it, or to the arrows between which it is measured."""
    line: str = path_by_steps((c.foot, c.tip), False)
    if c.place.end is None:
        return line + DOT
    a, b = shown.at(c.place.at), shown.at(c.place.end)
    length = math.hypot(b[0] - a[0], b[1] - a[1])
    if length < 1:
        return line + DOT
    ux, uy = (b[0] - a[0]) / length, (b[1] - a[1]) / length
    line += _extensions(c.place, shown)
    if length < 3 * ARROW:  # too short for arrows between: point at it from outside
        out = 2.2 * ARROW
        first, last = (a[0] - out * ux, a[1] - out * uy), (b[0] + out * ux, b[1] + out * uy)
        lines = path_by_steps((first, a), False) + path_by_steps((b, last), False)
        return line + lines + _head(a, (-ux, -uy)) + _head(b, (ux, uy))
    return line + path_by_steps((a, b), False) + _head(a, (ux, uy)) + _head(b, (-ux, -uy))


def _extensions(place: Place, shown: Layout) -> str:
    """Thin lines from the edges of a part to where it is measured beside it, and a little beyond."""
    if not place.edges or not place.end:
        return ""
    (x1, y1), (x2, y2) = place.at, place.end
    upright = abs(x1 - x2) < abs(y1 - y2)
    told = ""
    for (x, y), edge in zip((place.at, place.end), place.edges):
        near, far = shown.at((edge, y) if upright else (x, edge)), shown.at((x, y))
        length = math.hypot(far[0] - near[0], far[1] - near[1])
        if length > 2:
            beyond = 3 / length
            over = (far[0] + (far[0] - near[0]) * beyond, far[1] + (far[1] - near[1]) * beyond)
            told += path_by_steps((near, over), False)
    return told


def _head(tip: Point, along: Point) -> str:
    (x, y), (ux, uy) = tip, (along[0] * ARROW, along[1] * ARROW)
    side = 0.25
    points = tip, (x + ux - uy * side, y + uy + ux * side), (x + ux + uy * side, y + uy - ux * side)
    return path_by_steps(points, True)


def _called(place: Place) -> str:
    """What is read out: the words that are seen, which somebody may speak to press it, and the name."""
    words = place.words.replace("\n", " ")
    seen = re.search(rf"\b{re.escape(words)}\b", place.name, re.IGNORECASE)
    return place.name if seen else f"{words}: {place.name}"


def _words(c: Callout, size: Lines | None) -> Html:
    left, top, wide, high = c.box
    x = trimmed({"left": left + wide - 4, "right": left + 4}.get(c.side, left + wide / 2))
    first, *more = c.place.words.split("\n")
    sizes = () if size is None else size if isinstance(size, tuple) else (size,)
    rows = 1 + len(more) + len(sizes)
    y = top + high / 2 - (rows - 1) * LINE / 2 + TEXT * 0.36
    return el(
        "text",
        first,
        *(children(" ", el("tspan", line, x=x, dy=LINE)) for line in more),
        *(el("tspan", _both(line), x=x, dy=LINE, class_="written") for line in sizes),
        x=x,
        y=trimmed(round(y, 1)),
    )


def _both(size: Words) -> Html:
    if isinstance(size, str):
        return children(size)
    plain = size.text if isinstance(size, Number) else size.plain
    return both(plain("metric"), plain("inch"), "tspan")
