"""Do the saddles stay, and if not, at which size are they one line again?"""

from calc.core.advice import at_least, at_most
from calc.core.conformance import past
from calc.core.result import Judged, Text, say
from calc.core.working import Number, constant
from calc.declare.calculator import Limit
from calc.stations.crankcase.line_bore.asked import In
from calc.stations.crankcase.line_bore.gears import Gears
from calc.stations.crankcase.line_bore.saddles import Saddles
from calc.stations.crankcase.line_bore.size import BORE, STAY, WORN, Size
from calc.stations.shared.forms import SIZE

AFTER = "Wash every gallery after, bolt it up again, and read all saddles once more."


def verdict_on(i: In, saddles: Saddles, size: Size, gears: Gears) -> Judged:
    return (
        _no_size(saddles, size)
        or _gears_bind(size, gears)
        or _in_part(size)
        or _last(size)
        or _moved(i, size, gears)
        or _worn(i, saddles, size)
        or _serves(saddles, size)
    )


def _no_size(saddles: Saddles, size: Size) -> Judged | None:
    if size.state != BORE or size.serves:
        return None
    if not size.known:
        return (
            "attention",
            say("Cleans up at {d}: oversize unknown", d=saddles.clean),
            "Ask in which outside oversizes shells are sold, and type the first and the last.",
        )
    return (
        "fail",
        say("Cleans up at no oversize: {d}", d=saddles.clean),
        say(
            "Saddle {n} is the worst. Bolt it up again, and read it and the bar once more. With the bar"
            " where least is cut? If it stays, no shells are sold for this case.",
            n=max(zip(saddles.clean_each, saddles.each), key=lambda pair: float(pair[0]))[1].name,
        ),
    )


def _gears_bind(size: Size, gears: Gears) -> Judged | None:
    if not size.bored or gears.then is None or past(gears.then, 0.0):
        return None
    return (
        "fail",
        say("Cam's gears bind: backlash {j}", j=gears.then),
        "Lay the bar farther from the cam where the saddles allow it, or have a smaller cam gear in hand"
        " before the case is bored.",
    )


def _in_part(size: Size) -> Judged | None:
    if not size.bored or size.whole:
        return None
    return (
        "attention",
        say("Cleans up in part of {o} oversize", o=size.oversize)
        if past(size.oversize, size.now)
        else say("Cleans up in part of its limits"),
        say(
            "Bore to between {low} and {high}, in the upper part of the limits: nothing is left for a"
            " second try. {after}",
            low=at_least(size.low, SIZE),
            high=at_most(size.high, SIZE),
            after=AFTER,
        ),
    )


def _last(size: Size) -> Judged | None:
    if not size.last:
        return None
    return (
        "attention",
        say("Last oversize: {o}", o=size.oversize),
        say(
            "{plan} It cannot be line-bored again: tell the customer. {after}", plan=_plan(size), after=AFTER
        ),
    )


def _moved(i: In, size: Size, gears: Gears) -> Judged | None:
    if not size.bored:
        return None
    far = constant("", "", SIZE, abs(float(gears.moved)))
    if past(far, i.most_moved):
        return (
            "attention",
            say("Crank moves {d} " + ("from" if float(gears.moved) > 0 else "to") + " the cam", d=far),
            say(
                "{most} are allowed. Lay the bar nearer to the old centre at the gears if the saddles still"
                " clean up, or have a gear of another size in hand before the case is bored.",
                most=i.most_moved,
            ),
        )
    if gears.then is None:
        return None
    for limit, wrong, other in ((i.backlash_low, "little", "smaller"), (i.backlash_high, "much", "larger")):
        if limit is not None and (past(limit, gears.then) if wrong == "little" else past(gears.then, limit)):
            return (
                "attention",
                say(f"{wrong.capitalize()} backlash at the cam: {{j}}", j=gears.then),
                say(
                    "{limit} is the "
                    + ("least" if wrong == "little" else "most")
                    + ". Look whether a "
                    + other
                    + " cam gear is sold, before the case is bored.",
                    limit=limit,
                ),
            )
    return None


def _worn(i: In, saddles: Saddles, size: Size) -> Judged | None:
    if size.state != WORN:
        return None
    large = past(saddles.largest, i.high + size.now)
    headline = (
        say("Saddles worn to {d}, within their limit", d=saddles.largest)
        if large
        else say("Saddles {e} out of line, within limits", e=saddles.farthest)
    )
    plan = say(" For a full life: {plan}", plan=_plan(size)) if size.serves else say("")
    return (
        "attention",
        headline,
        say(
            "It may run on where the shells' backs show no fretting, the crank turns freely by hand in this"
            " case, bolted up, and the shells keep their crush.{plan}",
            plan=plan,
        ),
    )


def _serves(saddles: Saddles, size: Size) -> Judged:
    if size.state == STAY:
        return (
            "pass",
            say("In line and in size: {e} off", e=saddles.farthest),
            "Leave the saddles alone. Write them down with the torque at which they were read.",
        )
    same = not past(size.oversize, size.now)
    return (
        "pass",
        say("Finish to {d}: the same shells", d=size.aim)
        if same
        else say("Bore to {o} oversize, {d}", o=size.oversize, d=size.aim),
        say(
            "{bar} Bore to {low} to {high}. {after}",
            bar=_bar(saddles),
            low=at_least(size.low, SIZE),
            high=at_most(size.high, SIZE),
            after=AFTER,
        ),
    )


def _plan(size: Size) -> Text:
    return say(
        "Bore to {low} to {high}, the bar where Numbers has it.",
        low=at_least(size.low, SIZE),
        high=at_most(size.high, SIZE),
    )


def _bar(saddles: Saddles) -> Text:
    """Where the bar lies at both ends."""
    *_, x, y, far_x, far_y = saddles.told
    return say(
        "Lay the bar {x} to the cam and {y} to the right of where it read zero at the first saddle, {far_x}"
        " and {far_y} at the last.",
        x=x,
        y=y,
        far_x=far_x,
        far_y=far_y,
    )


def limits_of(i: In, saddles: Saddles, size: Size, gears: Gears) -> tuple[Limit, ...]:
    """What the verdict is decided by."""
    if size.state != BORE:
        return _as_they_are(i, saddles, size.now)
    found = [
        Limit("the saddles' cleaning up", saddles.clean, high=size.high),
        Limit("the saddles' cleaning up", saddles.clean, high=size.standard_low, level="attention"),
        Limit("the crank's move", gears.moved, low=-i.most_moved, high=i.most_moved, level="attention"),
    ]
    if gears.then is not None:
        found.append(Limit("the backlash", gears.then, low=0))
        low, high = i.backlash_low, i.backlash_high
        found.append(Limit("the backlash", gears.then, low=low, high=high, level="attention"))
    return tuple(found)


def _as_they_are(i: In, saddles: Saddles, now: Number) -> tuple[Limit, ...]:
    worn = i.high if i.worn is None else i.worn
    return (
        Limit("the smallest saddle", saddles.smallest, low=i.low + now),
        Limit("the largest saddle", saddles.largest, high=i.high + now, level="attention"),
        Limit("the largest saddle", saddles.largest, high=worn + now),
        Limit("the saddles' line", saddles.farthest, high=i.line_new, level="attention"),
        Limit("the saddles' line", saddles.farthest, high=i.line_worn),
    )
