"""A lobe's lift from a table of readings: value, slope and bend anywhere, each with its doubt.

Near each angle a polynomial of the fourth degree is laid through the readings by least squares, the near ones
counting most (tricube weights; Cleveland, local regression, from memory). What it gives is a fixed sum of the
readings, so that their doubt goes through exactly; what the polynomial itself bends off the lobe is judged by
a second one over half as wide again.

Angles in radians of the cam, lifts in metres; slope in m/rad, bend in m/rad².
"""

import math
from collections.abc import Sequence
from functools import lru_cache
from typing import NamedTuple

DEGREE = 4
LEAST = 8  # readings that a table needs at least
_WINDOW = math.radians(11)  # half width over the readings, where they stand closer than a quarter of it
_WIDER = 1.5

Weights = tuple[tuple[int, float], ...]
"""How much of which reading."""


class Told(NamedTuple):
    """A number and its expanded doubt, k = 2."""

    value: float
    doubt: float


def solve(matrix: list[list[float]], right: list[float]) -> list[float]:
    """Gauss with pivots. ZeroDivisionError for a matrix without inverse."""
    n = len(right)
    rows = [[*row, y] for row, y in zip(matrix, right)]
    for k in range(n):
        pivot = max(range(k, n), key=lambda r: abs(rows[r][k]))
        rows[k], rows[pivot] = rows[pivot], rows[k]
        for r in range(k + 1, n):
            share = rows[r][k] / rows[k][k]
            rows[r] = [a - share * b for a, b in zip(rows[r], rows[k])]
    found = [0.0] * n
    for k in reversed(range(n)):
        found[k] = (rows[k][n] - sum(rows[k][c] * found[c] for c in range(k + 1, n))) / rows[k][k]
    return found


@lru_cache(
    maxsize=4096
)  # weights hang on the angles alone: a table worked again with one lift moved needs no new ones
def weights(angles: tuple[float, ...], at: float, wider: float = 1.0) -> tuple[Weights, Weights, Weights]:
    """Sums of readings that give lift, slope and bend at an angle. `angles` rise; `LEAST` of them or more."""
    far = sorted(abs(a - at) for a in angles)
    # the eighth nearest still counts for something, wherever readings are missing
    half = max(_WINDOW, 1.15 * far[LEAST - 1]) * wider
    near = [(n, (a - at) / half) for n, a in enumerate(angles) if abs(a - at) < half]
    count = {n: (1 - abs(t) ** 3) ** 3 for n, t in near}
    size = DEGREE + 1
    sums = [sum(count[n] * t**power for n, t in near) for power in range(2 * size - 1)]
    matrix = [[sums[r + c] for c in range(size)] for r in range(size)]
    told = []
    for order, scale in ((0, 1.0), (1, half), (2, half**2 / 2)):
        row = solve(matrix, [1.0 if k == order else 0.0 for k in range(size)])
        told.append(
            tuple((n, count[n] * sum(c * t**power for power, c in enumerate(row)) / scale) for n, t in near)
        )
    return told[0], told[1], told[2]


class Curve:
    """Lift over the cam's angle. `reading` and `angle` are the expanded doubts (k = 2) of one lift, m, and of
    one angle, rad, each by itself; what is off alike at every reading is not in them."""

    def __init__(
        self, angles: Sequence[float], lifts: Sequence[float], reading: float = 0.0, angle: float = 0.0
    ) -> None:
        if len(angles) != len(lifts) or len(angles) < LEAST:
            raise ValueError(f"{len(angles)} angles and {len(lifts)} lifts; give {LEAST} or more of both")
        if any(b <= a for a, b in zip(angles, angles[1:])):
            raise ValueError("angles do not rise")
        self.angles, self.lifts = tuple(angles), tuple(lifts)
        slopes = [self._sum(weights(self.angles, a)[1]) for a in self.angles]
        self.doubts = [math.hypot(reading, slope * angle) for slope in slopes]

    def _sum(self, parts: Weights) -> float:
        return sum(w * self.lifts[n] for n, w in parts)

    def value(self, at: float, order: int = 0) -> float:
        """Lift (order 0), slope (1) or bend (2) at an angle."""
        return self._sum(weights(self.angles, at)[order])

    def told(self, at: float, order: int = 0) -> Told:
        """The same with its doubt."""
        parts = weights(self.angles, at)[order]
        value = self._sum(parts)
        noise = math.sqrt(sum((w * self.doubts[n]) ** 2 for n, w in parts))
        off = value - self._sum(weights(self.angles, at, _WIDER)[order])
        return Told(value, math.hypot(noise, off))

    def places(self, per_step: int = 4) -> list[float]:
        """Angles from the first reading to the last, even between each two."""
        return [
            a + (b - a) * n / per_step for a, b in zip(self.angles, self.angles[1:]) for n in range(per_step)
        ] + [self.angles[-1]]

    def extreme(self, order: int, sign: int = 1) -> tuple[float, Told]:
        """Where lift, slope or bend is largest (sign 1) or least (−1), and what it is there."""
        at = max(self.places(), key=lambda a: sign * self.value(a, order))
        return at, self.told(at, order)

    def crossings(self, lift: float) -> tuple[Told, Told]:
        """Angles at which the lobe passes that lift, opening and closing. ValueError where it never stands
        above it, or never comes below it on one side."""
        places = self.places()
        values = [self.value(a) for a in places]
        top = max(range(len(values)), key=values.__getitem__)
        if values[top] <= lift:
            raise ValueError("the lobe does not reach that lift")
        opening = next((n for n in range(top, 0, -1) if values[n - 1] <= lift), None)
        closing = next((n for n in range(top, len(values) - 1) if values[n + 1] <= lift), None)
        if opening is None or closing is None:
            raise ValueError("the table does not come below that lift on both sides")
        return self._crossing(places, values, opening - 1, lift), self._crossing(
            places, values, closing, lift
        )

    def _crossing(self, places: list[float], values: list[float], n: int, lift: float) -> Told:
        a, b = places[n], places[n + 1]
        at = a + (b - a) * (lift - values[n]) / (values[n + 1] - values[n])
        slope = self.value(at, 1)
        moved = at + (lift - self.value(at)) / slope if slope else at
        at = min(max(moved, a), b)
        return Told(at, self.told(at).doubt / abs(slope) if slope else math.inf)

    def area(self) -> float:
        """Area under the lift, m·rad, by Simpson's rule over the readings' own steps."""
        return sum(
            (b - a) / 6 * (self.value(a) + 4 * self.value((a + b) / 2) + self.value(b))
            for a, b in zip(self.angles, self.angles[1:])
        )


def differences(lifts: Sequence[float], order: int) -> list[float]:
    """Differences of that order of a table at even steps."""
    found = list(lifts)
    for _ in range(order):
        found = [b - a for a, b in zip(found, found[1:])]
    return found
