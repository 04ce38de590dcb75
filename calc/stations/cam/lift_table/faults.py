"""What in a table of lifts is no lobe: a slip of the eye, a wheel that jumped, a dial that moved; or a flank
that is rough.

Each reading is held to the smooth curve of its neighbours. Where one stands out, four stories are laid
through the readings round it, and the one that leaves least is told: this reading alone is wrong; from here
on every angle is off by the same (backlash, the wheel slipped); from here on every lift is off by the same
(the dial moved); or none of them, and it is the lobe.
"""

import math
import statistics
from collections.abc import Sequence
from typing import NamedTuple

from calc.formulas.lift_curve import solve

SLIP, JUMP, MOVED, FLANK = "slip", "jump", "moved", "flank"
STANDS_OUT = 5  # times the median of the neighbours'; common practice, no source
NEIGHBOURS = 4  # either side, through which a reading is foretold
ROUND = 7  # readings either side in which a story is told
_DEGREE, _STORY = 4, 6  # of the polynomials: through few neighbours, and through the readings of a story


class Fault(NamedTuple):
    """`row` of the readings, from 0; how much its lift stands off (m), and by what angle (rad) or lift (m)
    all that follows is off."""

    kind: str
    row: int
    off: float
    shift: float = 0.0


def _fit(
    ts: Sequence[float], ys: Sequence[float], degree: int = _STORY, more: Sequence[float] = ()
) -> tuple[list[float], float]:
    """Least squares of a polynomial and a further column: coefficients, and the sum of squares left."""
    columns = [[t**power for t in ts] for power in range(degree + 1)] + ([list(more)] if more else [])
    matrix = [[sum(a * b for a, b in zip(x, y)) for y in columns] for x in columns]
    found = solve(matrix, [sum(a * b for a, b in zip(x, ys)) for x in columns])
    left = [y - sum(c * column[n] for c, column in zip(found, columns)) for n, y in enumerate(ys)]
    return found, sum(x * x for x in left)


def _foretold(angles: Sequence[float], lifts: Sequence[float], n: int) -> float:
    """How far a reading stands off what its neighbours foretell, m."""
    low = max(0, min(n - NEIGHBOURS, len(angles) - 2 * NEIGHBOURS - 1))
    near = [k for k in range(low, min(len(angles), low + 2 * NEIGHBOURS + 1)) if k != n]
    scale = max(abs(angles[k] - angles[n]) for k in near)
    found, _ = _fit([(angles[k] - angles[n]) / scale for k in near], [lifts[k] for k in near], _DEGREE)
    return lifts[n] - found[0]


def fault_in(angles: Sequence[float], lifts: Sequence[float], least: Sequence[float]) -> Fault | None:
    """The worst fault of a table, None where all of it is smooth. `least`, m for each reading, is what it may
    stand off by its own doubt and the lobe's own bends."""
    offs = [_foretold(angles, lifts, n) for n in range(len(angles))]
    out = []
    for n in range(2, len(offs) - 2):
        beside = [abs(offs[k]) for k in range(n - 8, n + 9) if abs(k - n) > 2 and 0 <= k < len(offs)]
        if abs(offs[n]) > max(STANDS_OUT * statistics.median(beside), least[n]):
            out.append(n)
    if not out:
        return None
    worst = max(out, key=lambda n: abs(offs[n]))
    return _told_apart(angles, lifts, offs, worst, least)


def _told_apart(
    angles: Sequence[float], lifts: Sequence[float], offs: Sequence[float], worst: int, least: Sequence[float]
) -> Fault:
    here = range(max(0, worst - ROUND), min(len(angles), worst + ROUND + 1))
    middle = angles[worst]
    scale = max(abs(angles[k] - middle) for k in here)
    ts, ys = [(angles[k] - middle) / scale for k in here], [lifts[k] for k in here]
    stories: list[tuple[float, Fault]] = []
    for k in here[2:-2]:
        if abs(k - worst) > 2:
            continue
        alone = [1.0 if n == k else 0.0 for n in here]
        found, left = _fit(ts, ys, more=alone)
        stories.append((left, Fault(SLIP, k, found[-1], found[-1])))
        after = [1.0 if n >= k else 0.0 for n in here]
        found, left = _fit(ts, ys, more=after)
        stories.append((left, Fault(MOVED, k, found[-1], found[-1])))
        shift = _shift(ts, ys, here, k)
        if shift is not None:
            left, by = shift
            stories.append((left, Fault(JUMP, k, offs[k], by * scale)))
    _, plain = _fit(ts, ys)
    # a dial that moved leaves the table's ends apart by as much, and nothing else does
    ends = lifts[-1] - lifts[0]
    apart = abs(ends) > max(least[0], least[-1])
    told = [
        story
        for story in stories
        if (story[1].kind == MOVED and abs(ends - story[1].shift) < 0.5 * abs(ends)) == apart
        and (story[1].kind == MOVED) == apart
    ]
    left, best = min(told or [s for s in stories if s[1].kind != MOVED], key=lambda story: story[0])
    spread = math.sqrt(left / len(ts))
    if spread > max(least[k] for k in here) / 2 or left > 0.2 * plain:
        return Fault(FLANK, worst, offs[worst])
    return best


def _shift(ts: list[float], ys: list[float], here: range, k: int) -> tuple[float, float] | None:
    """What is left, and by how much angles jump (in units of t), where all from row k on are off by the same
    angle: lifts after it belong to t + by. By a search, as a jump is not small against a step."""
    first = next(n for n, row in enumerate(here) if row >= k)

    def left(by: float) -> float:
        return _fit([t + (by if n >= first else 0.0) for n, t in enumerate(ts)], ys)[1]

    gap = ts[first] - ts[first - 1]
    tries = [gap * (n / 8) for n in range(-7, 17)]
    best = min(tries, key=left)
    a, b = best - gap / 8, best + gap / 8
    golden = (math.sqrt(5) - 1) / 2
    for _ in range(16):
        c, d = b - golden * (b - a), a + golden * (b - a)
        a, b = (a, d) if left(c) <= left(d) else (c, b)
    by = (a + b) / 2
    return left(by), by
