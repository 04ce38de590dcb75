"""Is it round, straight and within its limits, everywhere?"""

from typing import NamedTuple

from calc.core.conformance import past
from calc.core.result import Judged, Table, say
from calc.core.working import Number, constant
from calc.declare.calculator import Limit
from calc.stations.measuring.round_and_taper.asked import BORE, JOURNAL, In
from calc.stations.measuring.round_and_taper.shape import Shape
from calc.stations.shared.forms import SIZE

SMALL, LARGE = "small", "large"
CURE = {
    (
        JOURNAL,
        SMALL,
    ): "Measure that place once more. If it stays, grind to the next undersize and take shells to"
    " match, or scrap it.",
    (JOURNAL, LARGE): "Measure that place once more. If it stays, grind or polish it to size.",
    (BORE, SMALL): "Measure that place once more. If it stays, hone or bore it to size.",
    (BORE, LARGE): "Measure that place once more. If it stays, it is worn: next oversize, sleeve, or scrap.",
}


class _Sizes(NamedTuple):
    """Of a smallest and a largest size: past what the part was made to, and past its wear limit or not."""

    small: bool
    large: bool
    worn_out: bool


def verdict_on(i: In, shape: Shape) -> Judged:
    sizes = _sizes(i, shape.smallest, shape.largest)
    # past what it was made to, not past what it may wear to
    worn_within = i.worn is not None and (sizes.small if i.what == JOURNAL else sizes.large)
    return (
        _size_wrong(i, shape, sizes, worn_within)
        or _form_wrong(i, shape)
        or (_worn_within(i, shape) if worn_within else None)
        or _right(i, shape)
    )


def limits_of(i: In, shape: Shape) -> tuple[Limit, ...]:
    # of a size past what it was made to, on the side to which it wears
    wears = "fail" if i.worn is None else "attention"
    wear_low, wear_high = (i.worn, None) if i.what == JOURNAL else (None, i.worn)
    return (
        Limit("the smallest size", shape.smallest, low=i.low, level=wears if i.what == JOURNAL else "fail"),
        Limit("the largest size", shape.largest, high=i.high, level=wears if i.what == BORE else "fail"),
        Limit("the wear", shape.smallest, low=wear_low),
        Limit("the wear", shape.largest, high=wear_high),
        Limit("the roundness", shape.out_of_round, high=i.round_limit),
        Limit("the taper", shape.judged, high=i.taper_limit),
    )


def _sizes(i: In, smallest: Number | float, largest: Number | float) -> _Sizes:
    return _Sizes(
        i.low is not None and past(i.low, smallest),
        i.high is not None and past(largest, i.high),
        i.worn is not None and (past(i.worn, smallest) if i.what == JOURNAL else past(largest, i.worn)),
    )


def _size_wrong(i: In, shape: Shape, sizes: _Sizes, worn_within: bool) -> Judged | None:
    """Of two faults the one that no cut takes away comes first: a journal too small, a bore too large."""
    if sizes.worn_out and i.worn is not None:
        worn = float(i.worn)
        size, bounds, way = (
            (shape.smallest, (worn, None), SMALL)
            if i.what == JOURNAL
            else (shape.largest, (None, worn), LARGE)
        )
        headline = say("Worn out: {d}, {w} is its limit", d=size.held_to(*bounds), w=i.worn)
        return "fail", headline, CURE[i.what, way]
    small = "fail", say("Too small: {d}", d=shape.smallest), CURE[i.what, SMALL]
    large = "fail", say("Too large: {d}", d=shape.largest), CURE[i.what, LARGE]
    if i.what == JOURNAL:
        return small if sizes.small and not worn_within else large if sizes.large else None
    return large if sizes.large and not worn_within else small if sizes.small else None


def _form_wrong(i: In, shape: Shape) -> Judged | None:
    if i.round_limit is not None and past(shape.out_of_round, i.round_limit):
        worst = max(shape.stations, key=lambda station: float(station.oval))
        return (
            "fail",
            say("Out of round: {r}", r=shape.out_of_round),
            say(
                "At {station}. Measure there once more, bolted up as it runs; if it stays, machine it.",
                station=f"station {worst.number}",
            ),
        )
    if i.taper_limit is not None and past(shape.judged, i.taper_limit):
        return (
            "fail",
            say("Tapered: {t}", t=shape.judged),
            "Measure the ends once more, at the same distance from the edges; if it stays, machine it.",
        )
    return None


def _worn_within(i: In, shape: Shape) -> Judged:
    return (
        "attention",
        say("Worn, within its limit: {d}", d=shape.smallest if i.what == JOURNAL else shape.largest),
        say(
            f"It may run again {'down' if i.what == JOURNAL else 'up'} to {{w}}, and a part that was"
            " re-machined may not: that one must be as made.",
            w=i.worn,
        ),
    )


def _right(i: In, shape: Shape) -> Judged:
    if all(limit is None for limit in (i.low, i.high, i.worn, i.round_limit, i.taper_limit)):
        return (
            "attention",
            say("{r} out of round, {t} taper", r=shape.out_of_round, t=shape.judged),
            "No limit was given, so nothing was judged. Type the maker's limits.",
        )
    return (
        "pass",
        say("Round within {r}, straight within {t}", r=shape.out_of_round, t=shape.judged),
        "Write down the largest and the smallest, not the mean: they are what the fit is worked with.",
    )


def station_by_station(i: In, shape: Shape) -> Table:
    rows, states = [], []
    for station in shape.stations:
        values = list(map(float, station.diameters))
        sizes = _sizes(i, min(values), max(values))
        wears, other = (sizes.small, sizes.large) if i.what == JOURNAL else (sizes.large, sizes.small)
        oval = i.round_limit is not None and past(station.oval, i.round_limit)
        bad = sizes.worn_out or other or wears and i.worn is None or oval
        told = (constant("", "", SIZE, value) for value in (min(values), max(values), station.mean))
        rows.append((str(station.number), station.oval, *told))
        states.append("fail" if bad else "attention" if wears else "pass")
    return Table(
        "Station by station",
        ("Station", "Out of round", "Smallest", "Largest", "Mean"),
        tuple(rows),
        tuple(states),
    )
