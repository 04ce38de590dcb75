"""All journals of a kind: whether they may stay, and if not, the first undersize at which every one of them
cleans up."""

from typing import NamedTuple

from calc.core.conformance import past
from calc.core.result import impossible
from calc.core.working import Number, constant, greatest, least, step
from calc.declare.calculator import Output, Rows
from calc.stations.crank.regrind.asked import LARGER, In
from calc.stations.crank.regrind.journal import Journal, journal_of
from calc.stations.crank.regrind.told import Out
from calc.stations.shared.forms import COARSE, SIZE

STAY, WORN, GRIND = "stay", "worn", "grind"  # what the sizes as read call for
# m: a largest reading so little over an undersize's upper limit was ground to that undersize, and no worn one
READ_OVER = 0.01e-3


class Sizes(NamedTuple):
    """Limits of the standard journal, and the undersizes sold; None where nobody knows them."""

    low: Number
    high: Number
    worn: Number | None
    by: Number | None
    last: Number | None


class Lot(NamedTuple):
    """`now` is the undersize that they are ground to already. `undersize` is that at which they clean up,
    or `now` where they may stay; the last that is sold where none does (not `serves`). `whole` where all of
    its limits serve, and not only up to `clean`. `low` and `high` are its limits."""

    words: str  # Mains, Rod journals
    field: str
    each: list[Journal]
    sizes: Sizes
    state: str
    now: Number
    worst: Journal
    clean: Number
    undersize: Number
    serves: bool
    whole: bool
    low: Number
    high: Number
    aim: Number
    stock: Number
    most: Number
    shell: Number

    @property
    def ground(self) -> bool:
        return self.state == GRIND and self.serves

    @property
    def is_last(self) -> bool:
        """Can it never be ground again?"""
        by, last = self.sizes.by, self.sizes.last
        return self.ground and by is not None and last is not None and past(self.undersize + by, last)


def mains_of(i: In) -> Lot:
    """The bow counts for those between the two that lie in the blocks."""
    rows = _rows(i.mains)
    inner = {name for name, _ in rows[1:-1]}
    sizes = Sizes(i.main_low, i.main_high, i.main_worn, i.main_step, i.main_last)
    return _lot("m", "Mains", "mains", rows, sizes, i, i.main_unworn, inner)


def pins_of(i: In) -> Lot:
    """Each pin is set up on its own axis, so that the bow costs it nothing."""
    sizes = Sizes(i.pin_low, i.pin_high, i.pin_worn, i.pin_step, i.pin_last)
    return _lot("p", "Rod journals", "pins", _rows(i.pins), sizes, i, i.pin_unworn, set())


def _rows(grid: Rows) -> list[tuple[str, tuple[Number, ...]]]:
    return [(str(n), row) for n, row in enumerate(grid, 1) if row is not None]


def _lot(
    kind: str,
    words: str,
    field: str,
    rows: list[tuple[str, tuple[Number, ...]]],
    sizes: Sizes,
    i: In,
    unworn: Number | None,
    bowed: set[str],
) -> Lot:
    now = _ground_to(kind, words, field, rows, sizes)
    full = (
        unworn if unworn is not None else step(f"N_{kind}", f"{words}, most as made", SIZE, sizes.high - now)
    )
    each = [
        journal_of(kind, name, readings, full, i.bow if name in bowed else None, i.wear)
        for name, readings in rows
    ]
    worst = min(each, key=lambda j: float(j.clean))
    state = _state(i, each, sizes, now, bool(bowed))
    largest = greatest(*(j.largest for j in each))
    at = now if state == STAY else first_undersize(sizes, now, worst.clean, past(largest, sizes.high - now))
    u = at if at is not None else now if sizes.last is None else sizes.last
    out = _Outs(kind)
    clean, undersize = out("clean", worst.clean), out("undersize", u)
    low, high = out("low", sizes.low - undersize), out("high", sizes.high - undersize)
    whole = not past(high, worst.clean)
    # nothing is ground where they stay, and no size under their limits is told for it
    top = high if whole or at is None or state == STAY else clean
    aim = out("aim", (low + top) / 2)
    return Lot(
        words,
        field,
        each,
        sizes,
        state,
        now,
        worst,
        clean,
        undersize,
        at is not None,
        whole,
        low,
        high,
        aim,
        out("stock", (clean - aim) / 2),
        out("most", ((largest + i.bow if bowed else largest) - aim) / 2),
        out("shell", undersize / 2),
    )


class _Outs:
    """The outputs of a kind of journal, by what they tell."""

    def __init__(self, kind: str) -> None:
        self._of = "main" if kind == "m" else "pin"

    def __call__(self, what: str, expression: Number) -> Number:
        output: Output = getattr(Out, f"{self._of}_{what}")
        return output(expression)


def _ground_to(
    kind: str, words: str, field: str, rows: list[tuple[str, tuple[Number, ...]]], sizes: Sizes
) -> Number:
    """The undersize that a lot was ground to before: the deepest under whose upper limit the largest reading
    still lies, for a journal never grows."""
    name, largest = max(
        ((name, reading) for name, readings in rows for reading in readings), key=lambda pair: float(pair[1])
    )
    if float(largest - sizes.high) > LARGER:
        raise impossible(
            f"{field}.{name}.1",
            "{d} is more than any of this engine has, {high}; look at the sheet's size, and give what is"
            " read on this journal",
            d=largest,
            high=sizes.high,
        )
    times = 0
    if sizes.by is not None and sizes.last is not None:
        most = int(float(sizes.last) / float(sizes.by) + 1e-6)
        below = float(sizes.high) + READ_OVER - float(largest)
        times = max(0, min(most, int(below / float(sizes.by) + 1e-9)))
    by = 0.0 if sizes.by is None else times * float(sizes.by)
    return constant(f"U_{kind}0", f"{words}, undersize that they have", COARSE, by)


def first_undersize(sizes: Sizes, now: Number, clean: Number, unfinished: bool = False) -> Number | None:
    """The first past the present one of whose limits any lies within what cleans up, or the present one
    itself where they were left larger than that (`unfinished`); None where none is sold, or nobody knows
    which are."""
    if unfinished and not past(sizes.low - now, clean):
        return now
    if sizes.by is None or sizes.last is None:
        return None
    for times in range(1, int(float(sizes.last) / float(sizes.by) + 1e-6) + 1):
        u = constant("u", "Undersize", COARSE, times * float(sizes.by))
        if past(u, now) and not past(sizes.low - u, clean):
            return u
    return None


def _state(i: In, each: list[Journal], sizes: Sizes, now: Number, bowed: bool) -> str:
    """May they stay as they are, run on worn, or must they be ground?"""
    smallest, largest = least(*(j.smallest for j in each)), greatest(*(j.largest for j in each))
    out_of_round, taper = greatest(*(j.round for j in each)), greatest(*(j.taper for j in each))

    def form_in(round_limit: Number | None, taper_limit: Number | None) -> bool:
        return not (round_limit is not None and past(out_of_round, round_limit)) and not (
            taper_limit is not None and past(taper, taper_limit)
        )

    bent = bowed and i.bow_worn is not None and past(i.bow, i.bow_worn)
    if bent or past(largest, sizes.high - now):
        return GRIND
    if not past(sizes.low - now, smallest) and form_in(i.round_new, i.taper_new):
        return STAY
    if (
        sizes.worn is not None
        and not past(sizes.worn - now, smallest)
        and form_in(i.round_worn, i.taper_worn)
    ):
        return WORN
    return GRIND
