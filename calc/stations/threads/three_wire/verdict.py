"""Is the pitch diameter within its class?"""

from calc.core.result import Judged, say
from calc.core.working import Number
from calc.reference.standards.threads import Limits
from calc.stations.shared.thread_sizes import NOTHING, length


def verdict_on(bolt: Limits, found: Number, least: Number, most: Number) -> Judged:
    if float(found) < float(least) - NOTHING:
        return (
            "fail",
            say("Pitch diameter under {c} by {by}", c=bolt.name, by=length(float(least) - float(found))),
            (
                "Do not use it: a worn or stretched thread does not come back. Measure at two more places"
                " first, then fit a new one."
            ),
        )
    if float(found) > float(most) + NOTHING:
        return (
            "fail",
            say("Pitch diameter over {c} by {by}", c=bolt.name, by=length(float(found) - float(most))),
            (
                "Look for dirt under a wire and for plating. If it stays, chase it with a die; do not force"
                " it in."
            ),
        )
    return (
        "pass",
        say("Pitch diameter within {c}: {d}", c=bolt.name, d=found),
        say(
            "{a} to {b} are allowed. Read it at three places along, and turned by a right angle.",
            a=least,
            b=most,
        ),
    )
