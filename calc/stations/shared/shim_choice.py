"""Shims chosen from those that are sold: the same under all that must stay alike, exactly.

Sizes in m. They are compared in whole tenths of a micrometre, so that a size on a limit lies within it.
"""

from collections.abc import Iterable, Sequence
from itertools import combinations_with_replacement
from typing import NamedTuple

_PER_METRE = 1e7
Stack = tuple[float, ...]


class Wanted(NamedTuple):
    """The limits of what the shims set, None where there is none, and what it is meant to be."""

    low: float | None
    high: float | None
    nominal: float


def stacks(sold: Iterable[float], most: int) -> list[Stack]:
    """Every set of up to `most` shims, none at all first, then the thinnest."""
    sizes = sorted(set(sold))
    every = (stack for n in range(most + 1) for stack in combinations_with_replacement(sizes, n))
    return sorted(every, key=lambda stack: (_whole(sum(stack)), len(stack)))


def room(bare: Sequence[float], stack: Stack, wanted: Wanted) -> float:
    """How far the worst of the sizes lies within its limits with that stack, less than nothing outside;
    without a limit, infinite."""
    thick = _whole(sum(stack))
    rooms = [
        *(_whole(x) + thick - _whole(wanted.low) for x in bare if wanted.low is not None),
        *(_whole(wanted.high) - _whole(x) - thick for x in bare if wanted.high is not None),
    ]
    return min(rooms) / _PER_METRE if rooms else float("inf")


def chosen(bare: Sequence[float], choices: Sequence[Stack], wanted: Wanted) -> Stack | None:
    """Of the stacks that bring all sizes within their limits, that which brings their mean nearest to what
    it is meant to be; of two alike the thinner. None where none does."""
    serving = [stack for stack in choices if room(bare, stack, wanted) >= 0]
    return nearest(bare, serving, wanted) if serving else None


def nearest(bare: Sequence[float], choices: Sequence[Stack], wanted: Wanted) -> Stack:
    """The stack that brings the mean nearest to what it is meant to be, limits or not."""
    doubled, n = sum(map(_whole, bare)), len(bare)
    return min(
        choices,
        key=lambda stack: (
            abs(doubled + n * (_whole(sum(stack)) - _whole(wanted.nominal))),
            _whole(sum(stack)),
            len(stack),
        ),
    )


def _whole(size: float) -> int:
    return round(size * _PER_METRE)
