"""Are the throws alike, of the right stroke, and at their angles?"""

from calc.core.advice import at_least
from calc.core.conformance import past
from calc.core.result import Judged, Remark, Text, note, say, warning
from calc.core.working import constant
from calc.declare.calculator import Limit
from calc.stations.crank.throw_index.asked import In
from calc.stations.crank.throw_index.pins import Pin, Pins
from calc.stations.crank.throw_index.told import DEGREES
from calc.stations.shared.forms import SIZE


def verdict_on(i: In, pins: Pins) -> Judged:
    return _out_of_its_angle(i, pins) or _wrong_throw(i, pins) or _unlike(i, pins) or _alike(pins)


def _out_of_its_angle(i: In, pins: Pins) -> Judged | None:
    if not past(pins.turned, i.worst):
        return None
    n, way = pins.worst.name, _way(pins.worst)
    return (
        "fail",
        say("Pin {n} {d} {way}, {w} allowed", n=n, d=pins.turned, way=way, w=i.worst),
        say("Read it again, crank clamped. If it stays: {set}", set=_set_right(pins)),
    )


def _wrong_throw(i: In, pins: Pins) -> Judged | None:
    short, long = pins.short, pins.long
    wrong = long if past(long.throw, i.throw_high) else None
    wrong = short if past(i.throw_low, short.throw) else wrong
    if wrong is None:
        return None
    low, high = i.throw_low, i.throw_high
    return (
        "fail",
        say("Throw of pin {n} {r}: {low} to {high}", n=wrong.name, r=wrong.throw, low=low, high=high),
        say(
            "Is it a crank of another stroke? Then type that one's limits. Else read again, and if it"
            " stays: {set}",
            set=_set_right(pins),
        ),
    )


def _unlike(i: In, pins: Pins) -> Judged | None:
    if past(pins.spread, i.most_spread):
        return (
            "attention",
            say("Throws differ by {s}, {a} allowed", s=pins.spread, a=i.most_spread),
            say(
                "Pin {long} is longest, pin {short} shortest. The pistons stand as much apart at the top:"
                " match rods or pistons to it, or at the next grinding: {set}",
                long=pins.long.name,
                short=pins.short.name,
                set=_set_right(pins),
            ),
        )
    good = min(i.good, i.worst, key=float)
    if past(pins.turned, good):
        n, way = pins.worst.name, _way(pins.worst)
        return (
            "attention",
            say("Pin {n} {d} {way}, over {g}", n=n, d=pins.turned, way=way, g=good),
            say("It may run. When the rod journals are ground: {set}", set=_set_right(pins)),
        )
    return None


def _alike(pins: Pins) -> Judged:
    return (
        "pass",
        say("Alike within {s}, angles within {d}", s=pins.spread, d=pins.turned),
        "Write throws and angles down by pin. Read again once the rod journals are ground.",
    )


def _way(pin: Pin) -> str:
    return "late" if float(pin.error) > 0 else "early"


def _set_right(pins: Pins) -> Text:
    """What grinding must take off so that the worst pin comes to its place."""
    return say(
        "set throw and angle before the wheel touches. Moving the worst pin back takes {u} of its diameter,"
        " beside what it is worn: choose the undersize by that.",
        u=at_least(pins.diameter, SIZE),
    )


def limits_of(i: In, pins: Pins) -> tuple[Limit, ...]:
    good = min(i.good, i.worst, key=float)
    return (
        Limit("the pins' angle", pins.turned, high=i.worst),
        Limit("the shortest throw", pins.short.throw, low=i.throw_low),
        Limit("the longest throw", pins.long.throw, high=i.throw_high),
        Limit("the throws' likeness", pins.spread, high=i.most_spread, level="attention"),
        Limit("the pins' angle", pins.turned, high=good, level="attention"),
    )


def remarks_on(i: In, pins: Pins) -> tuple[Remark | None, ...]:
    return (
        note(
            "A pin that is late by {d} has spark and valves early by as much for its cylinder; its piston"
            " hardly stands otherwise.",
            d=pins.turned,
        ),
        note(
            "A pin's own oval comes into the heights by half: read it with a micrometer first, and read"
            " heights over its unworn ring where that is wide enough."
        ),
        _odd_first(pins),
    )


def _odd_first(pins: Pins) -> Remark | None:
    """Three that agree against pin 1 speak against pin 1."""
    others = [float(pin.error) for pin in pins.each[1:]]
    apart, off = max(others) - min(others), abs(sum(others) / 3)
    if off <= 2 * apart or not past(off, 1e-4):
        return None
    return warning(
        "The other three agree, and all stand {d} off pin 1: it is pin 1 that is out.",
        d=constant("", "", DEGREES, off),
    )
