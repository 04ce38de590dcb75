"""Does the bore keep to its class?"""

from typing import NamedTuple

from calc.core.result import Judged, say
from calc.core.working import Number
from calc.reference.standards.drills import Drill
from calc.reference.standards.threads import Limits
from calc.stations.shared.thread_sizes import NOTHING, least_and_most, length
from calc.stations.threads.tap_drill.asked import CUT, In


class Found(NamedTuple):
    """The drill chosen and the best of the list, the bore and its limits, the share of thread."""

    chosen: Drill
    best: Drill
    bore: Number
    low: Number
    high: Number
    share: Number


def verdict_on(i: In, hole: Limits, found: Found) -> Judged:
    own = i.own is not None
    name = "Your hole" if own else f"Drill {found.chosen.name}"
    better = (
        f" Take {found.best.name}." if own else " Choose the other list of drills, or less or more thread."
    )
    least, most = least_and_most(hole.minor)
    over, under = float(found.bore) - most, least - float(found.bore)
    if over > NOTHING:
        return (
            "fail",
            say(name + ": bore over {class_} by {by}", class_=hole.name, by=length(over)),
            say(
                "{share} of thread is left. "
                + (
                    "It holds less than the class should: work out the length of engagement, or fit a wire"
                    " thread insert."
                    if own
                    else "Little is lost if the engagement is long; the class is not kept." + better
                ),
                share=found.share,
            ),
        )
    if under > NOTHING:
        return (
            "fail",
            say(name + ": bore under {class_} by {by}", class_=hole.name, by=length(under)),
            "Drill or ream it larger before you tap it: a tight hole breaks taps, and the bolt may bind at"
            " its root." + better,
        )
    return (
        "pass",
        say(name + ": {share} of thread", share=found.share),
        say(
            "Within {class_}: {a} to {b}. "
            + (
                "Turn back every half turn to break the chip."
                if i.tap == CUT
                else "Run it in one go, with plenty of oil."
            ),
            class_=hole.name,
            a=found.low,
            b=found.high,
        ),
    )
