"""The best pairing, and the parts that belong together: every way is tried, so none is better."""

from collections.abc import Sequence
from itertools import combinations, permutations


def pairing(bores: Sequence[float], parts: Sequence[float], wanted: float) -> tuple[int, ...]:
    """For each bore the part that goes into it (all in one unit): the worst clearance is as near to the one
    `wanted` as any pairing makes it, and among such the sum of the squares is least. At least as many parts
    as
    bores; 8 parts in 4 bores are 1680 ways."""

    def worth(chosen: tuple[int, ...]) -> tuple[float, float]:
        off = [abs(bore - parts[k] - wanted) for bore, k in zip(bores, chosen)]
        return round(max(off), 12), sum(x * x for x in off)

    return min(permutations(range(len(parts)), len(bores)), key=worth)


def together(rows: Sequence[Sequence[float]], count: int) -> tuple[int, ...]:
    """The `count` of the rows whose readings lie closest together: the largest of the spreads of their
    columns is
    least, then the sum of the spreads. `rows` all have the same number of readings, in one unit."""

    def worth(chosen: tuple[int, ...]) -> tuple[float, float]:
        spreads = [max(column) - min(column) for column in zip(*(rows[k] for k in chosen))]
        return round(max(spreads), 12), sum(spreads)

    return min(combinations(range(len(rows)), count), key=worth)
