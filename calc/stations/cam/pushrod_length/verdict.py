"""Do the pushrods at hand serve, and if not, which length is ordered?"""

from calc.core.conformance import past
from calc.core.result import Judged, Remark, Table, Text, note, say, warning
from calc.core.working import Number, constant, step
from calc.declare.calculator import Limit
from calc.stations.cam.pushrod_length.asked import CHECKED, VALVES, In
from calc.stations.cam.pushrod_length.needed import Needed
from calc.stations.shared.forms import COARSE


def third(i: In) -> Number:
    """From the middle of the adjuster's travel to the end of its middle third."""
    return step("S_3", "Middle third of the travel, either side", COARSE, i.travel / 6)


def half(i: In) -> Number:
    return step("S_2", "From the middle to a stop", COARSE, i.travel / 2)


def verdict_on(i: In, found: Needed) -> Judged:
    return _off_square(i, found) or _unlike(i, found) or _at_hand(i, found)


def _off_square(i: In, found: Needed) -> Judged | None:
    if not found.read:
        return None
    if i.run_most is not None and past(found.run, i.run_most):
        return (
            "fail",
            say("Rocker off square: contact runs {c}", c=found.run),
            say("{m} is allowed. Order no pushrod yet. {cure}", m=i.run_most, cure=_shims(found)),
        )
    good = _good(i)
    if good is not None and past(found.run, good):
        return (
            "attention",
            say("Contact runs {c}, {n} wanted", c=found.run, n=good),
            say("It may run. Better, before pushrods are ordered: {cure}", cure=_shims(found)),
        )
    return None


def _good(i: In) -> Number | None:
    if i.run_good is None or i.run_most is None:
        return i.run_good
    return i.run_most if i.run_good > i.run_most else i.run_good


def _shims(found: Needed) -> Text:
    shim = constant("", "", COARSE, abs(float(found.up)))
    if float(found.up) > 0:
        return say(
            "Shims of {t} under the stand bring the arm square at half lift; the pushrod is then {L}. Read it"
            " again with them in.",
            t=shim,
            L=found.with_shims,
        )
    return say(
        "The shaft stands {t} too high for square at half lift: take shims out, or see why the tip lies low;"
        " the pushrod is then {L}. Read it again.",
        t=shim,
        L=found.with_shims,
    )


def _unlike(i: In, found: Needed) -> Judged | None:
    if past(found.apart, third(i)):
        stuck = past(found.apart, half(i))
        return (
            "fail" if stuck else "attention",
            say("The valves differ: {d} off the middle", d=found.apart),
            "No one length serves them all. Find the odd one: a seat sunk deeper, a tip ground, a stand with"
            " another shim. Put that right, then read all again; order single lengths only after that.",
        )
    return None


def _at_hand(i: In, found: Needed) -> Judged:
    if past(found.off, half(i)):
        return (
            "fail",
            say("These do not serve: fit {L}", L=found.length),
            say("{d} is more than the adjuster has to either side. {order}", d=found.off, order=_order(i)),
        )
    if past(found.off, third(i)):
        return (
            "attention",
            say("Adjuster {d} off its middle: fit {L}", d=found.off, L=found.length),
            say("It can be set, and little is left for wear. {order}", order=_order(i)),
        )
    return (
        "pass",
        say("Keep these pushrods: {L} serves", L=i.fitted),
        "The adjuster stays in the middle third of its travel. Order no others. Roll each on a flat plate"
        " first: a bent one is scrap.",
    )


def _order(i: In) -> str:
    if i.how == CHECKED:
        return "Make one of that length, try it at the first and the last valve, then order the others."
    return "Make a checking pushrod of that length and try it at two valves before you order."


def limits_of(i: In, found: Needed) -> tuple[Limit, ...]:
    good = _good(i)
    limits = [
        Limit("the adjuster's place", found.apart, high=half(i)),
        Limit("the adjuster's place", found.apart, high=third(i), level="attention"),
        Limit("the adjuster's place", found.off, high=half(i)),
        Limit("the adjuster's place", found.off, high=third(i), level="attention"),
    ]
    if found.read and i.run_most is not None:
        limits.append(Limit("the contact's run", found.run, high=i.run_most))
    if found.read and good is not None:
        limits.append(Limit("the contact's run", found.run, high=good, level="attention"))
    return tuple(limits)


def remarks_on(i: In, found: Needed) -> tuple[Remark | None, ...]:
    checked = i.how == CHECKED
    return (
        note(
            "Only {n} of {m} valves were read: seats, tips and stands differ.",
            n=str(len(found.rods)),
            m=str(len(VALVES)),
        )
        if checked and len(found.rods) < len(VALVES)
        else None,
        note("Where the contact lies was not read: it alone tells whether the rocker stands square.")
        if not found.read
        else None,
        warning("No limit is known for the contact's run: {c} is not judged.", c=found.run)
        if found.read and i.run_most is None
        else None,
        note(
            "A hydraulic lifter gives way while you read. Put in a solid checking lifter, light springs on"
            " the valve, and read at no lash: what is left as lash is missing from the length."
        )
        if checked
        else None,
        note(
            "A tenth of a millimetre of the contact's run is about half a millimetre of shim: read the mark"
            " with a magnifier, and twice."
        )
        if found.read
        else None,
        note(
            "A pushrod is read from end to end, or from ball to ball: only two that were read alike can be"
            " compared."
        ),
    )


def valve_by_valve(i: In, found: Needed) -> Table:
    rest = tuple(
        (
            rod.name,
            rod.needs,
            constant("", "", COARSE, float(rod.needs) - float(found.length)),
            constant("", "", COARSE, abs(rod.run)) if rod.shut is not None else "not read",
        )
        for rod in found.rods
    )
    return Table("Valve by valve", ("Valve", "Needs", "More than the one to fit", "Contact runs"), rest)
