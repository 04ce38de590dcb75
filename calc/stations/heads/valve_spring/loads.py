"""The loads of a set of springs as fitted: by two readings of each, or by what the sizes give."""

import math
from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import Number, constant, greatest, step
from calc.formulas import spring
from calc.reference import sources
from calc.stations.heads import VALVES
from calc.stations.heads.valve_spring.asked import GROUND, SIZES, In
from calc.stations.heads.valve_spring.told import RATE, Out
from calc.stations.shared.forms import COARSE, NEWTON, TIMES

# Tighter coils crack in winding, wider ones tangle and buckle (EN 13906-1 has 4 to 20, from memory).
LEAST_INDEX, MOST_INDEX = 3, 20


class Spring(NamedTuple):
    """One spring's straight line, and its loads as fitted."""

    name: str
    load: Number  # at the first height
    rate: Number
    seat: Number
    open: Number


class Loads(NamedTuple):
    """A set of springs as fitted: all of them, those by which it is judged, and what is told of it."""

    springs: list[Spring]
    worn: Spring  # least load at the first height
    weak: Spring  # least load with the valve shut
    soft: Spring  # least load at full lift
    stiff: Spring  # most load with the valve shut
    strong: Spring  # most load at full lift
    coil: Number  # over the wire
    solid: Number
    rate_by_sizes: Number
    fitted: Number  # height with the shims, valve shut
    opened: Number  # height at full lift
    rate: Number
    free: Number
    seat: Number
    open: Number
    margin: Number
    spread: Number


class Shims(NamedTuple):
    wanted: Number  # more, for the seat load wanted
    most: Number  # more, that coil bind leaves room for


def loads_of(i: In) -> Loads:
    """Every spring by its line, the weakest and strongest among them, and their room to coil bind."""
    index = _index(i.wire, i.mean_diameter)
    solid, rate_by_sizes = _by_sizes(i)
    fitted = step("h_s", "Height of the spring with its shims, valve shut", COARSE, i.fitted_height - i.shim)
    opened = step("h_o", "Height of the spring at full lift", COARSE, fitted - i.lift)
    springs = _springs(i, rate_by_sizes, fitted, opened)
    worn, weak, soft = (min(springs, key=key) for key in (_at_first, _shut, _full))
    stiff, strong = (max(springs, key=key) for key in (_shut, _full))
    rate = Out.rate(weak.rate)
    free = Out.free_length(spring.free_length(weak.load, i.height_1, weak.rate))
    if fitted >= free:
        raise impossible(
            "fitted_height",
            "is {h}, and with its shims not less than the length of spring {name} without load, {L}; give"
            " less",
            h=i.fitted_height,
            name=weak.name,
            L=free,
        )
    return Loads(
        springs,
        worn,
        weak,
        soft,
        stiff,
        strong,
        index,
        solid,
        rate_by_sizes,
        fitted,
        opened,
        rate,
        free,
        seat=Out.seat_load(weak.seat),
        open=Out.open_load(soft.open),
        margin=Out.bind_margin(opened - solid, sources.SPRING),
        spread=Out.spread(stiff.seat - weak.seat),
    )


def shims_of(i: In, loads: Loads) -> Shims:
    weak = loads.weak
    return Shims(
        Out.shim_wanted(greatest((i.wanted_seat - weak.seat) / weak.rate, 0.0)),
        Out.shim_most(greatest(loads.margin - i.least_margin, 0.0)),
    )


def _index(wire: Number, mean_diameter: Number) -> Number:
    """C = D/d, refused where no spring is wound so."""
    index = step("C", "Coil over wire", TIMES, spring.index(wire, mean_diameter))
    if not LEAST_INDEX <= index <= MOST_INDEX:
        ends = [
            constant("", "", COARSE, turn(float(wire) * times * 1e5) / 1e5)
            for turn, times in ((math.ceil, LEAST_INDEX), (math.floor, MOST_INDEX))
        ]
        raise impossible(
            "mean_diameter",
            "is {D}, {c} times the wire of {d}, and springs are wound with 3 to 20; give {low} to {high}, or"
            " another wire",
            D=mean_diameter,
            c=index,
            d=wire,
            low=ends[0],
            high=ends[1],
        )
    return index


def _by_sizes(i: In) -> tuple[Number, Number]:
    """Solid length and rate that wire, coil and turns give; refuses heights that do not go with them."""
    if i.active_turns > i.total_turns:
        raise impossible(
            "active_turns",
            "is {n}, more than all turns, {all}; give less",
            n=i.active_turns,
            all=i.total_turns,
        )
    solid = Out.solid_length(spring.solid_length(i.wire, i.total_turns, i.ends == GROUND), sources.SPRING)
    rate = Out.rate_by_sizes(spring.rate(i.modulus, i.wire, i.mean_diameter, i.active_turns), sources.SPRING)
    if i.height_2 >= i.height_1:
        raise impossible(
            "height_2", "is {b}, not less than the first height, {a}; give less", a=i.height_1, b=i.height_2
        )
    if i.method != SIZES and i.height_2 < solid:
        raise impossible(
            "height_2",
            "is {h}, and {n} turns of {d} stand solid at {solid}; give more, or other turns or wire",
            h=i.height_2,
            n=i.total_turns,
            d=i.wire,
            solid=solid,
        )
    return solid, rate


def _springs(i: In, rate_by_sizes: Number, fitted: Number, opened: Number) -> list[Spring]:
    """One spring by its sizes, or every one that was read."""

    def line(name: str, short: str, load: Number, rate: Number) -> Spring:
        seat, full = (
            step(
                f"F_{letter},{short}",
                f"Load of spring {name}, {when}",
                NEWTON,
                spring.load_at(height, load, i.height_1, rate),
            )
            for letter, when, height in (("s", "valve shut", fitted), ("o", "full lift", opened))
        )
        return Spring(name, load, rate, seat, full)

    if i.method == SIZES:
        return [line("by its sizes", "d", _load_by_sizes(i, rate_by_sizes), rate_by_sizes)]
    return [
        line(name, _short(name), row[0], _rate_read(name, r, row, i.height_1, i.height_2))
        for r, (name, row) in enumerate(zip(VALVES, i.loads))
        if row
    ]


def _load_by_sizes(i: In, rate: Number) -> Number:
    """At the first height."""
    if i.free_length <= i.height_1:
        raise impossible(
            "free_length",
            "is {L}, not longer than the first height, {h}, so that it would bear nothing there; give more",
            L=i.free_length,
            h=i.height_1,
        )
    return step(
        "F_1", "Load at the first height", NEWTON, rate * (i.free_length - i.height_1), sources.SPRING
    )


def _rate_read(name: str, r: int, row: tuple[Number, ...], height_1: Number, height_2: Number) -> Number:
    """From row `r` of the grid, counted from 0."""
    if row[1] <= row[0]:
        raise impossible(
            f"loads.{r + 1}.2",
            "spring {name} has {b} at the second height, not more than {a} at the first, which is taller;"
            " give more",
            name=name,
            a=row[0],
            b=row[1],
        )
    rate = spring.rate_of(row[0], row[1], height_1, height_2)
    return step(f"k_{_short(name)}", f"Rate of spring {name}", RATE, rate)


def _short(name: str) -> str:
    """3e for 3 exhaust, as the cells of the grid are called."""
    return name[0] + name.split()[1][0]


def _at_first(s: Spring) -> float:
    return float(s.load)


def _shut(s: Spring) -> float:
    return float(s.seat)


def _full(s: Spring) -> float:
    return float(s.open)
