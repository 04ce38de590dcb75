"""What diameters at stations make of a part: how far it is out of round, and how far it tapers."""

from typing import NamedTuple

from calc.core.kinds import COUNT, LENGTH
from calc.core.working import Number, constant, form, greatest, least, step
from calc.stations.measuring.round_and_taper.asked import DIRECTIONS, WHOLE, In
from calc.stations.measuring.round_and_taper.told import Out
from calc.stations.shared.forms import SIZE


class Station(NamedTuple):
    """Its number as the reader counts, from 1, its diameters, how far they differ, and their mean (m)."""

    number: int
    diameters: list[Number]
    oval: Number

    @property
    def mean(self) -> float:
        return sum(map(float, self.diameters)) / len(self.diameters)


class Shape(NamedTuple):
    """`judged` is the taper as its limit is told: in all, or for each 100 mm."""

    stations: list[Station]
    smallest: Number
    largest: Number
    mean: Number
    out_of_round: Number
    taper: Number
    taper_100: Number
    judged: Number


def shape_of(i: In) -> Shape:
    rows = {n: row for n, row in enumerate(i.diameters, 1) if row is not None}
    read = {n: [d for d in row if d is not None] for n, row in rows.items()}
    every = [d for here in read.values() for d in here]
    smallest, largest = Out.smallest(least(*every)), Out.largest(greatest(*every))
    mean = Out.mean(sum(every) / constant("n", "Readings", form(COUNT, 0), len(every)))
    stations = [
        Station(n, here, step(f"Δ_{n}", f"Out of round at station {n}", SIZE, greatest(*here) - least(*here)))
        for n, here in read.items()
    ]
    along = {d: [row[c] for row in rows.values() if row[c] is not None] for c, d in enumerate(DIRECTIONS)}
    tapers = [
        step(f"Δ_{d}", f"Taper across {d}", SIZE, greatest(*here) - least(*here))
        for d, here in along.items()
        if here
    ]
    out_of_round = Out.out_of_round(greatest(*(station.oval for station in stations)))
    taper = Out.taper(greatest(*tapers))
    told_for = constant("l_0", "Length that it is told for", form(LENGTH, 0), 0.1)
    taper_100 = Out.taper_100(taper * told_for / i.length)
    judged = taper if i.taper_over == WHOLE else taper_100
    return Shape(stations, smallest, largest, mean, out_of_round, taper, taper_100, judged)
