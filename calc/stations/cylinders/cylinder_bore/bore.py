"""One cylinder as read, brought to 20 °C: its largest and smallest bore, its form, and at what it cleans
up."""

from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import Number, greatest, least, step
from calc.reference import sources
from calc.stations.cylinders.cylinder_bore.asked import CYLINDERS, HEIGHTS, OLD, In
from calc.stations.shared.forms import SIZE

APART = 1e-3  # m: readings of one bore further apart are not of one bore


class Bore(NamedTuple):
    """`clean` is the smallest round bore that takes all of the wear away."""

    name: str
    largest: Number
    smallest: Number
    oval: Number
    taper: Number
    clean: Number


def bores_of(i: In, at_20: Number) -> list[Bore]:
    """`at_20` is a size at 20 °C over the same size as read."""
    found = []
    for n, name in enumerate(CYLINDERS):
        rows = i.bores[n * len(HEIGHTS) : (n + 1) * len(HEIGHTS)]
        read = [row for row in rows if row is not None]
        if not read:
            continue
        if len(read) < len(HEIGHTS):
            missing = next(h for h, row in zip(HEIGHTS, rows) if row is None)
            raise impossible(
                f"bores.{n * len(HEIGHTS) + HEIGHTS.index(missing) + 1}.1",
                "is empty, and cylinder {n} was read at other heights; give all three, or leave the cylinder"
                " out",
                n=name,
            )
        found.append(_bore(i, name, read, at_20, n))
    return found


def _bore(i: In, name: str, rows: list, at_20: Number, n: int) -> Bore:
    every = [d for row in rows for d in row]
    if float(max(every, key=float)) - float(min(every, key=float)) > APART:
        raise impossible(
            f"bores.{n * len(HEIGHTS) + 1}.1",
            "cylinder {n} reads {a} to {b}, more than a millimetre apart; give six readings of one bore",
            n=name,
            a=min(every, key=float),
            b=max(every, key=float),
        )
    largest = step(f"D_g{name}", f"Largest, cylinder {name}", SIZE, greatest(*every) * at_20)
    smallest = step(f"D_k{name}", f"Smallest, cylinder {name}", SIZE, least(*every) * at_20)
    oval = greatest(*(abs(a - b) for a, b in rows)) * at_20
    tapers = [greatest(*(row[way] for row in rows)) - least(*(row[way] for row in rows)) for way in (0, 1)]
    clean = 2 * largest - smallest if i.axis == OLD else largest
    return Bore(
        name,
        largest,
        smallest,
        step(f"o_{name}", f"Out of round, cylinder {name}", SIZE, oval, sources.TWO_POINT),
        step(f"k_{name}", f"Taper, cylinder {name}", SIZE, greatest(*tapers) * at_20, sources.TWO_POINT),
        step(f"D_c{name}", f"Cleans up at, cylinder {name}", SIZE, clean, sources.OLD_AXIS),
    )
