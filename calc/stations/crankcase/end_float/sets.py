"""Sets of three shims, tried one by one. Lengths as whole picometres, so that equal sums are equal: shims in
thousandths of an inch are no whole micrometres, and what floats leave is less."""

from collections import Counter
from collections.abc import Iterator, Sequence
from itertools import combinations, combinations_with_replacement
from typing import NamedTuple, SupportsFloat

THREE = 3


def picometres(size: SupportsFloat) -> int:
    """A length, m, in whole picometres."""
    return round(float(size) * 1e12)


class Found(NamedTuple):
    """`best`: which shims, by their place in the list, thinnest first. `fitting`: how many unlike sets lie
    within the limits. `thinnest` and `thickest` in all, pm."""

    best: tuple[int, int, int]
    fitting: int
    thinnest: int
    thickest: int


def best_three(
    shims: Sequence[int], again: bool, low: int, high: int, wanted: int, fitted: Sequence[int] = ()
) -> Found:
    """The three whose sum lies nearest to `wanted`, and how many sets lie from `low` to `high`, all in pm.

    `again`: may a size be taken more than once? Of sets that serve alike, the one that keeps most of those
    `fitted`, then the one of the most even thickness.
    """
    sums: dict[tuple[int, ...], tuple[int, ...]] = {}
    for places in _sets(range(len(shims)), again):
        ordered = tuple(sorted(places, key=lambda n: shims[n]))
        sums.setdefault(tuple(shims[n] for n in ordered), ordered)
    kept = Counter(fitted)

    def rank(sizes: tuple[int, ...]) -> tuple[int, int, int, tuple[int, ...]]:
        same = sum((kept & Counter(sizes)).values())
        return abs(sum(sizes) - wanted), -same, sizes[-1] - sizes[0], sizes

    first, second, third = sums[min(sums, key=rank)]
    totals = [sum(sizes) for sizes in sums]
    return Found(
        (first, second, third), sum(low <= total <= high for total in totals), min(totals), max(totals)
    )


def _sets(places: range, again: bool) -> Iterator[tuple[int, ...]]:
    return combinations_with_replacement(places, THREE) if again else combinations(places, THREE)


def one_to_add(
    shims: Sequence[int], again: bool, low: int, high: int
) -> tuple[tuple[int, int], int, int] | None:
    """Two of the shims and the least and greatest thickness of a third that makes a set of them, pm: that
    whose middle is nearest to the mean of those there. None where no thickness above none serves."""
    pairs = (
        combinations_with_replacement(range(len(shims)), 2) if again else combinations(range(len(shims)), 2)
    )
    mean = sum(shims) / len(shims)
    found = [
        (abs(2 * mean - (low + high - 2 * (shims[a] + shims[b]))), (a, b), low - shims[a] - shims[b])
        for a, b in pairs
        if low - shims[a] - shims[b] > 0
    ]
    if not found:
        return None
    _, pair, least = min(found)
    return pair, least, least + high - low
