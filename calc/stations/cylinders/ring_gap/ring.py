"""Each ring in its bore and its groove: its gap where the bore is smallest and where it is worn, what heat
leaves
of it, and its clearance sideways."""

from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import PI, Number, Value, constant, greatest, least, step
from calc.reference import sources
from calc.stations.cylinders.ring_gap.asked import RINGS, In
from calc.stations.cylinders.ring_gap.told import Out
from calc.stations.shared.forms import COARSE, SIZE, STRAIN
from calc.stations.shared.growth import reference_temperature

WORN_APART = 0.3e-3  # m: a bore worn by more is another size of bore, or a slip; common practice


class Bounds(NamedTuple):
    """Least, most as made and worn out; None where nobody knows it."""

    low: Number | None
    high: Number | None
    worn: Number | None

    @property
    def known(self) -> bool:
        return self.low is not None and self.high is not None


class Ring(NamedTuple):
    name: str
    gap: Number
    top: Number
    hot: Number
    side: Number | None
    gaps: Bounds
    sides: Bounds


class Rings(NamedTuple):
    """`wanted` and `closes` are gaps of any of them, cold, where the bore is smallest."""

    each: list[Ring]
    gap: Number
    top: Number
    hot: Number
    closes: Number
    wanted: Number
    share: Number

    @property
    def hottest(self) -> Ring:
        return min(self.each, key=lambda ring: float(ring.hot))


def rings_of(i: In) -> Rings:
    smallest, largest = _bores(i)
    reference = reference_temperature()
    bore = step(
        "ε_z",
        "Growth of the barrel",
        STRAIN,
        i.bore_expansion * (i.bore_running - reference),
        sources.THERMAL,
    )
    ring = step(
        "ε_r", "Growth of a ring", STRAIN, i.ring_expansion * (i.ring_running - reference), sources.THERMAL
    )
    around = step("U_1", "Bore's circumference there, running", SIZE, PI * smallest * (1 + bore))
    each = [
        _ring(i, name, row, smallest, largest, around, ring)
        for name, row in zip(RINGS, i.rings)
        if row is not None
    ]
    wanted = Out.wanted(PI * smallest - (around - i.spare) / (1 + ring), sources.THERMAL)
    return Rings(
        each,
        Out.gap(least(*(r.gap for r in each))),
        Out.top(greatest(*(r.top for r in each))),
        Out.hot(least(*(r.hot for r in each))),
        Out.closes(PI * smallest - around / (1 + ring), sources.THERMAL),
        wanted,
        Out.share(wanted / smallest),
    )


def _bores(i: In) -> tuple[Number, Number]:
    """Where the bore is smallest and where it is most worn, of the places that were read."""
    read = [b for b in (i.bore, i.smallest, i.largest) if b is not None]
    small, large = min(read, key=float), max(read, key=float)
    if float(large - small) > WORN_APART:
        name = "largest" if i.largest is large else "smallest" if i.smallest is small else "bore"
        raise impossible(
            name,
            "makes the bore {a} to {b}, more than 0.3 mm apart; give places of one bore",
            a=small,
            b=large,
        )
    return small, large


def _ring(
    i: In,
    name: str,
    row: tuple[Number, ...],
    smallest: Number,
    largest: Number,
    around: Number,
    growth: Number,
) -> Ring:
    read, width, groove = row
    mark = name[0]
    gap = step(f"s_{mark}", f"Gap of the {name} ring, least", COARSE, _at(read, smallest, i))
    if gap < 0:
        raise impossible(
            f"rings.{RINGS.index(name) + 1}.1",
            "is {g}, and the bore is smaller elsewhere by {d}: the ends would meet there cold; give the gap"
            " as"
            " read, or file it first",
            g=read,
            d=constant("", "", SIZE, float(i.bore - smallest)),
        )
    length = step(f"l_{mark}", f"Length of the {name} ring, cold", SIZE, PI * i.bore - read)
    hot = around - length * (1 + growth)
    return Ring(
        name,
        gap,
        step(f"s_g{mark}", f"Gap of the {name} ring, worn bore", COARSE, _at(read, largest, i)),
        step(f"s_1{mark}", f"Gap of the {name} ring, hot", COARSE, hot, sources.THERMAL),
        _side(name, width, groove),
        Bounds(*(getattr(i, f"{name}_{end}") for end in ("low", "high", "worn"))),
        Bounds(*(getattr(i, f"{name}_side_{end}") for end in ("low", "high", "worn"))),
    )


def _at(read: Number, bore: Number, i: In) -> Value:
    """The gap in another place of the bore: the ring is as long as before."""
    return read + PI * (bore - i.bore)


def _side(name: str, width: Number | None, groove: Number | None) -> Number | None:
    if width is None or groove is None:
        return None
    if width >= groove:
        raise impossible(
            f"rings.{RINGS.index(name) + 1}.2",
            "is {w}, and its groove is {g}: it would not go in; give a ring narrower than its groove",
            w=width,
            g=groove,
        )
    return step(f"f_{name[0]}", f"Side clearance of the {name} ring", SIZE, groove - width)
