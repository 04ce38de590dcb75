"""May these bores stay, or to which oversize do all go?"""

from calc.core.conformance import past
from calc.core.result import Judged, Text, say
from calc.core.working import Number, constant, least
from calc.declare.calculator import Limit
from calc.stations.cylinders.cylinder_bore.asked import OLD, In
from calc.stations.cylinders.cylinder_bore.lot import CUT, HONE, STAY, WORN, Lot
from calc.stations.cylinders.cylinder_bore.pair import Pairs
from calc.stations.shared.forms import SIZE
from calc.stations.shared.honing import LEFT_LEAST, plan

MORE_SPARE = constant("", "", SIZE, 0.03e-3)  # from 0.05 to 0.08 mm are left; common practice, no source
SMALL = constant("", "", SIZE, 0.5e-3)  # an oversize, where none is told; common practice, no source
AFTER = "Let it cool, wash with hot soapy water until a white cloth stays white, oil, and measure again."


def verdict_on(i: In, lot: Lot, pairs: Pairs) -> Judged:
    if lot.stays:
        return _pair_wrong(i, lot, pairs) or (_worn(lot, pairs) if lot.state == WORN else _stay(pairs))
    if lot.state == HONE:
        return _new_wrong(i, lot, pairs) or _wall_thin(i, pairs) or _hone(lot)
    return (
        _not_these(i, lot)
        or _past_all(i, lot)
        or _new_wrong(i, lot, pairs)
        or _wall_thin(i, pairs)
        or _little_left(i, lot)
        or _cut(i, lot)
    )


def limits_of(i: In, lot: Lot, pairs: Pairs) -> tuple[Limit, ...]:
    found = [] if lot.stays else _machined(i, lot)
    if lot.state == CUT:
        found.append(Limit("the smallest bore", lot.smallest, low=_least_likely(i)))
    if pairs.new:
        found.append(Limit("the piston clearance", pairs.tightest, low=i.least_clearance))
        found.append(Limit("the piston clearance", pairs.loosest, high=i.most_clearance))
    if lot.stays or not lot.serves:
        found += _as_they_are(i, lot, pairs)
    if not lot.stays and pairs.wall is not None and i.least_wall is not None:
        found.append(Limit("the wall left", pairs.wall, low=i.least_wall))
    return tuple(found)


def _as_they_are(i: In, lot: Lot, pairs: Pairs) -> list[Limit]:
    found = [Limit("the smallest bore", lot.smallest, low=i.low + lot.now, level="attention")]
    for what, size, new, old in (
        ("the largest bore", lot.largest, i.high + lot.now, None if i.worn is None else i.worn + lot.now),
        ("the roundness", lot.oval, i.round_new, i.round_worn),
        ("the taper", lot.taper, i.taper_new, i.taper_worn),
    ):
        if new is not None:
            found.append(Limit(what, size, high=new, level="fail" if old is None else "attention"))
        if old is not None:
            found.append(Limit(what, size, high=old))
    if pairs.read:
        level = "fail" if i.worn_clearance is None else "attention"
        found.append(Limit("the piston clearance", pairs.clearance, low=i.least_clearance))
        found.append(Limit("the piston clearance", pairs.most, high=i.most_clearance, level=level))
        if i.worn_clearance is not None:
            found.append(Limit("the piston clearance", pairs.most, high=i.worn_clearance))
    return found


def _machined(i: In, lot: Lot) -> list[Limit]:
    if lot.state == HONE:
        return [
            Limit("the largest bore", lot.largest, high=lot.high),
            Limit("the roundness", lot.oval, high=i.round_new),
            Limit("the taper", lot.taper, high=i.taper_new),
        ]
    found = [Limit("the cleaning up", lot.stock, low=LEFT_LEAST)]
    if i.axis == OLD:
        found.append(Limit("what is left for the hone", lot.stock, low=i.spare, level="attention"))
    return found


def _pair_wrong(i: In, lot: Lot, pairs: Pairs) -> Judged | None:
    if not pairs.read:
        return None
    if past(i.least_clearance, pairs.clearance):
        return (
            "fail",
            say("Piston {n} tight: {c}, {m} wanted", n=pairs.tight, c=pairs.clearance, m=i.least_clearance),
            say(
                "Measure both at one heat. If it stays, try the smallest piston of the set there{hone}",
                hone=_hone_for(i, lot, pairs),
            ),
        )
    most = i.most_clearance if i.worn_clearance is None else i.worn_clearance
    if most is not None and past(pairs.most, most):
        return (
            "fail",
            say("Piston {n} too loose: {c}, {m} allowed", n=pairs.loose, c=pairs.most, m=most),
            "Measure both again, the piston at the height that its maker says. If the piston is worn, a new"
            " one"
            " of this size may do; if the bore is, all go to the next oversize.",
        )
    if lot.state == STAY and past(pairs.most, i.most_clearance):
        return (
            "attention",
            say("Piston {n} is loose: {c}, {m} as made", n=pairs.loose, c=pairs.most, m=i.most_clearance),
            "It may run on, with more noise while cold. Try the largest piston of the set there.",
        )
    return None


def _hone_for(i: In, lot: Lot, pairs: Pairs) -> Text:
    """Honing helps only where the largest bore of that size leaves this piston its clearance."""
    if past(i.least_clearance, lot.high - pairs.largest):
        return say(
            ". Honing does not help, even to {high}: that piston is too large for this size of bore.",
            high=lot.high,
        )
    return say(", or hone that bore larger, to {high} at most.", high=lot.high)


def _least_likely(i: In) -> Number:
    """No wear and no half-finished barrel is a whole oversize smaller than standard."""
    return i.low - (SMALL if i.by is None else i.by)


def _not_these(i: In, lot: Lot) -> Judged | None:
    if not past(_least_likely(i), lot.smallest):
        return None
    return (
        "fail",
        say("Bore {d}: far under {low}, the standard size", d=lot.smallest, low=i.low),
        "No bore wears smaller. Set the gauge in its ring again, and see that barrels and sheet belong to one"
        " engine. Machine nothing until that is settled.",
    )


def _new_wrong(i: In, lot: Lot, pairs: Pairs) -> Judged | None:
    """Pistons in hand for bores that are still to be machined: their sizes decide, not the box's label."""
    if not pairs.new:
        return None
    small = past(pairs.loosest, i.most_clearance)
    if not small and not past(i.least_clearance, pairs.tightest):
        return None
    return (
        "fail",
        say(
            "Piston {n} too {w} for {low} to {high}",
            n=pairs.loose if small else pairs.tight,
            w="small" if small else "large",
            low=lot.low,
            high=lot.high,
        ),
        "Bore nothing for these pistons yet. Measure them again at the height that their maker says, and see"
        " for which oversize they were sold.",
    )


def _stay(pairs: Pairs) -> Judged:
    return (
        "pass",
        say("Bores as made: piston clearance {a} to {b}", a=pairs.clearance, b=pairs.most)
        if pairs.read
        else say("Bores as made: they stay"),
        "Break the glaze with fine stones for a fresh cross-hatch, wash, oil, and gap new rings in each"
        " bore.",
    )


def _worn(lot: Lot, pairs: Pairs) -> Judged:
    return (
        "attention",
        say("Worn by {w}, within limits: may run on", w=lot.wear),
        say(
            "Cylinder {n} is the worst. {pistons}Take the ridge off, break the glaze, and gap new rings at"
            " the bottom, where the bore is smallest. For an overhaul that is to last, all go to the next"
            " oversize.",
            n=lot.worst.name,
            pistons="" if pairs.read else "Type the pistons first: their clearance decides too. ",
        ),
    )


def _hone(lot: Lot) -> Judged:
    return (
        "pass",
        say("Hone to {low} to {high}", low=lot.low, high=lot.high),
        say("Up to {a} are to come off, on the diameter. " + AFTER, a=lot.most_off),
    )


def _past_all(i: In, lot: Lot) -> Judged | None:
    if lot.serves:
        return None
    if i.by is None or i.last is None:
        return (
            "attention",
            say("Cleans up at {d}: oversizes unknown", d=lot.clean),
            "Ask in which oversizes pistons are sold, and type the first and the last.",
        )
    return (
        "fail",
        say("No oversize cleans up: {d} needed", d=lot.clean),
        say(
            "Cylinder {n} is the worst. Measure it again at the bottom. If it stays, renew that cylinder"
            " and its"
            " piston, and work out the others without it; or have it sleeved by someone who does that.",
            n=lot.worst.name,
        ),
    )


def _wall_thin(i: In, pairs: Pairs) -> Judged | None:
    if pairs.wall is None or i.least_wall is None or not past(i.least_wall, pairs.wall):
        return None
    return (
        "fail",
        say("Wall in the case too thin: {w}, {m} allowed", w=pairs.wall, m=i.least_wall),
        "Measure the register again. If it stays, do not bore: the foot of the barrel breaks off. Take other"
        " cylinders.",
    )


def _little_left(i: In, lot: Lot) -> Judged | None:
    if i.axis != OLD or not past(i.spare, lot.stock):
        return None
    return (
        "attention",
        say("Oversize {u}, with {a} left to hone", u=lot.oversize, a=lot.stock),
        say(
            "{spare} are wanted once the tool has cleaned up the worst, cylinder {n}. Bore that one first:"
            " where"
            " a dark patch is left, all go to the next oversize.",
            spare=i.spare,
            n=lot.worst.name,
        ),
    )


def _cut(i: In, lot: Lot) -> Judged:
    how = (
        plan(lot.aim, SIZE, i.spare, least(lot.stock, i.spare + MORE_SPARE))
        if i.axis == OLD
        else say("Hone to {D}.", D=lot.aim)
    )
    return (
        "pass",
        say("All to {u} oversize: {low} to {high}", u=lot.oversize, low=lot.low, high=lot.high)
        if float(lot.oversize)
        else say("All to standard: {low} to {high}", low=lot.low, high=lot.high),
        say("Have the pistons in hand and measured first. {how} " + AFTER, how=how),
    )
