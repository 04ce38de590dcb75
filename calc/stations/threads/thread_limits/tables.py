"""The limits of both parts, and what was measured beside its own."""

from calc.core.result import Table, Text, say
from calc.reference.standards.threads import Limits, Zone
from calc.stations.shared.thread_sizes import least_and_most, length
from calc.stations.threads.thread_limits.readings import Reading


def both_parts(hole: Limits, bolt: Limits) -> Table:
    return Table(
        "Both parts",
        ("Diameter", f"Bolt {bolt.name}", f"Hole {hole.name}"),
        tuple(
            (words, _span(getattr(bolt, which)), _span(getattr(hole, which)))
            for words, which in (("Major", "major"), ("Pitch", "pitch"), ("Minor", "minor"))
        ),
    )


def _span(zone: Zone) -> Text:
    if zone.tolerance is None:
        return say("{a} at most" if zone.inward < 0 else "{a} at least", a=length(zone.near))
    low, high = least_and_most(zone)
    return say("{a} to {b}", a=length(low), b=length(high))


def your_thread(reads: list[Reading]) -> Table | None:
    """Each measured diameter with its limits; None where nothing was measured."""
    if not reads:
        return None
    return Table(
        "Your thread",
        ("Diameter", "May be", "Is", ""),
        tuple(
            (
                r.words,
                say("{a} to {b}", a=r.low, b=r.high),
                r.read,
                say("too {way} by {by}", way=r.way, by=length(r.by)) if r.out else "in limits",
            )
            for r in reads
        ),
        tuple("fail" if r.out else "pass" for r in reads),
    )
