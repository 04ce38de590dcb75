"""Each stem as read, the work on it, and what that comes to for the set."""

from collections.abc import Callable
from typing import NamedTuple

from calc.core.conformance import DUST
from calc.core.result import impossible
from calc.core.working import Number, constant, greatest, step
from calc.reference import sources
from calc.stations.heads import VALVES
from calc.stations.heads.stem_height.asked import In
from calc.stations.heads.stem_height.room import plan
from calc.stations.heads.stem_height.told import Out
from calc.stations.shared.forms import COARSE


class Read(NamedTuple):
    """One valve as read."""

    name: str
    height: Number
    length: Number | None
    level: Number  # height as compared with the others


class Valve(NamedTuple):
    """One valve as read, and what to do to it."""

    name: str
    height: Number
    length: Number | None
    level: Number
    tip: Number  # to come off
    sink: Number
    fitted: Number  # height of the spring, once the seat is sunk
    shim: Number  # 0 where the spring's height is right; negative where it is too short


class Stems(NamedTuple):
    """The set: every valve, those by which it is judged, and what is told of it."""

    valves: list[Valve]
    above: Valve  # highest
    below: Valve  # lowest
    ground: Valve  # most to come off its tip
    sunk: Valve  # most to sink
    tight: Valve  # spring shortest for what it should be
    bottom: Number
    top: Number
    spread: Number
    tip: Number
    sink: Number
    shim: Number
    highest: Number
    lowest: Number
    spread_after: Number
    fitted_most: Number

    def most_to_do(self, wanted: Number) -> Valve:
        """The valve with most work on it; of those with none, the one farthest off the height wanted."""
        return max(
            self.valves, key=lambda v: (float(v.tip + v.sink), float(v.shim), abs(float(v.level - wanted)))
        )


def check_limits(i: In) -> None:
    if i.high <= i.low:
        raise impossible(
            "high",
            "is {high}, not more than the least height, {low}; give more than {low}",
            high=i.high,
            low=i.low,
        )
    if not i.low <= i.wanted <= i.high:
        raise impossible(
            "wanted",
            "is {w}, not within the heights allowed; give {low} to {high}",
            w=i.wanted,
            low=i.low,
            high=i.high,
        )


def stems_of(i: In) -> Stems:
    read = _read(i)
    start, end = plan(
        [float(each.level) for each in read],
        float(i.low),
        float(i.high),
        float(i.most_spread),
        float(i.wanted),
        float(i.tip_most),
        float(i.sink_most),
    )
    bottom = Out.bottom(constant("a_t", "Lowest place of a stem, by trial", COARSE, start))
    top = Out.top(bottom + constant("w", "Room for all stems", COARSE, end - start))
    valves = [_worked(i, each, bottom, top) for each in read]

    def extreme(pick: Callable, what: str) -> Valve:
        return pick(valves, key=lambda v: float(getattr(v, what)))

    above, below = extreme(max, "level"), extreme(min, "level")
    ground, sunk = extreme(max, "tip"), extreme(max, "sink")
    tallest, shimmed = extreme(max, "fitted"), extreme(max, "shim")
    after = [v.level - v.tip + v.sink for v in valves]
    spread = Out.spread(above.level - below.level)
    tip, sink = Out.tip(ground.tip), Out.sink(sunk.sink)
    thickest = greatest(shimmed.fitted - i.fitted_height, 0.0) if float(shimmed.shim) > 0 else 0.0
    return Stems(
        valves,
        above,
        below,
        ground,
        sunk,
        extreme(min, "shim"),
        bottom,
        top,
        spread,
        tip,
        sink,
        shim=Out.shim(thickest),
        highest=Out.highest(above.level - i.wanted),
        lowest=Out.lowest(below.level - i.wanted),
        spread_after=Out.spread_after(max(after, key=float) - min(after, key=float)),
        fitted_most=Out.fitted_most(tallest.fitted),
    )


def _read(i: In) -> list[Read]:
    """The valves whose stem was read; an exhaust's that stands higher by design counts as an intake's."""
    read = []
    for r, (name, row) in enumerate(zip(VALVES, i.heights)):
        if row is None:
            continue
        height, length = row
        if height <= i.tip_to_retainer:
            raise impossible(
                f"heights.{r + 1}.1",
                "{name} is {h}, and its tip stands {c} above the spring, which leaves no room for one; give"
                " more than {c}",
                name=name,
                h=height,
                c=i.tip_to_retainer,
            )
        level = height
        if i.exhaust_higher and name.endswith("exhaust"):
            level = step(
                f"H'_{_short(height)}",
                f"Height of {name}, counted as an intake",
                COARSE,
                height - i.exhaust_higher,
            )
        read.append(Read(name, height, length, level))
    return read


def _worked(i: In, read: Read, bottom: Number, top: Number) -> Valve:
    """What brings a valve's stem between `bottom` and `top`, and what its spring wants then."""
    name, short = read.name, _short(read.height)
    tip = step(
        f"t_{short}",
        f"To come off the tip of {name}",
        COARSE,
        greatest(read.level - top, 0.0),
        sources.STEM_MOVES,
    )
    sink = step(
        f"z_{short}",
        f"To sink the seat of {name}",
        COARSE,
        greatest(bottom - read.level, 0.0),
        sources.STEM_MOVES,
    )
    fitted = step(
        f"f_{short}",
        f"Fitted height of {name}, then",
        COARSE,
        read.height + sink - i.tip_to_retainer,
        sources.STEM_MOVES,
    )
    off = fitted - i.fitted_height
    right = abs(float(off)) <= float(i.fitted_off) + DUST
    return Valve(*read, tip, sink, fitted, constant("", "", COARSE, 0.0) if right else off)


def _short(height: Number) -> str:
    """3e for 3 exhaust, as the cell of the grid is called."""
    return height.symbol[2:]
