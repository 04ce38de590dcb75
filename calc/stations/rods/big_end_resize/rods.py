"""The set of rods: what cleans up the worst of them, the stock to hone off, and how far their centre
distances differ."""

from typing import NamedTuple

from calc.core.working import Number
from calc.stations.rods import RODS
from calc.stations.rods.big_end_resize.asked import In, refuse_other_bore
from calc.stations.rods.big_end_resize.rod import Rod, rod_of
from calc.stations.rods.big_end_resize.told import Out


class Rods(NamedTuple):
    """`worst` cleans up last, `short` is the shortest; `stocks` are those of the worst, in rod, cap and at
    the side; `off` is the new centre that lies farthest off the parting line."""

    each: list[Rod]
    worst: Rod
    short: Rod
    clean: Number
    least_stock: Number
    shortest: Number
    longest: Number
    spread: Number
    stocks: tuple[Number, ...]
    most_stock: Number
    round: Number
    off: Number

    @property
    def readings(self) -> list[Number]:
        return [reading for rod in self.each for reading in rod.readings]

    @property
    def uncut(self) -> bool:
        return not any(float(cut) for rod in self.each for cut in rod.cuts)


def rods_of(i: In) -> Rods:
    each = []
    for place, (name, readings) in enumerate(zip(RODS, i.bores)):
        if readings is not None:
            refuse_other_bore(place, readings, i.wanted)
            each.append(rod_of(name, readings, i.cuts[place], i.wanted, i.centred, i.nominal_length))
    worst = max(each, key=lambda rod: float(rod.clean))
    short = min(each, key=lambda rod: float(rod.length))
    clean = Out.clean(worst.clean)
    least_stock = Out.least_stock((i.wanted - clean) / 2)
    shortest, longest = Out.shortest(short.length), Out.longest(most(each, "length"))
    spread = Out.spread(longest - shortest)
    named = (Out.stock_rod, Out.stock_cap, Out.stock_side)
    stocks = tuple(out(stock) for out, stock in zip(named, worst.stocks))
    return Rods(
        each,
        worst,
        short,
        clean,
        least_stock,
        shortest,
        longest,
        spread,
        stocks,
        Out.most_stock(max((stock for rod in each for stock in rod.stocks), key=float)),
        Out.round_before(most(each, "round")),
        max((rod.centre for rod in each), key=lambda c: abs(float(c))),
    )


def most(rods: list[Rod], what: str) -> Number:
    """The largest of what the rods have."""
    return max((getattr(rod, what) for rod in rods), key=float)
