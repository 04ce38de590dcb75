"""Do the ends of a ring meet when hot, are gaps and side clearances those of the sheet?"""

from calc.core.advice import at_least
from calc.core.conformance import past
from calc.core.result import Judged, say
from calc.core.working import constant
from calc.declare.calculator import Limit
from calc.stations.cylinders.ring_gap.ring import Bounds, Ring, Rings
from calc.stations.shared.forms import COARSE

FILE = (
    "File one end, squarely and inwards only, from the face of the ring to its back, break the edges with a"
    " stone, and try it again in its own bore."
)


def verdict_on(rings: Rings) -> Judged:
    for one in (_butts, _gap_wide, _groove_worn, _gap_small, _tight, _within):
        for ring in sorted(rings.each, key=lambda r: float(r.hot)):
            if found := one(ring, rings):
                return found
    return _unknown(rings) or _right(rings)


def limits_of(rings: Rings) -> tuple[Limit, ...]:
    found = [Limit("the gap left when hot", rings.hot, low=0.0)]
    for ring in rings.each:
        found += _bounds(f"the gap of the {ring.name} ring", ring.gap, ring.gaps)
        if ring.side is not None:
            found += _bounds(f"the side clearance of the {ring.name} ring", ring.side, ring.sides)
    return tuple(found)


def _bounds(what: str, size, bounds: Bounds) -> list[Limit]:
    level = "fail" if bounds.worn is None else "attention"
    found = [Limit(what, size, low=bounds.low, level="attention")] if bounds.low is not None else []
    if bounds.high is not None:
        found.append(Limit(what, size, high=bounds.high, level=level))
    if bounds.worn is not None:
        found.append(Limit(what, size, high=bounds.worn))
    return found


def _name(ring: Ring) -> str:
    return f"{ring.name.capitalize()} ring"


def _butts(ring: Ring, rings: Rings) -> Judged | None:
    if not past(0.0, ring.hot):
        return None
    least = rings.wanted if ring.gaps.low is None else max(rings.wanted, ring.gaps.low, key=float)
    return (
        "fail",
        say("{r} butts when hot, by {d}", r=_name(ring), d=constant("", "", COARSE, -float(ring.hot))),
        say(
            "Is it the ring of this bore? Then open its gap to {g} where the bore is smallest. " + FILE,
            g=at_least(least, COARSE),
        ),
    )


def _gap_wide(ring: Ring, rings: Rings) -> Judged | None:
    most = ring.gaps.high if ring.gaps.worn is None else ring.gaps.worn
    if most is None or not past(ring.gap, most):
        return None
    return (
        "fail",
        say("{r}'s gap too wide: {s}, {m} allowed", r=_name(ring), s=ring.gap, m=most),
        "Was it read in the least worn part of the bore, square? Then look whether it is a ring for this"
        " bore; a"
        " new one of its size comes next.",
    )


def _groove_worn(ring: Ring, rings: Rings) -> Judged | None:
    most = ring.sides.high if ring.sides.worn is None else ring.sides.worn
    if ring.side is None or most is None or not past(ring.side, most):
        return None
    return (
        "fail",
        say("{r} loose in its groove: {f}, {m} allowed", r=_name(ring), f=ring.side, m=most),
        "Measure a new ring in that groove. If it is as loose, the groove is worn: renew the piston.",
    )


def _gap_small(ring: Ring, rings: Rings) -> Judged | None:
    if ring.gaps.low is None or not past(ring.gaps.low, ring.gap):
        return None
    return (
        "attention",
        say("{r}'s gap small: {s}, {m} wanted", r=_name(ring), s=ring.gap, m=ring.gaps.low),
        say("It does not butt: {h} are left when hot. " + FILE, h=ring.hot),
    )


def _tight(ring: Ring, rings: Rings) -> Judged | None:
    if ring.side is None or ring.sides.low is None or not past(ring.sides.low, ring.side):
        return None
    return (
        "attention",
        say("{r} tight in its groove: {f}, {m} wanted", r=_name(ring), f=ring.side, m=ring.sides.low),
        "Clean the groove with a broken piece of ring, look for a burr, and roll the ring round in it. If it"
        " stays, take another ring; never blast a groove or file its sides.",
    )


def _within(ring: Ring, rings: Rings) -> Judged | None:
    for size, bounds, words in (
        (ring.gap, ring.gaps, "{r}'s gap wide: {s}, {m} as made"),
        (ring.side, ring.sides, "{r} a little loose: {s}, {m} as made"),
    ):
        if size is not None and bounds.high is not None and past(size, bounds.high):
            return (
                "attention",
                say(words, r=_name(ring), s=size, m=bounds.high),
                "It is within what it may wear to. A used engine may run on with it; for an overhaul fit a"
                " new ring, and try that in bore and groove.",
            )
    return None


def _unknown(rings: Rings) -> Judged | None:
    unknown = [r for r in rings.each if not r.gaps.known or (r.side is not None and not r.sides.known)]
    if not unknown:
        return None
    return (
        "unjudged",
        say("Does not butt: {h} left when hot", h=rings.hot),
        say(
            "Limits of the {n} ring are not known. Ask the rings' maker for gap and side clearance, and type"
            " them.",
            n=unknown[0].name,
        ),
    )


def _right(rings: Rings) -> Judged:
    return (
        "pass",
        say("Gaps right: {g} cold, {h} hot", g=rings.gap, h=rings.hot),
        "Tag each ring for its bore, mark upwards. Fit them with their gaps staggered, none over the pin's"
        " ends"
        " nor on the thrust side.",
    )
