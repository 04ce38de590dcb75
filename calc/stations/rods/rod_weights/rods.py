"""The set of rods: how far its ends are apart, now and once the pads gave what they can."""

from collections.abc import Iterable
from typing import NamedTuple

from calc.core.kinds import RATIO
from calc.core.working import Number, Value, form, greatest, step
from calc.stations.rods import RODS
from calc.stations.rods.rod_weights.asked import In
from calc.stations.rods.rod_weights.rod import Pads, Rod, rod_of
from calc.stations.rods.rod_weights.told import GRAMS, Out


class Rods(NamedTuple):
    """`worst` is the larger spread of the two ends, `left` the larger one then."""

    each: list[Rod]
    light_big: Number
    light_small: Number
    off_big: Number
    off_small: Number
    spread_big: Number
    spread_small: Number
    big_after: Number
    small_after: Number
    worst: Number
    left: Number


def rods_of(i: In) -> Rods:
    rows = {name: row for name, row in zip(RODS, i.weights) if row is not None}
    light_big, light_small = (min((row[end] for row in rows.values()), key=float) for end in (0, 1))
    pads = Pads(
        _share("β", "Big end's", i.beyond_big, i.centre_distance),
        _share("σ", "Small end's", i.beyond_small, i.centre_distance),
        i.most_big,
        i.most_small,
    )
    each = [rod_of(name, row, (light_big, light_small), pads) for name, row in rows.items()]
    off_big = Out.off_big(most(rod.off_big for rod in each))
    off_small = Out.off_small(most(rod.off_small for rod in each))
    spread_big = Out.spread_big(apart(rod.big for rod in each))
    spread_small = Out.spread_small(apart(rod.small for rod in each))
    big_after = Out.big_after(apart(rod.big_after for rod in each))
    small_after = Out.small_after(apart(rod.small_after for rod in each))
    worst = step("Δ", "The larger spread of the two ends", GRAMS, greatest(spread_big, spread_small))
    left = step("Δ_1", "The larger spread, then", GRAMS, greatest(big_after, small_after))
    return Rods(
        each,
        light_big,
        light_small,
        off_big,
        off_small,
        spread_big,
        spread_small,
        big_after,
        small_after,
        worst,
        left,
    )


def _share(symbol: str, whose: str, beyond: Number, centre_distance: Number) -> Number:
    label = f"{whose} pad beyond, as share of the centre distance"
    return step(symbol, label, form(RATIO, 3), beyond / centre_distance)


def most(masses: Iterable[Number]) -> Number:
    return max(masses, key=float)


def apart(masses: Iterable[Number]) -> Value:
    """The heaviest less the lightest."""
    listed = list(masses)
    return greatest(max(listed, key=float) - min(listed, key=float), 0.0)
