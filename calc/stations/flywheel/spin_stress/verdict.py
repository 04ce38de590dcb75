"""May this flywheel run at its highest speed?"""

from calc.core.conformance import past
from calc.core.result import Judged, say
from calc.declare.calculator import Limit
from calc.stations.flywheel.spin_stress.asked import CHECKED, CRACKED, NOT_TRIED, In
from calc.stations.flywheel.spin_stress.disc import Found


def verdict_on(i: In, found: Found) -> Judged:
    return _may_not(i, found) or _not_yet(i) or _may(i, found)


def limits_of(i: In, found: Found) -> tuple[Limit, ...]:
    if i.looked == CRACKED:
        return (Limit("the highest speed", i.speed, high=0.0),)
    return (
        Limit("the highest speed", i.speed, high=i.maker),
        Limit("bursting over highest speed", found.margin, low=i.least_margin),
        Limit("strength over the greatest stress", found.factor, low=i.least_factor),
    )


def _may_not(i: In, found: Found) -> Judged | None:
    if i.looked == CRACKED:
        return (
            "fail",
            "Does not run: it is cracked",
            "Scrap it, and cut it through so that nobody fits it. A crack in iron does not stop, and it"
            " is not"
            " welded.",
        )
    if past(i.speed, i.maker):
        return (
            "fail",
            say("Does not run: {n}, {m} allowed", n=i.speed, m=i.maker),
            "No calculation allows more than its maker does. Limit the engine's speed, or take a"
            " flywheel that is"
            " made for more.",
        )
    if past(i.least_margin, found.margin):
        return (
            "fail",
            say("Too weak: bursts at {k} times, {l} wanted", k=found.margin, l=i.least_margin),
            "Do not cut so. Leave more metal between bore and rim, or take more off the rim itself: that"
            " is what"
            " pulls.",
        )
    if past(i.least_factor, found.factor):
        return (
            "fail",
            say("Too weak: strength {k} times, {l} wanted", k=found.factor, l=i.least_factor),
            say(
                "Do not cut so: {p} at the bore, {h} at the edge of a hole, of {s}. Leave more metal"
                " inside the"
                " friction face, or take more off the rim.",
                p=found.peak,
                h=found.hole,
                s=found.strength,
            ),
        )
    return None


def _not_yet(i: In) -> Judged | None:
    if i.looked == NOT_TRIED:
        return (
            "attention",
            "Not yet: nobody looked for cracks",
            "Its section would bear this speed if it were sound. Clean it, try it with dye all over,"
            " holes, bore and"
            " corners above all, then say so here.",
        )
    if i.looked == CHECKED:
        return (
            "attention",
            "Not yet: heat cracks in the friction face",
            "Cut the face until dye shows none, within its least thickness, then type the section anew."
            " If they do"
            " not go, scrap it: the clutch's heat opens them further.",
        )
    return None


def _may(i: In, found: Found) -> Judged:
    return (
        "pass",
        say("Bears {n}: bursts at {k} times that", n=i.speed, k=found.margin),
        say(
            "Its maker's {m} stays the limit, however strong it looks here. A round corner in every"
            " step, crack test"
            " after the last cut, then balance.",
            m=i.maker,
        ),
    )
