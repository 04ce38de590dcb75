"""Where a boring bar must lie so that bores in a row clean up at the smallest size that they can.

The bar is a straight line along the bores. About it each bore cleans up at its farthest place, and the
largest of these distances is to be as small as it can be. Bores are off their line by little against their
radius, so a place lies farther from a bar that is moved by δ by δ in the direction to that place, but for
δ²/2R: 0.01 µm for 0.03 mm in a main saddle. That makes it a linear programme in four unknowns and the size.
It is solved by its dual, whose columns are the places themselves: of all places the farthest comes into the
basis, until none lies farther than the basis says (revised simplex, columns made as they are priced).

Lengths in any one unit; places along the bar differ.
"""

import math
from typing import NamedTuple

from calc.formulas.best_fit import Line

ROWS = 5  # size, and where the bar lies at both of its ends, both ways
MOST_STEPS = 200
COARSE = 5  # every so many places find nearly where the bar lies; then all count that come near to the size
NEAR = 1e-5  # of the bores' radius
SAME = 1e-13  # of the bores' radius: no place lies farther than that
BIG = 1e6  # of the bores' radius: what the first basis costs, so that none of it stays

Column = tuple[float, ...]
Row = tuple[Column, float]


class Bore(NamedTuple):
    """One bore: where along the bar, its centre, and places of its surface from that centre."""

    place: float
    x: float
    y: float
    surface: tuple[tuple[float, float], ...]


def least_bar(bores: list[Bore]) -> tuple[Line, Line]:
    """The bar, in both planes. `most` of either is not said: 0."""
    first, last = bores[0].place, bores[-1].place
    long = last - first
    unit = max(math.hypot(x, y) for x, y in bores[0].surface)
    seen = [row for bore in bores for row in _seen(bore, (bore.place - first) / long, unit)]
    few = seen[::COARSE]
    bar = _solved(few)
    bar = _solved(few + [row for row in seen if row[1] - _dot(row[0], bar) > -NEAR])
    (x1, x2), (y1, y2) = (bar[1] * unit, bar[2] * unit), (bar[3] * unit, bar[4] * unit)
    return _through(first, long, x1, x2), _through(first, long, y1, y2)


def _through(first: float, long: float, start: float, end: float) -> Line:
    slope = (end - start) / long
    return Line(start - slope * first, slope, 0.0)


def _seen(bore: Bore, share: float, unit: float) -> list[Row]:
    """Each place as a row of the programme: size + direction·bar ≥ its distance from no bar."""
    rows: list[Row] = []
    for x, y in bore.surface:
        r = math.hypot(x, y)
        ux, uy = x / r, y / r
        told = (1.0, ux * (1 - share), ux * share, uy * (1 - share), uy * share)
        rows.append((told, (r + ux * bore.x + uy * bore.y) / unit))
    return rows


def _solved(places: list[Row]) -> list[float]:
    """Size and bar: the multipliers of the dual's best basis."""
    inverse = [[float(i == j) for j in range(ROWS)] for i in range(ROWS)]
    weights, cost = [1.0] + [0.0] * (ROWS - 1), [-BIG] * ROWS
    bar = [0.0] * ROWS
    for _ in range(MOST_STEPS):
        bar = [sum(cost[i] * inverse[i][j] for i in range(ROWS)) for j in range(ROWS)]
        column, distance = max(places, key=lambda p: p[1] - _dot(p[0], bar))
        if distance - _dot(column, bar) <= SAME:
            break
        into = [_dot(row, column) for row in inverse]
        leaves = _leaves(weights, into, cost)
        if leaves is None:
            break
        _pivot(inverse, weights, into, leaves)
        cost[leaves] = distance
    return bar


def _dot(a: Column | list[float], b: Column | list[float]) -> float:
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2] + a[3] * b[3] + a[4] * b[4]


def _leaves(weights: list[float], into: list[float], cost: list[float]) -> int | None:
    """Which of the basis gives way: the first to come to nothing; of several what was there to begin with."""
    # an artificial one that stands at nothing must not grow, whichever way it would go
    for i in range(ROWS):
        if cost[i] == -BIG and weights[i] <= SAME and abs(into[i]) > 1e-9:
            return i
    able = [i for i in range(ROWS) if into[i] > 1e-9]
    if not able:
        return None
    return min(able, key=lambda i: (weights[i] / into[i], cost[i]))


def _pivot(inverse: list[list[float]], weights: list[float], into: list[float], at: int) -> None:
    by = into[at]
    row, share = [v / by for v in inverse[at]], weights[at] / by
    for i in range(ROWS):
        if i != at:
            inverse[i] = [v - into[i] * r for v, r in zip(inverse[i], row)]
            weights[i] -= into[i] * share
    inverse[at], weights[at] = row, share
