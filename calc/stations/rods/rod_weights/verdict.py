"""Are the rods alike at both ends, and if not, do their pads have enough to make them so?"""

from calc.core.conformance import past
from calc.core.result import Judged, say
from calc.stations.rods.rod_weights.asked import In
from calc.stations.rods.rod_weights.rods import Rods


def verdict_on(i: In, rods: Rods) -> Judged:
    if not past(rods.worst, i.allowed):
        return (
            "pass",
            say("Alike: big {b}, small {s} apart", b=rods.spread_big, s=rods.spread_small),
            "Leave them as they are. Write the weights on the tag.",
        )
    if not past(rods.left, i.allowed):
        return (
            "attention",
            say("Apart by {d}: take off as listed", d=rods.worst),
            (
                "Grind the pads lengthwise, a little at a time, and weigh both ends again: what goes at one"
                " end shows at the other."
            ),
        )
    return (
        "fail",
        say("Pads run out: {d} stay apart", d=rods.left),
        (
            "The lightest rod does not belong to this set, or the heaviest does not. Look for one that"
            " matches; metal comes off pads and nowhere else."
        ),
    )
