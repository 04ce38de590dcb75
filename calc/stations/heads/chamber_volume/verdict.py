"""Are the chambers within their limits and alike, and what is to be done where they are not?"""

import math

from calc.core.advice import at_least, at_most
from calc.core.conformance import past
from calc.core.result import Judged, Limit, say
from calc.core.working import constant
from calc.stations.heads.chamber_volume.asked import CHAMBERS, In
from calc.stations.heads.chamber_volume.chambers import Chambers
from calc.stations.heads.chamber_volume.told import CC_FINE
from calc.stations.shared.forms import COARSE


def verdict_on(i: In, chambers: Chambers) -> Judged:
    """State, headline, and what to do; the worst first."""
    return (
        _cut_too_deep(i)
        or _out_at_both_ends(i, chambers)
        or _too_large(i, chambers)
        or _too_small(i, chambers)
        or _unlike(i, chambers)
        or _alone(chambers)
        or (
            "pass",
            say("Alike: {s} apart, all in limits", s=chambers.spread),
            (
                "Write the volumes down: the compression is worked out from them."
                if len(chambers.each) == len(CHAMBERS)
                else "Write the volumes down, and read the others of the engine: they must be like these."
            ),
        )
    )


def _cut_too_deep(i: In) -> Judged | None:
    if i.cut <= i.most_cut:
        return None
    return (
        "fail",
        say("Cut too deep: {t}, {most} allowed", t=i.cut, most=i.most_cut),
        ("Do not cut. Past that the step is too thin, and the cylinder's top comes too near to the chamber."),
    )


def _out_at_both_ends(i: In, chambers: Chambers) -> Judged | None:
    if not (past(chambers.largest, i.high) and past(i.low, chambers.smallest)):
        return None
    return (
        "fail",
        say("From {a} to {b}: out at both ends", a=chambers.smallest, b=chambers.largest),
        (
            "Measure all again, with fresh grease and no bubble. If it stands, grind the small ones out"
            " first, then cut."
        ),
    )


def _too_large(i: In, chambers: Chambers) -> Judged | None:
    if not past(chambers.largest, i.high):
        return None
    mouth = float(chambers.mouth)
    # what brings the largest down to its limit, in hundredths of a millimetre
    deeper = math.ceil((float(chambers.largest) - float(i.high)) / mouth * 1e5 - 1e-6) / 1e5
    allowed = float(i.cut) + deeper <= float(i.most_cut)
    return (
        "fail",
        say("Too large: {V}, chamber {n}", V=chambers.largest, n=chambers.large.name),
        (
            say(
                "Measure it again, and see whether its valves lie deep. Cutting the step {t} deeper would"
                " bring it to {high} or less.",
                t=at_least(deeper, COARSE),
                high=i.high,
            )
            if allowed and float(chambers.smallest) - deeper * mouth >= float(i.low)
            else (
                "Measure it again, and see whether its valves lie deep or the plug is another. No cut"
                " that is allowed brings all of them into their limits."
            )
        ),
    )


def _too_small(i: In, chambers: Chambers) -> Judged | None:
    small, smallest = chambers.small, chambers.smallest
    if not past(i.low, smallest):
        return None
    short = constant("", "", CC_FINE, float(i.low - smallest))
    if i.cut > 0 and not past(i.low, small.before):
        return (
            "fail",
            say("Too small after the cut: {V}, chamber {n}", V=smallest, n=small.name),
            say(
                "Cut no deeper than {t}, or grind this chamber out by {v} first.",
                t=at_most(chambers.cut_most, COARSE),
                v=short,
            ),
        )
    return (
        "fail",
        say("Too small: {V}, chamber {n}", V=smallest, n=small.name),
        say(
            "Measure it again. If it stands, grind it out by {v}: carbon and sharp edges first, nothing"
            " off the wall round plug and seats.",
            v=short,
        ),
    )


def _unlike(i: In, chambers: Chambers) -> Judged | None:
    if not past(chambers.spread, i.most_spread):
        return None
    # once the small ones are ground out: the largest stays as it is
    unlike_still = past(chambers.largest - max(chambers.smallest, chambers.target), i.most_spread)
    return (
        "attention",
        say("Not alike: {s} apart", s=chambers.spread),
        (
            say(
                "Even ground out to {w} they would differ, for the largest stays as it is. Choose to"
                " match the largest, or cut the step first.",
                w=i.wanted,
            )
            if unlike_still
            else say(
                "Grind out the small ones as in the table, {v} at most, a little at a time, and measure"
                " again.",
                v=chambers.grind,
            )
        ),
    )


def _alone(chambers: Chambers) -> Judged | None:
    if len(chambers.each) > 1:
        return None
    return (
        "attention",
        say("One chamber alone: {V}, within its limits", V=chambers.smallest),
        "Read the others: what counts besides is that they are alike.",
    )


def limits_of(i: In, chambers: Chambers) -> tuple[Limit, ...]:
    return (
        Limit("the depth of the cut", i.cut, high=i.most_cut),
        Limit("the smallest chamber", chambers.smallest, low=i.low),
        Limit("the largest chamber", chambers.largest, high=i.high),
        Limit("the likeness", chambers.spread, high=i.most_spread, level="attention"),
    )
