"""Does the ring hold, and does it sit as it should?"""

from calc.core.advice import at_least
from calc.core.conformance import past
from calc.core.result import Judged, say
from calc.declare.calculator import Limit
from calc.stations.lifters.ring_groove.asked import In
from calc.stations.lifters.ring_groove.strength import GROOVE, LIP, RING, Seat, Strength
from calc.stations.shared.forms import COARSE

NEAR = 0.8  # share of the capacity from which it is too near; common practice, no source
SHORT_LIP = 3.0  # groove depths: DIN 472, from memory
_GIVES = {RING: "Ring shears", GROOVE: "Groove gives way", LIP: "Lip shears"}


def limits_of(i: In, seat: Seat, bears: Strength) -> tuple[Limit, ...]:
    return (
        Limit("the load borne", bears.used, high=1),
        Limit("the depth of the groove", seat.depth, low=i.least_depth),
        Limit("the wall behind the groove", seat.wall, low=i.least_wall),
        Limit("the ring's reach", seat.overhang, low=i.least_overhang),
        Limit("the ring's play", seat.play, low=i.least_play, high=i.most_play, level="attention"),
        Limit("the lip", seat.lip_ratio, low=SHORT_LIP, level="attention"),
        Limit("what is left of the load borne", bears.used, high=NEAR, level="attention"),
    )


def verdict_on(i: In, seat: Seat, bears: Strength) -> Judged:
    return (
        _fails(i, seat, bears)
        or _near(i, seat, bears)
        or (
            "pass",
            say("Holds {F}, {k} come", F=bears.capacity, k=bears.thrust),
            "Fit it, turn it once round in its groove by hand, and see that it has sprung out all round.",
        )
    )


def _fails(i: In, seat: Seat, bears: Strength) -> Judged | None:
    if bears.used > 1:
        return (
            "fail",
            say(_GIVES[bears.weakest] + ": {u} of what it bears", u=bears.used),
            "Do not run it. A thicker ring, a deeper groove or more lip, whichever is the weakest; or less"
            " load.",
        )
    if past(i.least_overhang, seat.overhang):
        return (
            "fail",
            say("Ring holds too little: {o} stands out", o=seat.overhang),
            say("It must reach {least} over the unit. Take a broader ring.", least=i.least_overhang),
        )
    if past(i.least_depth, seat.depth):
        return (
            "fail",
            say("Groove shallow: {t}, {least} wanted", t=seat.depth, least=i.least_depth),
            say(
                "Cut it to {g} across its bottom, while {w} of wall stay behind it.",
                g=at_least(i.bore + 2 * i.least_depth, COARSE),
                w=i.least_wall,
            ),
        )
    if past(i.least_wall, seat.wall):
        return (
            "fail",
            say("Wall behind it thin: {w}, {least} wanted", w=seat.wall, least=i.least_wall),
            "Take another body. A crack begins in the corner of this groove.",
        )
    return None


def _near(i: In, seat: Seat, bears: Strength) -> Judged | None:
    if past(i.least_play, seat.play):
        return (
            "attention",
            say("Ring tight in its groove: {c}", c=seat.play),
            "It may not spring out all the way. Stone the ring flat and thinner, or widen the groove.",
        )
    if past(seat.play, i.most_play):
        return (
            "attention",
            say("Ring loose in its groove: {c}", c=seat.play),
            "It hammers the groove wide. Take a thicker ring.",
        )
    if past(SHORT_LIP, seat.lip_ratio):
        return (
            "attention",
            say("Lip short: {q} times the depth", q=seat.lip_ratio),
            say(
                "It should be three times, {n}, or it bends off.", n=at_least(SHORT_LIP * seat.depth, COARSE)
            ),
        )
    if bears.used > NEAR:
        return (
            "attention",
            say("Little to spare: {u} used", u=bears.used),
            "Look at the load again, and at the corner of the groove: a round one bears less.",
        )
    return None
