"""Do the parts always fit, mostly, or too seldom?"""

from calc.core.conformance import past
from calc.core.result import Judged, Text, say
from calc.core.working import Number, constant
from calc.stations.measuring.stack_up.asked import In
from calc.stations.measuring.stack_up.gap import Gap, Link
from calc.stations.shared.forms import SIZE


def verdict_on(i: In, links: list[Link], gap: Gap, within: Number) -> Judged:
    heaviest = max(links, key=lambda link: float(link.half))
    if i.low is None and i.high is None:
        return (
            "attention",
            say("Gap from {a} to {b}", a=gap.least, b=gap.greatest),
            "No limit was given, so nothing was judged. Type the least and the greatest gap that will do.",
        )
    if (i.low is None or not past(i.low, gap.least)) and (i.high is None or not past(gap.greatest, i.high)):
        return (
            "pass",
            say("Always fits: {a} to {b}", a=gap.least, b=gap.greatest),
            "Any set of parts within their limits fits. Measure the gap once all the same.",
        )
    if within >= i.wanted:
        gives = say("Size {i}, ± {t}, has the most to give.", i=heaviest.row, t=heaviest.half)
        return (
            "attention",
            say("All but one in {n} fit", n=_one_in(1 - float(within))),
            say(
                "At worst the gap is {a} to {b}: measure it on every set. {heaviest}",
                a=gap.least,
                b=gap.greatest,
                heaviest=gives.plain(),
            ),
        )
    return "fail", say("Too few fit: {p}", p=within), _cure(i, gap, heaviest)


def _cure(i: In, gap: Gap, heaviest: Link) -> Text:
    """What makes more sets fit: first the gap into the middle of its limits, then less of what adds most."""
    if i.low is not None and i.high is not None:
        off = float(i.low + i.high) / 2 - float(gap.middle)
        if abs(off) > 0.05 * float(i.high - i.low):
            return say(
                "Before you tighten anything, {way} the gap by {off}, which puts it in the middle of its"
                " limits.",
                way="widen" if off > 0 else "narrow",
                off=constant("", "", SIZE, abs(off)),
            )
    return say(
        "Tighten tolerances, match parts, or set the gap with a shim. Size {i}, ± {t}, has the most to give.",
        i=heaviest.row,
        t=heaviest.half,
    )


def _one_in(share: float) -> str:
    """The reciprocal of a small share, in two figures, rounded to the worse side."""
    if share < 1e-9:
        return "a billion"
    size = 10 ** max(0, len(str(int(1 / share))) - 2)
    return f"{int(1 / share) // size * size:,}".replace(",", "\u202f")
