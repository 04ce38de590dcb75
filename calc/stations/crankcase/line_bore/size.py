"""What the saddles call for: they stay, run on, or are bored to the next size in which shells are sold."""

from typing import NamedTuple

from calc.core.conformance import past
from calc.core.working import Number, constant, greatest
from calc.stations.crankcase.line_bore.asked import In
from calc.stations.crankcase.line_bore.saddles import Saddles
from calc.stations.crankcase.line_bore.told import Out
from calc.stations.shared.forms import COARSE

STAY, WORN, BORE = "stay", "worn", "bore"
# m: a saddle so little under an oversize's least was bored to that, for a saddle never shrinks
READ_UNDER = 0.01e-3


class Size(NamedTuple):
    """`now` is the oversize that the saddles have. `oversize` is that at which they are finished; the
    last one sold
    where none does (not `serves`). `whole` where all of its limits serve, and not only those above what
    cleans up."""

    state: str
    now: Number
    oversize: Number
    serves: bool
    known: bool
    whole: bool
    last: bool
    standard_low: Number
    low: Number
    high: Number
    aim: Number
    stock_worst: Number
    stock_best: Number

    @property
    def bored(self) -> bool:
        return self.state == BORE and self.serves


def size_of(i: In, saddles: Saddles) -> Size:
    now = _now(i, saddles)
    state = _state(i, saddles, now)
    known = i.step is not None and i.last is not None
    found = now if state == STAY else _first(i, now, saddles.clean)
    if found is None:
        found = i.last if i.last is not None and i.last >= now else now
        serves = False
    else:
        serves = True
    oversize = Out.oversize(found)
    standard_low = i.low + oversize
    whole = not past(saddles.clean, standard_low)
    usable = serves and state != STAY
    low = Out.low(greatest(standard_low, saddles.clean) if usable else standard_low)
    high = Out.high(i.high + oversize)
    aim = Out.aim((low + high) / 2)
    return Size(
        state,
        now,
        oversize,
        serves,
        known,
        whole,
        known and state == BORE and serves and past(oversize + i.step, i.last),  # type: ignore[operator,arg-type]
        standard_low,
        low,
        high,
        aim,
        Out.stock_worst((aim - saddles.clean) / 2),
        Out.stock_best((aim - saddles.first_clean) / 2),
    )


def _sizes(i: In) -> list[Number]:
    """Oversizes that there are: the standard first."""
    times = 0
    if i.step is not None and i.last is not None:
        times = int(float(i.last) / float(i.step) + 1e-6)
    by = 0.0 if i.step is None else float(i.step)
    return [constant("o_k", "Oversize", COARSE, k * by) for k in range(times + 1)]


def _now(i: In, saddles: Saddles) -> Number:
    """The largest oversize that every reading has reached."""
    reached = [o for o in _sizes(i) if float(saddles.smallest) >= float(i.low + o) - READ_UNDER]
    by = float(reached[-1]) if reached else 0.0
    return constant("O_0", "Oversize that the saddles have", COARSE, by)


def _first(i: In, now: Number, clean: Number) -> Number | None:
    """The first size, from the present one on, within whose limits the saddles clean up."""
    for oversize in (now, *_sizes(i)):
        if not past(now, oversize) and not past(clean, i.high + oversize):
            return oversize
    return None


def _state(i: In, saddles: Saddles, now: Number) -> str:
    small = past(i.low + now, saddles.smallest)
    if saddles.cut or small or past(saddles.farthest, i.line_worn):
        return BORE
    if not past(saddles.largest, i.high + now) and not past(saddles.farthest, i.line_new):
        return STAY
    most = i.high if i.worn is None else i.worn
    return BORE if past(saddles.largest, most + now) else WORN
