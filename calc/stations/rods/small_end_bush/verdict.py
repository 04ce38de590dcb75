"""What is said of bush and pin, in the order in which it matters: the grip, the bore, then what is worth a
look."""

from calc.core.conformance import past
from calc.core.result import Judged, Limit, Text, say
from calc.stations.rods.small_end_bush.asked import In
from calc.stations.rods.small_end_bush.pin import Pin
from calc.stations.shared.forms import SIZE
from calc.stations.shared.honing import bored_first, plan
from calc.stations.shared.ring_in_wall import short_by
from calc.stations.shared.sleeve import Grip


def verdict_on(i: In, grip: Grip, pin: Pin) -> Judged:
    return (
        _grip_fails(i, grip)
        or _bore_fails(i, pin)
        or _worth_a_look(i, grip, pin)
        or (_honed(pin) if i.honed is not None else _to_hone(pin))
    )


def limits_of(i: In, grip: Grip, pin: Pin) -> tuple[Limit, ...]:
    """What the verdict is decided by."""
    return (
        Limit("the grip left", grip.left, low=i.least_grip),
        Limit("what bush and rod bear", grip.room, low=0),
        Limit("the pin's freedom", pin.tightest[0], low=0),
        Limit("the wall of the bush", pin.wall, low=i.least_wall),
        (
            Limit("the pin clearance", pin.clearance, high=i.most_clearance)
            if i.honed is not None
            else Limit("what is left to hone", pin.stock, low=0, level="attention")
        ),
        Limit("the bush's stress", grip.used[0], high=1, level="attention"),
        Limit("the rod's stress", grip.used[1], high=1, level="attention"),
        Limit("the pin's clearance cold", pin.clearance, low=i.least_cold, level="attention"),
        Limit("the pin's clearance running", pin.running, low=i.least_clearance, level="attention"),
    )


def _bush_that_serves(grip: Grip) -> Text:
    if grip.serving.serves:
        return grip.serving.told("For this rod take a bush of {w} to {m}.")
    return say(
        "No bush of this alloy serves this rod: what holds already overloads it. Look for a stronger one, or"
        " a thicker wall."
    )


def _grip_fails(i: In, grip: Grip) -> Judged | None:
    other = _bush_that_serves(grip)
    do_not = say("Do not fit this bush. {other}", other=other)
    if grip.interference <= 0:
        return "fail", say("Falls out: bush {d} under the bore", d=short_by(grip.interference)), do_not
    if grip.left <= 0 and not grip.gives:
        return "fail", say("Comes loose: {d} left " + grip.loosest, d=grip.left), do_not
    if grip.room < 0:
        return "fail", say(grip.hardest[0] + " gives way: {d} too much", d=short_by(grip.room)), do_not
    if past(i.least_grip, grip.left):
        return (
            "fail",
            say("Little grip: {d} left " + grip.loosest, d=grip.left),
            say("Measure both again. If it stays, do not fit this bush. {other}", other=other),
        )
    return None


def _bore_fails(i: In, pin: Pin) -> Judged | None:
    clearance, when = pin.tightest
    if past(i.least_wall, pin.wall):
        return (
            "fail",
            say("Bush too thin: {t} of wall", t=pin.wall),
            "The rod's eye was bored too small for this pin, or the pin is too large. Bore the eye for a"
            " thicker bush if its own wall allows.",
        )
    if clearance <= 0:
        return (
            "fail",
            say("Pin seizes: {c} left " + when, c=clearance),
            "Hone larger. If the bore was not meant to be so small, look at the pin: is it the right one, and"
            " round?",
        )
    if i.honed is not None and past(pin.clearance, i.most_clearance):
        return (
            "fail",
            say("Pin too loose: {c}, {m} allowed", c=pin.clearance, m=i.most_clearance),
            "Try the largest pin of the set. If that is loose too, press a new bush in and hone again.",
        )
    return None


def _worth_a_look(i: In, grip: Grip, pin: Pin) -> Judged | None:
    if grip.gives:
        return (
            "attention",
            say(grip.hardest[0] + " yields a little: {d} lost", d=grip.lost),
            say(
                "{left} of grip are left for good, and it holds. Measure both again. {other}",
                left=grip.left,
                other=_bush_that_serves(grip),
            ),
        )
    for clearance, least, when in (
        (pin.clearance, i.least_cold, "cold"),
        (pin.running, i.least_clearance, "when running"),
    ):
        if past(least, clearance):
            return (
                "attention",
                say("Pin tight " + when + ": {c} left", c=clearance),
                say("{least} are wanted. Hone larger by what is missing.", least=least),
            )
    if i.honed is None and pin.stock <= 0:
        return (
            "attention",
            say("Nothing to hone: bore already {d} larger", d=short_by(pin.stock)),
            "Take a bush that comes with a smaller bore, or measure this one again once it is in.",
        )
    return None


def _honed(pin: Pin) -> Judged:
    return (
        "pass",
        say("Pin free: {c} cold, {h} when running", c=pin.clearance, h=pin.running),
        "Wash bush and oil hole, oil the pin, push it through by hand. Tag pin and rod together.",
    )


def _to_hone(pin: Pin) -> Judged:
    if bored_first(pin.to_hone):
        return (
            "pass",
            say("Press it in, bore, then hone to {D}", D=pin.hone),
            say(
                "Press it in with its oil hole over the rod's. Only then measure: {a} are to come off. {how}"
                " Measure each pin first.",
                a=pin.to_hone,
                how=plan(pin.hone, SIZE),
            ),
        )
    return (
        "pass",
        say("Press it in, then hone to {D}", D=pin.hone),
        say(
            "Press it in with its oil hole over the rod's. Only then measure, and hone out {a}; measure each"
            " pin first.",
            a=pin.to_hone,
        ),
    )
