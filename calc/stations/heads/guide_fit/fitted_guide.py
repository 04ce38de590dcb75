"""What is said of a guide that is in the head: wear, the stem's freedom, then what is worth a look."""

from calc.core.conformance import past
from calc.core.result import Judged, Limit, say
from calc.stations.heads.guide_fit.asked import CUT, In
from calc.stations.heads.guide_fit.clearance import Clearance

# Clearances by sizes and by rocking further apart than this are not of one guide, m; common practice, no
# source.
DISAGREE = 0.02e-3


def verdict_on(i: In, stem: Clearance) -> Judged:
    """State, headline, and what to do; the worst first."""
    return _worn(i, stem) or _tight(i, stem) or _disagree(stem) or _no_pilot(i, stem) or _good(i, stem)


def limits_of(i: In, stem: Clearance, tight: tuple[Limit, ...]) -> tuple[Limit, ...]:
    """What the verdict is decided by; `tight` is what any guide is held to."""
    pilot = (Limit("the guide for a pilot", stem.judged, high=i.most_new, level="attention"),)
    return (
        Limit("the clearance", stem.judged, high=i.worn_clearance),
        *tight,
        Limit("the agreement of sizes and rocking", stem.apart, high=DISAGREE, level="attention"),
        *(pilot if i.seat == CUT else ()),
    )


def _worn(i: In, stem: Clearance) -> Judged | None:
    if not past(stem.judged, i.worn_clearance):
        return None
    return (
        "fail",
        say("Worn: {c} of clearance, {w} allowed", c=stem.judged, w=i.worn_clearance),
        (
            "Try a new valve in it. If that rocks too much as well, fit a new guide; if not, the stem was"
            " worn."
        ),
    )


def _tight(i: In, stem: Clearance) -> Judged | None:
    if stem.running <= 0:
        return (
            "fail",
            say("Seizes: {c} left when running", c=stem.running),
            "Do not run it. Ream the guide, or find the valve that belongs in it.",
        )
    if past(i.least_hot, stem.running):
        return (
            "attention",
            say("Tight when running: {c} left", c=stem.running),
            say(
                "{least} were wanted. Clean the guide, measure again, then ream by what is missing.",
                least=i.least_hot,
            ),
        )
    if stem.first <= 0:
        return (
            "attention",
            say("Tight while warming up: {c} left", c=stem.first),
            (
                "A stem at full heat in a cold guide would seize. Ream the guide by that much, unless the"
                " maker's clearance is this one."
            ),
        )
    return None


def _disagree(stem: Clearance) -> Judged | None:
    if not past(stem.apart, DISAGREE):
        return None
    return (
        "attention",
        say("Sizes show {c}, rocking {r}", c=stem.cold, r=stem.by_rocking),
        (
            "The ends are wider than was measured, or the dial stood elsewhere. Measure the bore at both"
            " ends, and the two lengths again."
            if stem.by_rocking > stem.cold
            else (
                "Less rocking than the sizes allow: oil or carbon in the guide, or the dial stood"
                " elsewhere. Clean and measure again."
            )
        ),
    )


def _no_pilot(i: In, stem: Clearance) -> Judged | None:
    """A pilot is to stand in it, and asks for a guide as made."""
    if i.seat != CUT or not past(stem.judged, i.most_new):
        return None
    return (
        "attention",
        say("Serves the valve, not a pilot: {c}", c=stem.judged),
        say(
            "As made it has {m} at most. In this one a pilot that slips in leans, and a tapered or"
            " spreading one stands as crooked as the guide is worn. Fit a new guide before you cut the"
            " seat; if only the stem is worn, measure with a new valve.",
            m=i.most_new,
        ),
    )


def _good(i: In, stem: Clearance) -> Judged:
    return (
        "pass",
        say("Good: {c} cold, {h} when running", c=stem.cold, h=stem.running),
        (
            "Leave the guide in, and write stem and bore down. For the seat: a pilot that goes in by hand"
            " and does not shake."
            if i.seat == CUT
            else "Leave the guide in. Write stem and bore down for this valve."
        ),
    )
