"""Is the gauge good enough for the tolerance that is judged with it?"""

from calc.core.result import Judged, say
from calc.core.working import Number
from calc.stations.measuring.gauge_uncertainty.asked import MEAN, In
from calc.stations.measuring.gauge_uncertainty.budget import Part

GOOD = 0.25  # common practice: the expanded doubt no more than a quarter of the tolerance
# standard uncertainty over tolerance: past it no reading, not even in the middle, is within at 95 %
HOPELESS = 0.5 / 1.96


def verdict_on(
    i: In, mean: Number, expanded: Number, share: Number, total: Number, budget: list[Part]
) -> Judged:
    worst = max(budget, key=lambda part: float(part.u))
    if float(total) > float(i.tolerance) * HOPELESS:
        return (
            "fail",
            say("Too coarse: takes {s} of the tolerance", s=share),
            say(
                "With this doubt no reading could be accepted. Most of it comes from “{words}”. {advice}",
                words=worst.words.lower(),
                advice=worst.advice,
            ),
        )
    if share > GOOD:
        return (
            "attention",
            say("Coarse: takes {s} of the tolerance", s=share),
            say(
                "Use it well inside the limits only. Most of the doubt comes from “{words}”. {advice}",
                words=worst.words.lower(),
                advice=worst.advice,
            ),
        )
    return (
        "pass",
        say("Good to ± {U}", U=expanded),
        say(
            "Write it behind the reading, {x} ± {U}; every calculator takes it so."
            if i.reported == MEAN
            else "Write ± {U} behind the one reading; every calculator takes it so.",
            x=mean.shown(4),
            U=expanded,
        ),
    )
