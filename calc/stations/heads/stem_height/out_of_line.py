"""One valve that stands out of line with the others: more often the wrong valve than a sunk seat."""

from calc.core.conformance import past
from calc.core.result import Remark, warning
from calc.core.working import constant
from calc.stations.heads.stem_height.asked import In
from calc.stations.heads.stem_height.stems import Valve
from calc.stations.shared.forms import COARSE


def odd_one(i: In, valves: list[Valve]) -> Valve | None:
    """The one valve of three or more that is out of line while all others are in order among themselves; None
    where there is no such one."""
    if len(valves) < 3 or _in_order(i, valves):
        return None
    ends = (min(valves, key=_level), max(valves, key=_level))
    alone = [end for end in ends if _in_order(i, [v for v in valves if v is not end])]
    return max(alone, key=lambda end: _gap(end, valves), default=None)


def far_from_all_others(i: In, valves: list[Valve]) -> Remark | None:
    """A warning where one valve of three or more stands far from all others."""
    if len(valves) < 3:
        return None
    farthest = max(valves, key=lambda v: _gap(v, valves))
    gap = _gap(farthest, valves)
    if gap <= float(i.most_spread):
        return None
    return warning(
        "{name} stands {s} from the next one. One valve alone out of line is more often the wrong valve,"
        " or one not on its seat, than a sunk seat.",
        name=farthest.name,
        s=constant("", "", COARSE, gap),
    )


def _in_order(i: In, some: list[Valve]) -> bool:
    levels = [v.level for v in some]
    within = not any(past(i.low, x) or past(x, i.high) for x in levels)
    return within and not past(max(levels, key=float) - min(levels, key=float), i.most_spread)


def _gap(valve: Valve, valves: list[Valve]) -> float:
    """From a stem to the nearest of the others, m."""
    return min(abs(_level(valve) - _level(v)) for v in valves if v is not valve)


def _level(valve: Valve) -> float:
    return float(valve.level)
