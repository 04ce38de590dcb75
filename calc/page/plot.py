"""Plots as SVG: axes with round values, curves told apart by their strokes, words where they cover
nothing."""

import math
from typing import NamedTuple

from calc.core.drawing import Plot
from calc.core.result import Text
from calc.core.working import Number
from calc.page.html import Html, children, el
from calc.page.svg import TEXT, WIDTH, image, length_of, path_through, trimmed, words_at


def ticks(low: float, high: float, about: int = 5) -> list[float]:
    """Round values (1, 2 or 5 times a power of ten apart) that cover a range; about a curve that is flat but
    for rounding, one to both sides of it."""
    size = max(abs(low), abs(high))
    if high - low <= max(1e-9 * size, 1e-30):
        half = size / 2 if size > 1e-30 else 0.5
        low, high = low - half, high + half
    raw = (high - low) / about
    power = 10.0 ** math.floor(math.log10(raw))
    pitch = next(power * m for m in (1, 2, 5, 10) if power * m >= raw * 0.999)
    first, last = math.floor(low / pitch + 1e-9), math.ceil(high / pitch - 1e-9)
    return [i * pitch for i in range(first, last + 1)]


def plotted(plot: Plot) -> Html:
    systems = (
        ("metric",) if all(a.form.metric == a.form.inch for a in (plot.x, plot.y)) else ("metric", "inch")
    )
    drawn, height = [], 250
    for system in systems:
        drawn.append(
            el("g", _plot_in(plot, system, height), class_=f"u-{system}" if len(systems) > 1 else None)
        )
    return image(WIDTH, height, plot.alt, *drawn)


class _Frame(NamedTuple):
    """Where the axes stand on the paper, and the round values along them."""

    left: float
    top: float
    right: float
    bottom: float
    across: list[float]
    up: list[float]

    def at(self, x: float, y: float) -> tuple[float, float]:
        """The point of the paper for a point of the plot."""
        along = (x - self.across[0]) / (self.across[-1] - self.across[0])
        above = (y - self.up[0]) / (self.up[-1] - self.up[0])
        return self.left + along * (self.right - self.left), self.bottom - above * (self.bottom - self.top)

    @property
    def edges(self) -> tuple[float, float, float, float]:
        return self.left, self.top, self.right, self.bottom


def _plot_in(plot: Plot, system: str, height: int) -> Html:
    ux, uy = plot.x.form.unit(system), plot.y.form.unit(system)
    # plain floats: a curve needs no exact conversion, and has many points
    (fx, ox), (fy, oy) = ((float(u.factor), float(u.offset)) for u in (ux, uy))
    series = [(s, [((x - ox) / fx, (y - oy) / fy) for x, y in s.points]) for s in plot.series]
    marks = [((x - ox) / fx, (y - oy) / fy, words) for x, y, words in plot.marks]
    xs = [x for _, ps in series for x, _ in ps] + [m[0] for m in marks]
    ys = [y for _, ps in series for _, y in ps] + [m[1] for m in marks]
    frame = _frame(ticks(min(xs), max(xs)), ticks(min(ys), max(ys)), height)
    axes = [
        words_at((frame.left + frame.right) / 2, height - 8, _axis(plot.x.label, ux)),
        words_at(6, 14, _axis(plot.y.label, uy), "start"),
    ]
    return children(*_grid(frame), *_curves(frame, series, marks), *axes)


def _frame(across: list[float], up: list[float], height: int) -> _Frame:
    left = max(52.0, 10 + max(length_of(_tick(y, up)) for y in up))
    right = WIDTH - max(14.0, length_of(_tick(across[-1], across)) / 2 + 2)
    return _Frame(left, 26, right, height - 44, across, up)


def _grid(frame: _Frame) -> list[Html]:
    """Lines at the round values, and the values beside them."""
    (left, top, right, bottom), tx, ty = frame.edges, frame.across, frame.up
    across, up = [frame.at(x, ty[0])[0] for x in tx], [frame.at(tx[0], y)[1] for y in ty]
    lines = [path_through(((x, top), (x, bottom)), False) for x in across]
    lines += [path_through(((left, y), (right, y)), False) for y in up]
    return [
        el("path", d=Html("".join(lines)), class_="line grid"),
        *(words_at(px, bottom + 16, _tick(x, tx)) for px, x in zip(across, tx)),
        *(words_at(left - 6, py + 4, _tick(y, ty), "end") for py, y in zip(up, ty)),
    ]


def _curves(frame: _Frame, series: list, marks: list) -> list[Html]:
    """Curves and marks with their words, which stand where they cover neither each other nor a curve: a
    mark's beside its point, a curve's along it, from its end on."""
    curves = []
    drawn = [[frame.at(*p) for p in points] for _, points in series]
    for i, ((s, _), placed) in enumerate(zip(series, drawn)):
        if s.style == "points":
            curves += [el("circle", cx=trimmed(x), cy=trimmed(y), r=3, class_="point") for x, y in placed]
        else:
            curves.append(el("path", d=path_through(placed, False), class_=f"line curve curve-{i} {s.style}"))
    runs, taken = [_along(placed) for placed in drawn], []
    inked = [point for run in runs for point in run]
    for x, y, words in marks:
        px, py = frame.at(x, y)
        curves.append(el("circle", cx=trimmed(px), cy=trimmed(py), r=5, class_="mark"))
        taken.append((px - 5, py - 5, px + 5, py + 5))
        spots = [(px + dx, py + dy) for dx in (9, -9) for dy in (-9, 18)]
        curves.append(_placed(words, spots, inked, taken, frame.edges, beside=px))
    for (s, _), points in zip(series, runs):
        if s.label and points:
            ends = [points[round((len(points) - 1) * share)] for share in (1, 0.85, 0.65, 0.45, 0.25, 0.1)]
            spots = [(x, y + dy) for x, y in ends for dy in (-6, 15)]
            curves.append(_placed(s.label, spots, inked, taken, frame.edges))
    return curves


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
    """Words at the spot where they cover least: of other words (`taken`, to which they are added), of curves,
    of the frame's edge.

    They end at a spot in the right half of the frame and begin at one in the left half; `beside` a point, on
    the spot's own side.
    """
    shown = (
        words.plain("metric")
        if isinstance(words, Text)
        else words.text("metric")
        if isinstance(words, Number)
        else words
    )
    long, (left, top, right, bottom) = length_of(shown), frame

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
    x, y = spots[costs.index(min(costs))]
    area, begins = box((x, y))
    taken.append(area)
    return words_at(x, y, words, "start" if begins else "end")


def _axis(label, unit) -> str:
    return f"{label}, {unit.symbol}" if unit.symbol else label


def _tick(x: float, ticks) -> str:
    pitch = ticks[1] - ticks[0]
    places = max(0, -math.floor(math.log10(pitch) + 1e-9))
    return f"{x:.{places}f}".replace("-", "−") if abs(x) > pitch / 1e6 else "0"
