"""Leave the bore, fit larger lifters, or bush it: by the wear limit, then by what the bearings lose."""

from calc.core.conformance import past
from calc.core.result import Judged, Limit, say
from calc.stations.crankcase.lifter_gallery.asked import In
from calc.stations.crankcase.lifter_gallery.leak import Leak


def limits_of(i: In, found: Leak) -> tuple[Limit, ...]:
    return (
        Limit("the lifter's clearance", found.clearance, high=i.worn),
        Limit("the share that leaks", found.share, high=i.most),
        Limit("the share that leaks", found.share, high=i.fair, level="attention"),
        Limit("the lifter's clearance at its wider end", found.widest, high=i.worn, level="attention"),
    )


def verdict_on(i: In, found: Leak) -> Judged:
    if past(found.clearance, i.worn):
        return (
            "fail",
            say("Worn: {c} at the gallery, {m} allowed", c=found.clearance, m=i.worn),
            "Try an unworn lifter first: if that is within, the bore stays. Else ream all bores for"
            " oversize lifters, or"
            " bush this one; the bush's oil hole over the gallery's, and reamed in line with its neighbours.",
        )
    if past(found.share, i.most):
        return (
            "fail",
            say("Starves the bearings: {s} leaks at the lifters", s=found.share),
            say(
                "{q} of {p} go if all {n} are like this one. Measure them all: bush or ream those that are"
                " wide"
                " at the gallery.",
                q=found.every,
                p=i.pump,
                n=i.bores,
            ),
        )
    if past(found.share, i.fair):
        return (
            "attention",
            say("Much leaks at the lifters: {s}", s=found.share),
            say(
                "{f} is fair. Measure the other bores: few are as worn as the worst. Then larger lifters or"
                " bushes for"
                " the widest ones, before a larger pump.",
                f=i.fair,
            ),
        )
    if past(found.widest, i.worn):
        return (
            "attention",
            say("Bell mouth: {c} at one end, {m} allowed", c=found.widest, m=i.worn),
            "It leaks little, for the gallery's place is narrow, but the lifter tilts in it and wears its"
            " lobe. Try an unworn lifter first; if it still rocks, bush the bore, or ream all for oversize"
            " lifters.",
        )
    return (
        "pass",
        say("Leave it: {c} at the gallery, {s} leaks", c=found.clearance, s=found.share),
        say(
            "If all {n} are like this one they take {q} of {p}. Clean the gallery with a brush, and fit the"
            " lifter"
            " oiled: it must sink by its own weight.",
            n=i.bores,
            q=found.every,
            p=i.pump,
        ),
    )
