"""A view of an engine as SVG: each place a link, with a target that a thumb can hit."""

import math
from collections.abc import Iterator, Mapping
from itertools import groupby

from calc.core.drawing import Line, Point, box
from calc.core.result import Text
from calc.core.working import Number
from calc.page.drawing import hatches, shape_drawn
from calc.page.engine.callouts import Callout, Layout, laid_out
from calc.page.engine.view import Place, Solid, View
from calc.page.html import Html, both, children, el
from calc.page.svg import TEXT, WIDTH, path_through, trimmed

Words = str | Text | Number
ARROW = 5.0
LINE = 13  # from one line of words to the next


def picture(view: View, id: str, written: Mapping[str, Words] | None = None) -> Html:
    """The view as one svg. `id` keeps its patterns' names apart on a page. A place of a size is a link to
    `#size-<id of the size>`, one of another view to `#view-<its name>`. What `written` says of a size is
    written under its words, and only such places are shown then."""
    shown = laid_out(_only(view, written) if written is not None else view)
    solids = (*view.shapes, *(s for p in view.places for s in p.part), *view.over)
    return el(
        "svg",
        hatches(solids, id),
        *_painted(view.shapes, shown, id),
        *(_part(place, shown, id) for place in view.places if place.part),
        *_painted(view.over, shown, id),
        *(_callout(c, shown, (written or {}).get(c.place.of)) for c in shown.callouts),
        viewBox=f"0 0 {WIDTH} {trimmed(shown.height)}",
        role="group",
        aria_label=view.title,
        class_="engine-view",
    )


def _only(view: View, written: Mapping[str, Words]) -> View:
    kept = tuple(p if p.of in written else None for p in view.places)
    outlines = tuple(s for p in view.places if p.of not in written for s in p.part)
    return View(
        view.name, view.title, (*view.shapes, *outlines), tuple(p for p in kept if p), view.over, view.wide
    )


def _painted(shapes: tuple[Solid, ...], shown: Layout, id: str) -> Iterator[Html]:
    """Shapes in their order; neighbouring lines of a style are one path."""
    for style, run in groupby(shapes, key=lambda s: s.style if isinstance(s, Line) else None):
        if style is None:
            yield from (shape_drawn(s, shown.at, shown.scale, id) for s in run)
        else:
            paths = [path_through(map(shown.at, s.points), False) for s in run if isinstance(s, Line)]
            yield el("path", d=Html("".join(paths)), class_=f"line {style}")


def _part(place: Place, shown: Layout, id: str) -> Html:
    return el(
        "a",
        *_painted(place.part, shown, id),
        href=_address(place),
        class_="part",
        tabindex="-1",
        aria_hidden="true",
    )


def _address(place: Place) -> str:
    return f"#{'size' if place.size else 'view'}-{place.of}"


def _callout(c: Callout, shown: Layout, size: Words | None) -> Html:
    left, top, wide, high = c.box
    return el(
        "a",
        el("path", d=path_through(box(left, top, left + wide, top + high), True), class_="hit"),
        el("path", d=Html(_pointer(c, shown)), class_="line dim"),
        None
        if c.place.end
        else el("circle", cx=trimmed(c.tip[0]), cy=trimmed(c.tip[1]), r=2, class_="arrow"),
        _words(c, size),
        href=_address(c.place),
        data_feature=c.place.of if c.place.size else None,
        aria_label=c.place.name,
        class_="place",
    )


def _pointer(c: Callout, shown: Layout) -> str:
    """The line to the place, and the arrows between which it is measured."""
    line = path_through((c.foot, c.tip), False)
    if c.place.end is None:
        return line
    a, b = shown.at(c.place.at), shown.at(c.place.end)
    length = math.hypot(b[0] - a[0], b[1] - a[1])
    if length < 1:
        return line
    along = (b[0] - a[0]) / length, (b[1] - a[1]) / length
    if length < 3 * ARROW:  # too short for arrows between: point at it from outside
        run = tuple((p[0] + w * 9 * along[0], p[1] + w * 9 * along[1]) for p, w in ((a, -1), (b, 1)))
        return (
            line
            + path_through((run[0], a), False)
            + path_through((b, run[1]), False)
            + _head(a, along, -1)
            + _head(b, along, 1)
        )
    return line + path_through((a, b), False) + _head(a, along, 1) + _head(b, along, -1)


def _head(tip: Point, along: Point, way: int) -> str:
    (x, y), (ux, uy) = tip, (along[0] * way * ARROW, along[1] * way * ARROW)
    side = 0.3
    points = (x + ux - uy * side, y + uy + ux * side), tip, (x + ux + uy * side, y + uy - ux * side)
    return path_through(points, False)


def _words(c: Callout, size: Words | None) -> Html:
    left, top, wide, high = c.box
    lines: list = c.place.words.split("\n")
    x = {"left": left + wide - 4, "right": left + 4}.get(c.side, left + wide / 2)
    rows = len(lines) + (size is not None)
    y = top + high / 2 - (rows - 1) * LINE / 2 + TEXT * 0.36
    told = [el("tspan", line, x=trimmed(x), dy=LINE if i else None) for i, line in enumerate(lines)]
    if size is not None:
        told.append(el("tspan", _both(size), x=trimmed(x), dy=LINE, class_="written"))
    anchor = {"left": "end", "right": "start"}.get(c.side, "middle")
    return el("text", *told, x=trimmed(x), y=trimmed(y), text_anchor=anchor, class_="text")


def _both(size: Words) -> Html:
    if isinstance(size, str):
        return children(size)
    plain = size.text if isinstance(size, Number) else size.plain
    return both(plain("metric"), plain("inch"), "tspan")
