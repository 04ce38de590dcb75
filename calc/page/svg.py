"""Shop drawings and plots as SVG: section hatching, dimension and centre lines, to scale; no colour carries meaning alone."""

import math
import re

from calc.core.drawing import Area, Dimension, Drawing, Label, Line, Plot
from calc.core.result import Text
from calc.core.working import Number
from calc.page.html import Html, both, children, el

WIDTH = 360  # user units; text of 12 units is then legible at 390 px
MARGIN = 34
TEXT = 12
ARROW = 7
_HATCH = {
    "a": "M-2,2 l4,-4 M0,8 l8,-8 M6,10 l4,-4",
    "b": "M-2,6 l4,4 M0,0 l8,8 M6,-2 l4,4",
    "c": "M-1,1 l2,-2 M0,4 l4,-4 M3,5 l2,-2",
}


def figure(shown: "Drawing | Plot", id: str) -> Html:
    """A figure with its caption; `id` keeps pattern names apart on one page."""
    svg, notes = (
        (_drawing(shown, id), _scale_note(shown)) if isinstance(shown, Drawing) else (_plot(shown), None)
    )
    return el(
        "figure",
        svg,
        el("figcaption", shown.title, notes),
        class_="drawing" if isinstance(shown, Drawing) else "plot",
    )


def _scale_note(drawing):
    return children(" · ", drawing.exaggerated or "to scale")


def _f(x) -> str:
    return f"{x:.2f}".rstrip("0").rstrip(".")


def _path(points, closed) -> Html:
    return Html("M" + "L".join(["%.2f %.2f" % point for point in points]) + ("Z" if closed else ""))


def _svg(width, height, alt, *nodes) -> Html:
    """An image with its words: in both unit systems, the hidden one hidden from the reader's ear as well."""
    words = both(alt.plain("metric"), alt.plain("inch"))
    return children(
        el(
            "svg",
            *nodes,
            viewBox=f"0 0 {_f(width)} {_f(height)}",
            aria_hidden="true",
            focusable="false",
            width=_f(width),
            height=_f(height),
        ),
        el("span", words, class_="visually-hidden"),
    )


def _words(x, y, words, anchor="middle", turned=None) -> Html:
    """Text at a point, haloed so that it stays legible over hatching; quantities in both systems. It is moved aside where it
    would leave the paper."""
    if isinstance(words, (Number, Text)):
        plain = words.text if isinstance(words, Number) else words.plain
        metric, inch = plain("metric"), plain("inch")
        if metric != inch:
            return children(
                _text(x, y, metric, anchor, turned, "text u-metric"),
                _text(x, y, inch, anchor, turned, "text u-inch"),
            )
        words = metric
    return _text(x, y, words, anchor, turned, "text")


def _text(x, y, words, anchor, turned, class_) -> Html:
    across = _length(words) * abs(math.cos(math.radians(turned or 0)))
    before = {"start": 0.0, "middle": across / 2, "end": across}[anchor]
    x = min(max(x, before + 2), WIDTH - 2 - across + before)
    return el(
        "text",
        _subscripts(words),
        x=_f(x),
        y=_f(y),
        text_anchor=anchor,
        transform=f"rotate({_f(turned)} {_f(x)} {_f(y)})" if turned else None,
        class_=class_,
    )


def _subscripts(words: str) -> Html:
    """A name such as D_p with its subscript set low; other words as they are."""
    parts = re.split(r"(?<=\w)_(\w+)", words)
    return children(
        *(
            (
                el("tspan", part, class_="sub", dy="3")
                if i % 2
                else el("tspan", part, dy="-3")
                if i and part
                else part
            )
            for i, part in enumerate(parts)
        )
    )


def _drawing(drawing: Drawing, id: str) -> Html:
    shapes = [
        s for s in drawing.shapes if not (isinstance(s, Area) and not s.points)
    ]  # one that was cut away entirely
    points = [p for s in shapes for p in _extent(s)]
    left, right = min(x for x, _ in points), max(x for x, _ in points)
    low, high = min(y for _, y in points), max(y for _, y in points)
    scale = (WIDTH - 2 * MARGIN) / max(right - left, (high - low) / 1.2, 1e-9)
    width, height = WIDTH, (high - low) * scale + 2 * MARGIN
    inset = (WIDTH - (right - left) * scale) / 2

    def at(p):
        return inset + (p[0] - left) * scale, MARGIN + (high - p[1]) * scale

    used = sorted({s.hatch for s in shapes if isinstance(s, Area) and s.hatch in _HATCH})
    patterns = [
        el(
            "pattern",
            el("path", d=_HATCH[h], class_="hatch-line"),
            id=f"{id}-{h}",
            width=4 if h == "c" else 8,
            height=4 if h == "c" else 8,
            patternUnits="userSpaceOnUse",
        )
        for h in used
    ]
    drawn = [_shape(s, at, scale, id) for s in sorted(shapes, key=_layer)]
    return _svg(width, height, drawing.alt, el("defs", *patterns) if patterns else None, *drawn)


def _layer(shape) -> int:
    return {Area: 0, Line: 1, Dimension: 2, Label: 3}[type(shape)]


def _extent(shape):
    if isinstance(shape, (Area, Line)):
        return shape.points
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


def _shape(shape, at, scale, id) -> Html:
    if isinstance(shape, Area):
        fill = f"url(#{id}-{shape.hatch})" if shape.hatch in _HATCH else None
        path = _path(map(at, shape.points), True)
        return children(
            el("path", d=path, class_=f"ground {shape.role}{' solid' if shape.hatch == 'solid' else ''}"),
            el("path", d=path, class_="cut", fill=fill) if fill else None,
        )
    if isinstance(shape, Line):
        return el("path", d=_path(map(at, shape.points), False), class_=f"line {shape.style}")
    if isinstance(shape, Label):
        x, y = at(shape.at)
        leader = (
            el("path", d=_path((at(shape.target), (x, y - TEXT * 0.3)), False), class_="line thin")
            if shape.target
            else None
        )
        return children(leader, _words(x, y, shape.words, shape.anchor))
    return _dimension(shape, at, scale)


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
            d=_path(
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
        return children(
            *extension,
            el("path", d=_path(run, False), class_="line dim"),
            *arrows,
            _words(max(a[0], b[0]) + 8, mid[1] + 4, words, "start"),
        )
    return children(
        *extension,
        el("path", d=_path(run, False), class_="line dim"),
        *arrows,
        _words(x, y, words, "middle", turn),
    )


def _arrow(tip, along) -> Html:
    (x, y), (ux, uy) = tip, along
    back = (x + ux * ARROW, y + uy * ARROW)
    wide = ARROW * 0.22
    return el(
        "path",
        d=_path(
            (tip, (back[0] - uy * wide, back[1] + ux * wide), (back[0] + uy * wide, back[1] - ux * wide)),
            True,
        ),
        class_="arrow",
    )


def ticks(low: float, high: float, about: int = 5) -> list[float]:
    """Round values (1, 2 or 5 times a power of ten apart) that cover a range; about a curve that is flat but for rounding, one to
    both sides of it."""
    size = max(abs(low), abs(high))
    if high - low <= max(1e-9 * size, 1e-30):
        half = size / 2 if size > 1e-30 else 0.5
        low, high = low - half, high + half
    raw = (high - low) / about
    power = 10.0 ** math.floor(math.log10(raw))
    pitch = next(power * m for m in (1, 2, 5, 10) if power * m >= raw * 0.999)
    first, last = math.floor(low / pitch + 1e-9), math.ceil(high / pitch - 1e-9)
    return [i * pitch for i in range(first, last + 1)]


def _plot(plot: Plot) -> Html:
    systems = (
        ("metric",) if all(a.form.metric == a.form.inch for a in (plot.x, plot.y)) else ("metric", "inch")
    )
    drawn, height = [], 250
    for system in systems:
        drawn.append(
            el("g", _plot_in(plot, system, height), class_=f"u-{system}" if len(systems) > 1 else None)
        )
    return _svg(WIDTH, height, plot.alt, *drawn)


def _plot_in(plot: Plot, system: str, height: int) -> Html:
    ux, uy = plot.x.form.unit(system), plot.y.form.unit(system)
    # plain floats: a curve needs no exact conversion, and has many points
    (fx, ox), (fy, oy) = ((float(u.factor), float(u.offset)) for u in (ux, uy))
    series = [(s, [((x - ox) / fx, (y - oy) / fy) for x, y in s.points]) for s in plot.series]
    marks = [((x - ox) / fx, (y - oy) / fy, words) for x, y, words in plot.marks]
    xs = [x for _, ps in series for x, _ in ps] + [m[0] for m in marks]
    ys = [y for _, ps in series for _, y in ps] + [m[1] for m in marks]
    tx, ty = ticks(min(xs), max(xs)), ticks(min(ys), max(ys))
    left, right = (
        max(52.0, 10 + max(_length(_tick(y, ty)) for y in ty)),
        WIDTH - max(14.0, _length(_tick(tx[-1], tx)) / 2 + 2),
    )
    top, bottom = 26, height - 44

    def at(x, y):
        return left + (x - tx[0]) / (tx[-1] - tx[0]) * (right - left), bottom - (y - ty[0]) / (
            ty[-1] - ty[0]
        ) * (bottom - top)

    across, up = [at(x, ty[0])[0] for x in tx], [at(tx[0], y)[1] for y in ty]
    lines = [_path(((x, top), (x, bottom)), False) for x in across] + [
        _path(((left, y), (right, y)), False) for y in up
    ]
    grid = [
        el("path", d=Html("".join(lines)), class_="line grid"),
        *(_words(px, bottom + 16, _tick(x, tx)) for px, x in zip(across, tx)),
        *(_words(left - 6, py + 4, _tick(y, ty), "end") for py, y in zip(up, ty)),
    ]
    curves = []
    drawn = [[at(*p) for p in points] for _, points in series]
    for i, ((s, _), placed) in enumerate(zip(series, drawn)):
        if s.style == "points":
            curves += [el("circle", cx=_f(x), cy=_f(y), r=3, class_="point") for x, y in placed]
        else:
            curves.append(el("path", d=_path(placed, False), class_=f"line curve curve-{i} {s.style}"))
    # Words stand where they cover neither each other nor a curve: a mark's beside its point, a curve's along it, from its end on.
    runs, taken = [_along(placed) for placed in drawn], []
    inked = [point for run in runs for point in run]
    for x, y, words in marks:
        px, py = at(x, y)
        curves.append(el("circle", cx=_f(px), cy=_f(py), r=5, class_="mark"))
        taken.append((px - 5, py - 5, px + 5, py + 5))
        curves.append(
            _placed(
                words,
                [(px + dx, py + dy) for dx in (9, -9) for dy in (-9, 18)],
                inked,
                taken,
                (left, top, right, bottom),
                beside=px,
            )
        )
    for (s, _), points in zip(series, runs):
        if s.label and points:
            spots = [points[round((len(points) - 1) * share)] for share in (1, 0.85, 0.65, 0.45, 0.25, 0.1)]
            curves.append(
                _placed(
                    s.label,
                    [(x, y + dy) for x, y in spots for dy in (-6, 15)],
                    inked,
                    taken,
                    (left, top, right, bottom),
                )
            )
    axes = [
        _words((left + right) / 2, height - 8, _axis(plot.x.label, ux)),
        _words(6, 14, _axis(plot.y.label, uy), "start"),
    ]
    return children(*grid, *curves, *axes)


def _along(points, steps: int = 30) -> list:
    """Points spread evenly along a curve's run, however few it was drawn with."""
    if len(points) < 2:
        return list(points)
    spread = []
    for i in range(steps + 1):
        n, part = divmod(i * (len(points) - 1) / steps, 1)
        (x1, y1), (x2, y2) = points[int(n)], points[min(int(n) + 1, len(points) - 1)]
        spread.append((x1 + (x2 - x1) * part, y1 + (y2 - y1) * part))
    return spread


def _placed(words, spots, inked, taken, frame, beside=None) -> Html:
    """Words at the spot where they cover least: of other words (`taken`, to which they are added), of curves, of the frame's edge.

    They end at a spot in the right half of the frame and begin at one in the left half; `beside` a point, on the spot's own side.
    """
    shown = (
        words.plain("metric")
        if isinstance(words, Text)
        else words.text("metric")
        if isinstance(words, Number)
        else words
    )
    long, (left, top, right, bottom) = _length(shown), frame

    def box(spot):
        x, y = spot
        begins = x > beside if beside is not None else x < (left + right) / 2
        return (x if begins else x - long, y - TEXT, x + long if begins else x, y + 3), begins

    def cost(spot):
        (x1, y1, x2, y2), _ = box(spot)
        over = sum(x1 < b[2] and b[0] < x2 and y1 < b[3] and b[1] < y2 for b in taken)
        out = x1 < left or x2 > right + 10 or y1 < top - TEXT or y2 > bottom
        return 100 * over + 50 * out + len([1 for x, y in inked if x1 < x < x2 and y1 < y < y2])

    costs = []
    for spot in spots:
        costs.append(cost(spot))
        if not costs[-1]:
            break
    best = spots[costs.index(min(costs))]
    area, begins = box(best)
    taken.append(area)
    return _words(*best, words, "start" if begins else "end")


def _length(words: str) -> float:
    """About how long words are on the paper."""
    return 0.56 * TEXT * len(words)


def _axis(label, unit) -> str:
    return f"{label}, {unit.symbol}" if unit.symbol else label


def _tick(x: float, ticks) -> str:
    pitch = ticks[1] - ticks[0]
    places = max(0, -math.floor(math.log10(pitch) + 1e-9))
    return f"{x:.{places}f}".replace("-", "−") if abs(x) > pitch / 1e6 else "0"
