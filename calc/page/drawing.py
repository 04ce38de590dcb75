"""Shop drawings as SVG: section hatching, dimension and centre lines, to scale."""

import math

from calc.core.drawing import Area, Circle, Dimension, Drawing, Label, Line
from calc.core.result import Text
from calc.page.html import Html, children, el
from calc.page.svg import TEXT, WIDTH, image, path_through, trimmed, words_at

MARGIN = 34
ARROW = 7
_HATCH = {
    "a": "M-2,2 l4,-4 M0,8 l8,-8 M6,10 l4,-4",
    "b": "M-2,6 l4,4 M0,0 l8,8 M6,-2 l4,4",
    "c": "M-1,1 l2,-2 M0,4 l4,-4 M3,5 l2,-2",
}


def scale_note(drawing):
    return children(" · ", drawing.exaggerated or "to scale")


def drawn(drawing: Drawing, id: str) -> Html:
    shapes = [
        s for s in drawing.shapes if not (isinstance(s, Area) and not s.points)
    ]  # one that was cut away entirely
    left, low, right, high, margin = _paper(drawing, shapes)
    scale = (WIDTH - 2 * margin) / max(right - left, (high - low) / 1.2 if margin else 0, 1e-9)
    width, height = WIDTH, (high - low) * scale + 2 * margin
    inset = (WIDTH - (right - left) * scale) / 2

    def at(p):
        return inset + (p[0] - left) * scale, margin + (high - p[1]) * scale

    drawn = [shape_drawn(s, at, scale, id) for s in (shapes if drawing.paper else sorted(shapes, key=_layer))]
    return image(width, height, drawing.alt, hatches(shapes, id), *drawn)


def hatches(shapes, id: str) -> Html | None:
    """The patterns that faces among the shapes are hatched with, under names that begin with `id`."""
    used = sorted({s.hatch for s in shapes if isinstance(s, (Area, Circle)) and s.hatch in _HATCH})
    patterns = [
        el(
            "pattern",
            el("path", d="M0,0 h8 v8 h-8 z", class_="paper"),  # so that a face hides what lies behind it
            el("path", d=_HATCH[h], class_="hatch-line"),
            id=f"{id}-{h}",
            width=4 if h == "c" else 8,
            height=4 if h == "c" else 8,
            patternUnits="userSpaceOnUse",
        )
        for h in used
    ]
    return el("defs", *patterns) if patterns else None


def _paper(drawing, shapes):
    """What is shown of the plane (left, low, right, high), and the margin round it."""
    if drawing.paper:
        return *drawing.paper, 0
    points = [p for s in shapes for p in extent(s)]
    across, up = zip(*points)
    return min(across), min(up), max(across), max(up), MARGIN


def _layer(shape) -> int:
    return {Area: 0, Circle: 0, Line: 1, Dimension: 2, Label: 3}[type(shape)]


def extent(shape):
    """Points between which a shape lies."""
    if isinstance(shape, (Area, Line)):
        return shape.points
    if isinstance(shape, Circle):
        (x, y), r = shape.centre, shape.radius
        return (x - r, y - r), (x + r, y + r)
    if isinstance(shape, Dimension):
        (nx, ny), a = _normal(shape.start, shape.end), shape.away
        return (
            shape.start,
            shape.end,
            (shape.start[0] + nx * a, shape.start[1] + ny * a),
            (shape.end[0] + nx * a, shape.end[1] + ny * a),
        )
    return (shape.at,)


def _normal(p, q):
    dx, dy = q[0] - p[0], q[1] - p[1]
    length = math.hypot(dx, dy) or 1.0
    return -dy / length, dx / length


def shape_drawn(shape, at, scale, id, path=path_through) -> Html:
    """One shape as SVG. `at` turns metres into the paper's units, `scale` is how many go to a metre; `path`
    writes lines through points."""
    if isinstance(shape, Area):
        return el("path", d=path(map(at, shape.points), True), **_face(shape.hatch, shape.role, id))
    if isinstance(shape, Circle):
        x, y = at(shape.centre)
        look = {"class_": f"line {shape.style}"} if shape.style else _face(shape.hatch, "", id)
        return el("circle", cx=trimmed(x), cy=trimmed(y), r=trimmed(shape.radius * scale), **look)
    if isinstance(shape, Line):
        return el("path", d=path(map(at, shape.points), False), class_=f"line {shape.style}")
    if isinstance(shape, Label):
        x, y = at(shape.at)
        leader = (
            el("path", d=path_through((at(shape.target), (x, y - TEXT * 0.3)), False), class_="line thin")
            if shape.target
            else None
        )
        return children(leader, words_at(x, y, shape.words, shape.anchor))
    return _dimension(shape, at, scale)


def _face(hatch: str, role: str, id: str) -> dict[str, str]:
    """How a face is filled: hatched over paper, solid, or with paper only."""
    words = ("ground", role, "solid" if hatch == "solid" else "")
    fill = {"fill": f"url(#{id}-{hatch})"} if hatch in _HATCH else {}
    return {"class_": " ".join(filter(None, words)), **fill}


def _dimension(d: Dimension, at, scale) -> Html:
    (x1, y1), (x2, y2) = at(d.start), at(d.end)
    nx, ny = _normal((x1, y1), (x2, y2))
    away = -d.away * scale  # y turns over on the page, so the side turns with it
    a, b = (x1 + nx * away, y1 + ny * away), (x2 + nx * away, y2 + ny * away)
    length = math.hypot(b[0] - a[0], b[1] - a[1])
    ux, uy = ((b[0] - a[0]) / length, (b[1] - a[1]) / length) if length else (1.0, 0.0)
    outside = length < 3 * ARROW  # too short for arrows between the lines: point at them from outside
    way = -1 if outside else 1
    extension = [
        el(
            "path",
            d=path_through(
                (
                    p,
                    (
                        q[0] + nx * 3 * (away > 0) - nx * 3 * (away < 0),
                        q[1] + ny * 3 * (away > 0) - ny * 3 * (away < 0),
                    ),
                ),
                False,
            ),
            class_="line thin",
        )
        for p, q in (((x1, y1), a), ((x2, y2), b))
        if abs(away) > 1
    ]
    run = ((a[0] - ux * 14, a[1] - uy * 14), (b[0] + ux * 14, b[1] + uy * 14)) if outside else (a, b)
    arrows = [_arrow(a, (ux * way, uy * way)), _arrow(b, (-ux * way, -uy * way))]
    line = children(*extension, el("path", d=path_through(run, False), class_="line dim"), *arrows)
    turn = math.degrees(math.atan2(uy, ux))
    turn = (
        turn - 180 if turn > 89.9 else turn + 180 if turn < -90.1 else turn
    )  # to be read from below or from the right (ISO 129-1, from memory)
    mid = ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2)
    lift = 4.5  # the number stands on the line, on the side that is up on the paper
    up = (math.sin(math.radians(turn)), -math.cos(math.radians(turn)))
    x, y = mid[0] + up[0] * lift, mid[1] + up[1] * lift
    words = Text("{name} {number}" if d.name else "{number}", {"name": d.name, "number": d.number})
    if outside and abs(turn) > 45:
        return children(line, words_at(max(a[0], b[0]) + 8, mid[1] + 4, words, "start"))
    return children(line, words_at(x, y, words, "middle", turn))


def _arrow(tip, along) -> Html:
    (x, y), (ux, uy) = tip, along
    back = (x + ux * ARROW, y + uy * ARROW)
    wide = ARROW * 0.22
    return el(
        "path",
        d=path_through(
            (tip, (back[0] - uy * wide, back[1] + ux * wide), (back[0] + uy * wide, back[1] - ux * wide)),
            True,
        ),
        class_="arrow",
    )
