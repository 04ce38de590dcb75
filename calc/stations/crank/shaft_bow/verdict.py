"""Is the shaft straight, and if not, is it ground out, straightened or left?"""

from calc.core.conformance import past
from calc.core.result import Judged, Remark, note, say, warning
from calc.core.working import Number, constant
from calc.declare.calculator import Limit
from calc.stations.crank.shaft_bow.asked import PLACES, In
from calc.stations.crank.shaft_bow.circle import EIGHTHS, Circle
from calc.stations.shared.forms import SIZE

SLIP = 0.003e-3  # m: a reading that lies farther from bow and oval is read again; common practice, no source


# How far one reading that does not belong may have moved the bow, for what it lies off in the end: of eight
# at even angles it moves the full reading by half of itself, and keeps 3/8 of itself as its own remainder.
MOVED = (1 / 2) / (3 / 8)


def _one_astray(i: In, found: Circle, good: Number) -> Judged | None:
    """One reading lies so far off that without it the bow might be on the other side of a limit."""
    reach = MOVED * found.rest
    if found.rest <= SLIP or not any(abs(float(found.whole - limit)) < reach for limit in (i.worn, good)):
        return None
    return (
        "unsure",
        say("One reading does not fit: that at {place}", place=PLACES[found.slip]),
        say(
            "It lies {r} off what bow and oval make of the others: an oil hole, a scratch, or a dial that"
            " slipped. Read it again before anything is done to the crank.",
            r=constant("", "", SIZE, found.rest),
        ),
    )


def verdict_on(i: In, found: Circle) -> Judged:
    good = min(i.good, i.worn, key=float)
    if astray := _one_astray(i, found, good):
        return astray
    if past(found.whole, i.worn):
        return (
            "fail",
            say("Bowed: {b} full reading, {w} allowed", b=found.whole, w=i.worn),
            say(
                "Try the end journals in the blocks first: turn the crank end for end and read again. If it"
                " stays, grind the mains with this bow counted, where an undersize takes it; straighten"
                " only where the maker allows, cold, high side at {phi}, crack-tested after.",
                phi=found.high,
            ),
        )
    if past(found.whole, good):
        return (
            "attention",
            say("Bow {b}: over a good crank's {n}", b=found.whole, n=good),
            "It may run. Where the mains are ground, count it: it costs that much of every main between the"
            " ends.",
        )
    if i.oval_most is not None and past(found.oval, i.oval_most):
        return (
            "attention",
            say("Straight, but {o} out of round", o=found.oval),
            "It is the journal and not the shaft that the dial shows. Read it with a micrometer, and see"
            " which undersize cleans it up.",
        )
    return (
        "pass",
        say("Straight: bow {b}, high at {phi}", b=found.whole, phi=found.high),
        "Write it down. Leave the crank in its blocks no longer than you read: store it upright or hung.",
    )


def limits_of(i: In, found: Circle) -> tuple[Limit, ...]:
    good = min(i.good, i.worn, key=float)
    limits = [
        Limit("the bow", found.whole, high=i.worn),
        Limit("the bow", found.whole, high=good, level="attention"),
    ]
    if i.oval_most is not None:
        limits.append(Limit("the journal's roundness", found.oval, high=i.oval_most, level="attention"))
    return tuple(limits)


def remarks_on(i: In, found: Circle) -> tuple[Remark | None, ...]:
    whole = len([row for row in i.readings if row is not None]) == EIGHTHS
    return (
        note(
            "The full reading of the dial, {t}, is bow and the journal's oval together; half of it is no"
            " measure of either.",
            t=found.total,
        ),
        note(
            "The crank must come back to its first reading after a whole turn. If it does not, it walks in"
            " the blocks, or the dial slips."
        ),
        note(
            "The ends' own oval lifts the crank in V-blocks and reads as a bow: measure those journals too."
        ),
        None
        if whole
        else note(
            "Four readings give the bow; of the oval they see only what lies along the mark. Eight see all."
        ),
        (
            warning(
                "The reading at {place} lies {r} off what bow and oval make: read it again.",
                place=PLACES[found.slip],
                r=constant("", "", SIZE, found.rest),
            )
            if found.rest > SLIP
            else None
        ),
    )
