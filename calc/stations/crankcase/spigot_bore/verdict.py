"""Does the case bear holes of that size, and do the cylinders fit them cold and running?"""

from calc.core.advice import at_least, at_most
from calc.core.conformance import past
from calc.core.result import Judged, say
from calc.declare.calculator import Limit
from calc.stations.crankcase.spigot_bore.asked import In
from calc.stations.crankcase.spigot_bore.hole import Hole
from calc.stations.shared.forms import COARSE, SIZE


def verdict_on(i: In, hole: Hole) -> Judged:
    return (
        _too_little_metal(i, hole)
        or _too_wide(i, hole)
        or _clearance_fails(i, hole)
        or _wide_enough(i, hole)
        or _thin(i, hole)
        or _one_by_one(hole)
        or _in_order(i, hole)
    )


def _too_little_metal(i: In, hole: Hole) -> Judged | None:
    largest, largest_land, _ = hole.told
    for metal, least, words, most in (
        (hole.wall, i.wall_least, "Wall to a stud hole", largest),
        (hole.land, i.land_least, "Case between two holes", largest_land),
    ):
        if least is not None and past(least, metal):
            return (
                "fail",
                say(words + ": {w}, {least} wanted", w=metal, least=least),
                say(
                    "The wall breaks out under the stud's pull. Scrap the half, or have it welded up by"
                    " someone who does cases."
                    if hole.bored
                    else "Do not bore it. {D} is the largest hole that this case bears: look for"
                    " cylinders with a smaller register.",
                    D=at_most(most, COARSE),
                ),
            )
    return None


def _too_wide(i: In, hole: Hole) -> Judged | None:
    """A hole that is there is past what these cylinders want: no cutter makes it smaller."""
    if hole.bored or not past(i.old_bore, hole.large):
        return None
    return (
        "fail",
        say("Hole too wide already: {D}, {high} at most", D=i.old_bore, high=hole.large),
        "Do not bore. Read hole and registers once more. If they stay, these cylinders stand loose in this"
        " case: take cylinders with a larger register, or have the holes sleeved.",
    )


def _wide_enough(i: In, hole: Hole) -> Judged | None:
    if hole.bored or past(hole.low, i.old_bore):
        return None
    return (
        "attention",
        say("Nothing to bore: the smallest hole is {D}", D=i.old_bore),
        say(
            "{low} to {high} is wanted. Read every hole, and type the smallest and the largest as bored:"
            " then the fit is judged.",
            low=at_least(hole.low, SIZE),
            high=at_most(hole.large, SIZE),
        ),
    )


def _clearance_fails(i: In, hole: Hole) -> Judged | None:
    least, most = hole.cold
    for clearance, when in ((hole.hot[0], "running"), (hole.hot[2], "case still cool")):
        if past(0.0, clearance):
            return (
                "fail",
                say("Register seizes, " + when + ": {c}", c=clearance),
                "Its foot grows more than the hole, bends the barrel and strains the case. Give it more"
                " clearance cold.",
            )
    if not hole.bored:
        return None
    if past(i.clearance_low, least):
        return (
            "fail",
            say("Register tight: {c}, {low} wanted", c=least, low=i.clearance_low),
            say("Bore on, to {low} to {high}.", low=at_least(hole.low, SIZE), high=at_most(hole.high, SIZE))
            if hole.fits_all
            else say(
                "Bore each hole for its own cylinder, {low} larger than its register.", low=i.clearance_low
            ),
        )
    if past(most, i.clearance_high):
        return (
            "fail",
            say("Register loose: {c}, {high} allowed", c=most, high=i.clearance_high),
            "Put the largest register into the largest hole, and read each pair by itself. A pair that"
            " stays loose does not hold the cylinder in the middle: look for another cylinder, or sleeve"
            " the hole.",
        )
    return None


def _thin(i: In, hole: Hole) -> Judged | None:
    if not past(i.wall_good, hole.wall):
        return None
    return (
        "attention",
        say("Thin wall to a stud hole: {w}", w=hole.wall),
        say(
            "{good} are good. Look for porosity before you bore, fit no insert of a larger outside beside"
            " it, and tell the customer.",
            good=i.wall_good,
        ),
    )


def _one_by_one(hole: Hole) -> Judged | None:
    if hole.bored or hole.fits_all:
        return None
    return (
        "attention",
        say("No one hole fits all these cylinders"),
        "Their registers differ by more than the clearance may. Bore each hole for its own cylinder, and"
        " mark both.",
    )


def _in_order(i: In, hole: Hole) -> Judged:
    if hole.bored:
        return (
            "pass",
            say("Fits: {c} cold at least, {h} running", c=hole.cold[0], h=hole.hot[0]),
            "Break the edge, wash the case, and try each cylinder in its own hole: it goes home by its own"
            " weight.",
        )
    return (
        "pass",
        say("Bore to {low} to {high}", low=at_least(hole.low, SIZE), high=at_most(hole.high, SIZE)),
        say(
            "{w} of wall are left. Case bolted up, square to the seat, on the middle of the studs; the last"
            " cut fine. Then read every hole and type it here.",
            w=hole.wall,
        ),
    )


def limits_of(i: In, hole: Hole) -> tuple[Limit, ...]:
    found = [
        Limit("the wall to a stud hole", hole.wall, low=i.wall_least),
        Limit("the wall to a stud hole", hole.wall, low=i.wall_good, level="attention"),
        Limit("the clearance running", hole.hot[0], low=0),
        Limit("the clearance while the case is cool", hole.hot[2], low=0),
    ]
    if i.land_least is not None:
        found.append(Limit("the case between two holes", hole.land, low=i.land_least))
    if hole.bored:
        found += [
            Limit("the clearance cold", hole.cold[0], low=i.clearance_low),
            Limit("the clearance cold", hole.cold[1], high=i.clearance_high),
        ]
    else:
        found.append(Limit("the hole as it is", i.old_bore, high=hole.large))
        found.append(Limit("the hole as it is", i.old_bore, high=hole.low, level="attention"))
        found.append(Limit("one hole for all", hole.low, high=hole.high, level="attention"))
    return tuple(found)
