"""Which undersize serves all mains, and which all rod journals?"""

from calc.core.advice import at_least, at_most
from calc.core.conformance import past
from calc.core.result import Judged, Text, say
from calc.core.working import Number, constant
from calc.declare.calculator import Limit
from calc.stations.crank.regrind.asked import In
from calc.stations.crank.regrind.lot import GRIND, STAY, WORN, Lot
from calc.stations.crank.regrind.skin import fillet_out
from calc.stations.shared.forms import COARSE, SIZE

AFTER = (
    "Fillets first. Crack test before and after; then break the oil-hole edges, polish, wash, measure, and"
    " order shells of that undersize."
)


def verdict_on(i: In, mains: Lot, pins: Lot, hard: Number | None, fillet_most: Number | None) -> Judged:
    return (
        _past_all(mains, pins)
        or _wheel_wrong(i, mains, pins)
        or _too_deep(i, hard)
        or _fillet_left(i, fillet_most)
        or _in_part(mains, pins)
        or _last(mains, pins)
        or _worn(mains, pins)
        or _serves(mains, pins)
    )


def _past_all(mains: Lot, pins: Lot) -> Judged | None:
    for lot in (mains, pins):
        if lot.state != GRIND or lot.serves:
            continue
        words, j = lot.words.lower(), lot.worst
        if lot.sizes.by is None or lot.sizes.last is None:
            return (
                "attention",
                say("{lot} clean up at {d}: undersize unknown", lot=lot.words, d=lot.clean),
                "Ask in which undersizes shells are sold, and type the first and the last.",
            )
        return (
            "fail",
            say("{lot} clean up at no undersize: {d}", lot=lot.words, d=lot.clean),
            say(
                "{words} {n} is the worst. Measure it again, and beside the fillets where it is not worn;"
                " where it is worn alike all round, say so. If it stays, take another crank, or have it"
                " built up by someone who does nothing else.",
                words="Main" if words == "mains" else "Rod journal",
                n=j.name,
            ),
        )
    return None


def _wheel_wrong(i: In, mains: Lot, pins: Lot) -> Judged | None:
    if i.wheel is None or not fillet_out(i) or not (mains.ground or pins.ground):
        return None
    small = i.fillet_low is not None and past(i.fillet_low, i.wheel)
    return (
        "fail",
        say(
            "Fillet too {what}: {r}, {limit} allowed",
            what="small" if small else "large",
            r=i.wheel,
            limit=i.fillet_low if small else i.fillet_high,
        ),
        say(
            "Dress the wheel to {low} to {high} before it touches the crank: {why}.",
            low=i.fillet_low if i.fillet_low is not None else i.wheel,
            high=i.fillet_high if i.fillet_high is not None else i.wheel,
            why="a sharp fillet is where a crank breaks" if small else "the shell's edge would ride on it",
        ),
    )


def _too_deep(i: In, hard: Number | None) -> Judged | None:
    if hard is None or i.hard_left is None or not past(i.hard_left, hard):
        return None
    gone = past(0.0, hard)
    return (
        "attention",
        say("Hardened layer gone", h=hard) if gone else say("Hardened layer left: {h}", h=hard),
        say(
            "{least} are to be left. Ground so far it must be hardened again, and straightened and polished"
            " after, by someone who hardens cranks. Else take another.",
            least=i.hard_left,
        ),
    )


def _fillet_left(i: In, most: Number | None) -> Judged | None:
    if most is None or i.wheel is None or not past(i.wheel, most):
        return None
    return (
        "attention",
        say("A fillet of {r} will not clean up", r=i.wheel),
        say(
            "The old one is {old}: with what comes off, {most} at most come clean without touching the"
            " cheek. Dress the wheel to that, where the limits allow it.",
            old=i.fillet,
            most=at_most(most, COARSE),
        ),
    )


def _in_part(mains: Lot, pins: Lot) -> Judged | None:
    for lot in (mains, pins):
        if lot.ground and not lot.whole:
            next_one = (
                say(
                    "else they go to {next}",
                    next=constant("", "", COARSE, float(lot.undersize + lot.sizes.by)),
                )
                if not lot.is_last and lot.sizes.by is not None
                else say("no further one is sold")
            )
            return (
                "attention",
                say("{lot} clean up in part of {u}", lot=lot.words, u=lot.undersize),
                say(
                    "They clean up from {low} to {clean}, not up to {high}. Grind them to that lower part;"
                    " {more}.",
                    low=at_least(lot.low, SIZE),
                    clean=at_most(lot.clean, SIZE),
                    high=lot.high,
                    more=next_one,
                ),
            )
    return None


def _last(mains: Lot, pins: Lot) -> Judged | None:
    for lot in (mains, pins):
        if lot.is_last:
            return (
                "attention",
                say("{lot} at their last undersize: {u}", lot=lot.words, u=lot.undersize),
                say(
                    "{plan} It cannot be ground again: tell the customer. {after}",
                    plan=_plan(mains, pins),
                    after=AFTER,
                ),
            )
    return None


def _worn(mains: Lot, pins: Lot) -> Judged | None:
    """Not as made, not worn out: the one who owns it decides."""
    worn = [lot for lot in (mains, pins) if lot.state == WORN]
    if not worn:
        return None
    others = [lot for lot in (mains, pins) if lot.ground]
    if others:
        return (
            "attention",
            say(
                "{lot} worn, {other} {u} under",
                lot=worn[0].words,
                other=others[0].words.lower(),
                u=others[0].undersize,
            ),
            say(
                "The crank goes on the grinder in any case. {plan} {after}",
                plan=_plan(mains, pins),
                after=AFTER,
            ),
        )
    headline = say("{lot} worn, within their limit", lot=" and ".join(each.words for each in worn))
    if not all(each.serves for each in worn):
        do = say(
            "They may run on if they are smooth and the clearance is right; no undersize cleans them up."
        )
    else:
        do = say(
            "They may run on if they are smooth and the clearance with the shells is right. For a full"
            " life: {plan}",
            plan=_plan(mains, pins, "grind"),
        )
    return "attention", headline, do


def _serves(mains: Lot, pins: Lot) -> Judged:
    if mains.state == pins.state == STAY:
        return (
            "pass",
            "All journals in limits as they are",
            "Polish them the way the crank turns, no more, and wash the drillings. Shells as they were.",
        )
    if mains.state == STAY:
        headline = say("Mains stay; rod journals {p} under", p=pins.undersize)
    elif pins.state == STAY:
        headline = say("Rod journals stay; mains {m} under", m=mains.undersize)
    else:
        headline = say("Mains {m} under, rod journals {p}", m=mains.undersize, p=pins.undersize)
    return "pass", headline, say("{plan} {after}", plan=_plan(mains, pins), after=AFTER)


def _plan(mains: Lot, pins: Lot, verb: str = "Grind") -> Text:
    """What each kind is ground to."""
    told = [
        say(
            "{lot} to {low} to {high}",
            lot=lot.words.lower(),
            low=at_least(lot.low, SIZE),
            high=at_most(lot.high, SIZE),
        )
        for lot in (mains, pins)
        if lot.state != STAY and lot.serves
    ]
    if len(told) == 2:
        return say("{verb} {a}, {b}.", verb=verb, a=told[0], b=told[1])
    return say("{verb} {a}.", verb=verb, a=told[0])


def limits_of(
    i: In, mains: Lot, pins: Lot, hard: Number | None, fillet_most: Number | None
) -> tuple[Limit, ...]:
    found: list[Limit] = []
    for lot in (mains, pins):
        words = lot.words.lower()
        as_they_are = lot.state in (STAY, WORN) or not lot.serves and not past(lot.undersize, lot.now)
        found += _as_they_are(i, lot, words) if as_they_are else _ground(lot, words)
    if hard is not None and i.hard_left is not None:
        found.append(Limit("the hardened layer left", hard, low=i.hard_left, level="attention"))
    if i.wheel is not None and (mains.ground or pins.ground):
        found.append(Limit("the fillet", i.wheel, low=i.fillet_low, high=i.fillet_high))
        if fillet_most is not None:
            found.append(Limit("the fillet's cleaning up", fillet_most, low=i.wheel, level="attention"))
    return tuple(found)


def _as_they_are(i: In, lot: Lot, words: str) -> list[Limit]:
    """What keeps them from being ground; also of those that were ground to the last undersize."""
    smallest = min((j.smallest for j in lot.each), key=float)
    largest = max((j.largest for j in lot.each), key=float)
    found = [Limit(f"the largest of the {words}", largest, high=lot.sizes.high - lot.now)]
    if lot.field == "mains" and i.bow_worn is not None:
        found.append(Limit("the bow", i.bow, high=i.bow_worn))
    made, worn = lot.sizes.low - lot.now, None if lot.sizes.worn is None else lot.sizes.worn - lot.now
    found.append(Limit(f"the smallest of the {words}", smallest, low=made, level=_level(worn)))
    if worn is not None:
        found.append(Limit(f"the wear of the {words}", smallest, low=worn))
    rounds, tapers = ([getattr(j, what) for j in lot.each] for what in ("round", "taper"))
    for what, numbers, new, old in (
        ("roundness", rounds, i.round_new, i.round_worn),
        ("taper", tapers, i.taper_new, i.taper_worn),
    ):
        most = max(numbers, key=float)
        if new is not None:
            found.append(Limit(f"the {what} of the {words}", most, high=new, level=_level(old)))
        if old is not None:
            found.append(Limit(f"the {what} of the {words}", most, high=old))
    return found


def _level(worn: Number | None) -> str:
    """What comes of a size that is not as made, where it may wear to another and where nobody knows one."""
    return "fail" if worn is None else "attention"


def _ground(lot: Lot, words: str) -> list[Limit]:
    return [
        Limit(f"the cleaning up of the {words}", lot.clean, low=lot.low),
        Limit(f"the cleaning up of the {words}", lot.clean, low=lot.high, level="attention"),
    ]
