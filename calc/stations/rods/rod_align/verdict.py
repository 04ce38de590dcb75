"""Is the rod straight, and do its ends stand in line?"""

from typing import NamedTuple

from calc.core.conformance import past
from calc.core.result import Judged, say
from calc.core.working import Number
from calc.stations.rods.rod_align.asked import In


class Found(NamedTuple):
    """Bend and twist, over the length `over`."""

    bend: Number
    twist: Number
    over: Number


def good(new: Number, worn: Number) -> Number:
    """The limit of a good rod; no more than that of a worn one."""
    return worn if new > worn else new


def verdict_on(i: In, found: Found) -> Judged:
    return _worn(i, found) or _no_longer_good(i, found) or _straight(found)


def _worn(i: In, found: Found) -> Judged | None:
    if past(found.bend, i.bend_worn):
        return (
            "fail",
            say("Bent: {f} over {l}, {w} allowed", f=found.bend, l=found.over, w=i.bend_worn),
            _scrap(i.bend_turned is not None),
        )
    if past(found.twist, i.twist_worn):
        return (
            "fail",
            say("Twisted: {g} over {l}, {w} allowed", g=found.twist, l=found.over, w=i.twist_worn),
            _scrap(i.twist_turned is not None),
        )
    if i.offset is not None and i.offset_worn is not None and past(i.offset, i.offset_worn):
        return (
            "fail",
            say("Ends out of line: {o}, {w} allowed", o=i.offset, w=i.offset_worn),
            (
                "Measure again, on parallels that were tried against each other. If it stays, scrap it: the"
                " rod presses its big end against the cheek and its piston against one side."
            ),
        )
    return None


def _scrap(turned: bool) -> str:
    """What to do with a bent rod, that was read turned end for end as well or not."""
    scrap = (
        "scrap it, unless the maker allows a rod to be straightened: cold, and crack-tested after. Look at"
        " its piston and cylinder too."
    )
    if turned:
        return scrap[0].upper() + scrap[1:]
    return (
        "Turn the rod end for end and read again: the gauge's own error is still in this. If it stays, "
        + scrap
    )


def _no_longer_good(i: In, found: Found) -> Judged | None:
    for words, what, new in (
        ("Bend", found.bend, good(i.bend_new, i.bend_worn)),
        ("Twist", found.twist, good(i.twist_new, i.twist_worn)),
    ):
        if past(what, new):
            return (
                "attention",
                say(words + " {x}: over a good rod's {n}", x=what, n=new),
                (
                    "It may run, but it wears its shells at one end. Clean bores and arbors, turn the rod"
                    " end for end, and read again before you decide."
                ),
            )
    if i.offset is not None and i.offset_new is not None and past(i.offset, i.offset_new):
        return (
            "attention",
            say("Ends out of line: {o}, over a good rod's {n}", o=i.offset, n=i.offset_new),
            (
                "It may run, but its sides wear. Look for shiny cheeks and a pin that has wandered to one"
                " side, and ask the maker whether the rod is meant to be offset."
            ),
        )
    return None


def _straight(found: Found) -> Judged:
    return (
        "pass",
        say("Straight: bend {f}, twist {g}", f=found.bend, g=found.twist),
        "Write both down by the rod's number. Read again after the small end is honed.",
    )
