"""What is said of a new guide: its grip, the stem in it, then what is worth a look."""

from calc.core.conformance import past
from calc.core.result import Judged, Limit, Text, say
from calc.stations.heads.guide_fit.asked import In
from calc.stations.heads.guide_fit.clearance import Clearance
from calc.stations.heads.guide_fit.sizes import Sizes
from calc.stations.shared.ring_in_wall import short_by
from calc.stations.shared.sleeve import Grip


def verdict_on(i: In, sizes: Sizes, grip: Grip, stem: Clearance) -> Judged:
    """State, headline, and what to do; the worst first."""
    return (
        _never_holds(grip)
        or _holds_too_little(i, grip)
        or _seizes(stem)
        or _yields(grip)
        or _tight(i, stem)
        or _unlike_as_made(i, stem)
        or _not_to_ream(i, stem)
        or (
            "pass",
            say("Press it in, then ream to {D}", D=sizes.ream),
            say(
                "Warm the head, press the guide in square to its stop, let it cool. Only then measure the"
                " bore and ream out {a}.",
                a=stem.to_ream,
            ),
        )
    )


def limits_of(i: In, grip: Grip, stem: Clearance, tight: tuple[Limit, ...]) -> tuple[Limit, ...]:
    """What the verdict is decided by; `tight` is what any guide is held to."""
    brittle = grip.joint.wall.material.brittle
    worn_stem = (
        ()
        if i.least_stem is None
        else (Limit("the stem that it is reamed to", i.stem, low=i.least_stem, level="attention"),)
    )
    return (
        Limit("the grip left", grip.left, low=i.least_grip),
        Limit("what head and guide bear", grip.room, low=0),
        Limit("the head's stress", grip.used[1], high=1, level="fail" if brittle else "attention"),
        Limit("the guide's stress", grip.used[0], high=1, level="attention"),
        Limit("what is left to ream", stem.stock, low=0, level="attention"),
        Limit("the clearance wanted", stem.cold, low=i.least_new, high=i.most_new, level="attention"),
        *tight,
        *worn_stem,
    )


def _guide_that_serves(grip: Grip) -> Text:
    if grip.serving.serves:
        return grip.serving.told("For this hole take a guide of {w} to {m}.")
    return say(
        "No guide serves this hole as it runs: what holds hot already overloads it. Look for one that"
        " grows more, or a thicker wall."
    )


def _never_holds(grip: Grip) -> Judged | None:
    do_not = say("Do not fit this guide. {other}", other=_guide_that_serves(grip))
    part, share = grip.hardest
    if grip.interference <= 0:
        return "fail", say("Falls in: guide {d} under the hole", d=short_by(grip.interference)), do_not
    if grip.cold.interference <= 0:
        return "fail", say("No grip: roughness takes up all {d}", d=grip.interference), do_not
    if grip.cracks:
        return "fail", say("Head may crack: {s} of its strength", s=share), do_not
    if grip.room < 0:
        return "fail", say(part + " gives way: {d} too much", d=short_by(grip.room)), do_not
    if grip.left <= 0:
        return "fail", say("Comes loose: {d} left " + grip.loosest, d=grip.left), do_not
    return None


def _holds_too_little(i: In, grip: Grip) -> Judged | None:
    if not past(i.least_grip, grip.left):
        return None
    return (
        "fail",
        say("Little grip: {d} left " + grip.loosest, d=grip.left),
        say(
            "Measure both again. If it stays, do not fit this guide. {other}", other=_guide_that_serves(grip)
        ),
    )


def _seizes(stem: Clearance) -> Judged | None:
    if stem.running > 0:
        return None
    return (
        "fail",
        say("Stem seizes: {c} left when running", c=stem.running),
        "Ream larger: type more clearance. Look at the temperatures too.",
    )


def _yields(grip: Grip) -> Judged | None:
    if not grip.gives:
        return None
    return (
        "attention",
        say(grip.hardest[0] + " yields a little: {d} lost", d=grip.lost),
        say(
            "{left} of grip are left for good, and it holds. Measure both again. {other}",
            left=grip.left,
            other=_guide_that_serves(grip),
        ),
    )


def _tight(i: In, stem: Clearance) -> Judged | None:
    if past(i.least_hot, stem.running):
        return (
            "attention",
            say("Tight when running: {c} left", c=stem.running),
            say("{least} were wanted. Ream larger by what is missing.", least=i.least_hot),
        )
    if stem.first <= 0:
        return (
            "attention",
            say("Tight while warming up: {c} left", c=stem.first),
            (
                "A stem at full heat in a cold guide would seize. Ream larger: type that much more clearance,"
                " unless the maker's is this one."
            ),
        )
    return None


def _unlike_as_made(i: In, stem: Clearance) -> Judged | None:
    if past(i.least_new, stem.cold):
        return (
            "attention",
            say("Tighter than as made: {c}, {m} at least", c=stem.cold, m=i.least_new),
            "Type more clearance, unless the maker's is this one.",
        )
    if past(stem.cold, i.most_new):
        return (
            "attention",
            say("Wider than as made: {c}, {m} at most", c=stem.cold, m=i.most_new),
            (
                "Type less clearance. A pilot stands in it when the seat is cut, and clearance given now"
                " is as good as wear."
            ),
        )
    return None


def _not_to_ream(i: In, stem: Clearance) -> Judged | None:
    if stem.stock <= 0:
        return (
            "attention",
            say("Nothing to ream: bore already {d} larger", d=short_by(stem.stock)),
            "Take a guide that comes with a smaller bore, or measure this one again once it is in.",
        )
    if i.least_stem is not None and past(i.least_stem, i.stem):
        return (
            "attention",
            say("Worn stem: {d}, as made {m} at least", d=i.stem, m=i.least_stem),
            (
                "A guide reamed to it is too tight for the next valve. Ream for the valve that is to stay:"
                " measure a new one, or leave the reaming until it is there."
            ),
        )
    return None
