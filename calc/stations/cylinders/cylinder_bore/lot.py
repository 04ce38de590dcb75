"""All bores of the set: whether they may stay, and if not, the first oversize at which every one of them
cleans
up."""

from typing import NamedTuple

from calc.core.conformance import past
from calc.core.working import Number, constant, greatest, least
from calc.stations.cylinders.cylinder_bore.asked import In
from calc.stations.cylinders.cylinder_bore.bore import Bore
from calc.stations.cylinders.cylinder_bore.told import Out
from calc.stations.shared.forms import COARSE
from calc.stations.shared.honing import LEFT_LEAST, TAKES_MOST

STAY, WORN, HONE, CUT = "stay", "worn", "hone", "cut"
# m: a smallest reading so little under an oversize's lower limit was made to that oversize
READ_UNDER = 0.01e-3


class Lot(NamedTuple):
    """`now` is the oversize that they have already; `oversize` that to which they are finished, the last that
    is sold where none serves (not `serves`)."""

    each: list[Bore]
    state: str
    now: Number
    oversize: Number
    serves: bool
    worst: Bore
    largest: Number
    smallest: Number
    wear: Number
    oval: Number
    taper: Number
    clean: Number
    low: Number
    high: Number
    aim: Number
    stock: Number
    most_off: Number

    @property
    def stays(self) -> bool:
        return self.state in (STAY, WORN)


def lot_of(i: In, each: list[Bore]) -> Lot:
    largest = Out.largest(greatest(*(b.largest for b in each)))
    smallest = Out.smallest(least(*(b.smallest for b in each)))
    wear = Out.wear(greatest(*(b.largest - b.smallest for b in each)))
    oval, taper = Out.oval(greatest(*(b.oval for b in each))), Out.taper(greatest(*(b.taper for b in each)))
    now = _present(i, smallest)
    state, at = _state(i, now, largest, smallest, oval, taper)
    worst = max(each, key=lambda b: float(b.largest if state == HONE else b.clean))
    clean = Out.clean(greatest(*(b.largest if state == HONE else b.clean for b in each)))
    if state == CUT:
        at = _first(i, now, clean, past(i.low + now, smallest))
    u = Out.oversize(at if at is not None else oversizes(i)[-1])
    low, high = Out.finish_low(i.low + u), Out.finish_high(i.high + u)
    aim = Out.aim((low + high) / 2)
    stock, most_off = Out.stock(aim - clean), Out.most_off(aim - smallest)
    return Lot(
        each,
        state,
        now,
        u,
        at is not None,
        worst,
        largest,
        smallest,
        wear,
        oval,
        taper,
        clean,
        low,
        high,
        aim,
        stock,
        most_off,
    )


def oversizes(i: In) -> list[Number]:
    """The standard size and the oversizes sold, evenly apart."""
    times = 0 if i.by is None or i.last is None else int(float(i.last) / float(i.by) + 1e-6)
    by = 0.0 if i.by is None else float(i.by)
    return [constant("u", "Oversize", COARSE, n * by) for n in range(times + 1)]


def _present(i: In, smallest: Number) -> Number:
    """The oversize that they were made to: a bore never shrinks, so the largest under whose lower limit none
    lies; one size for the set."""
    made = [u for u in oversizes(i) if float(smallest) + READ_UNDER >= float(i.low + u)]
    return made[-1] if made else oversizes(i)[0]


def _form_in(oval: Number, taper: Number, round_limit: Number | None, taper_limit: Number | None) -> bool:
    return not (round_limit is not None and past(oval, round_limit)) and not (
        taper_limit is not None and past(taper, taper_limit)
    )


def _state(
    i: In, now: Number, largest: Number, smallest: Number, oval: Number, taper: Number
) -> tuple[str, Number | None]:
    """What the sizes as read call for, and the oversize that goes with it where that is known."""
    true = _form_in(oval, taper, i.round_new, i.taper_new)
    small = past(i.low + now, smallest)
    if true and not small and not past(largest, i.high + now):
        return STAY, now
    if true:  # round and straight, and a little small for one of the sizes: it was bored, and is to be honed
        for u in oversizes(i):
            near = not past(i.low + u, smallest + TAKES_MOST)
            if near and past(i.low + u, smallest) and not past(largest, i.high + u):
                return HONE, u
    within = i.worn is not None and not past(largest, i.worn + now)
    if within and not small and _form_in(oval, taper, i.round_worn, i.taper_worn):
        return WORN, now
    return CUT, None


def _first(i: In, now: Number, clean: Number, small: bool) -> Number | None:
    """The first past the present one, or that itself where they are still too `small` for it, at which the
    tool leaves the hone what it needs to clean up."""
    for u in oversizes(i):
        if (past(u, now) or small) and not past(clean + LEFT_LEAST, (i.low + i.high) / 2 + u):
            return u
    return None
