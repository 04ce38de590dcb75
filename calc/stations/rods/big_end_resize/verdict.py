"""Do the big ends clean up to size, and do the rods agree then?"""

from calc.core.conformance import past
from calc.core.result import Judged, say
from calc.stations.rods.big_end_resize.asked import In
from calc.stations.rods.big_end_resize.remedy import remedy
from calc.stations.rods.big_end_resize.rod import Rod
from calc.stations.rods.big_end_resize.rods import Rods


def as_they_are(i: In, rods: Rods) -> bool:
    """Is no face to be cut, and every bore within its limits?"""
    return rods.uncut and i.low <= min(rods.readings, key=float) and max(rods.readings, key=float) <= i.high


def verdict_on(i: In, rods: Rods) -> Judged:
    if past(rods.clean, i.high):
        return (
            "fail",
            say("Rod {n} does not clean up: {d}", n=rods.worst.name, d=rods.clean),
            remedy(rods.worst, i),
        )
    if past(i.least_length, rods.short.length):
        return _too_short(i, rods.short)
    if past(rods.spread, i.most_spread):
        return (
            "attention",
            say("Centres {s} apart, {a} allowed", s=rods.spread, a=i.most_spread),
            (
                "Cut the longest rods to the shortest, within the limits, or look among spare rods for one"
                " that is alike."
            ),
        )
    if as_they_are(i, rods):
        return (
            "pass",
            say("In limits as they are: {e} out of round", e=rods.round),
            "Leave these bores alone. Write them down by number, with the torque at which they were read.",
        )
    return _cleans_up(i, rods)


def _too_short(i: In, rod: Rod) -> Judged:
    return (
        "fail",
        say("Rod {n} too short: {L}", n=rod.name, L=rod.length),
        say(
            (
                "{q} went. Cut less off the rod and more off its cap: the cap's cut costs no length,"
                " where the bore is centred on the parting line."
                if not past(i.least_length, rod.length + rod.lost)
                else (
                    "It was too short before any cut, and length does not come back. Do not cut it: look"
                    " for another rod."
                )
            ),
            q=rod.lost,
        ),
    )


def _cleans_up(i: In, rods: Rods) -> Judged:
    if past(rods.clean, i.wanted):
        return (
            "attention",
            say("Cleans up only at {d}", d=rods.clean),
            say(
                "Rod {n} needs that. Hone it to between {d} and {high}, or cut its faces a little more if the"
                " tight place lies along the rod.",
                n=rods.worst.name,
                d=rods.clean,
                high=i.high,
            ),
        )
    return (
        "pass",
        say("Cleans up at {d}, centres {s} apart", d=rods.clean, s=rods.spread),
        say(
            "Bolts at full torque, then hone to {w}. Measure in three directions, {low} to {high}.",
            w=i.wanted,
            low=i.low,
            high=i.high,
        ),
    )
