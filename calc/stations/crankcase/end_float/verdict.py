"""Which three are fitted, or why no set serves; and once they are in, whether the float is right."""

from calc.core.advice import at_least, at_most
from calc.core.conformance import past
from calc.core.result import Judged, Limit, Text, say
from calc.core.working import Number, constant
from calc.stations.crankcase.end_float.asked import In
from calc.stations.crankcase.end_float.fitting import Fitting
from calc.stations.shared.forms import SIZE


def verdict_on(i: In, found: Fitting) -> Judged:
    if i.after is not None:
        return _read_again(i, found) or _warm(i, found) or _done(i, found)
    return _no_set(i, found) or _warm(i, found) or _fit(i, found)


def limits_of(i: In, found: Fitting) -> tuple[Limit, ...]:
    words = "the float with the best three" if i.after is None else "the end float"
    return (
        Limit(words, found.left, low=i.low, high=i.high),
        Limit("the float warm", found.warm, low=0),
        Limit("the float warm", found.warm, low=i.least_warm, level="attention"),
    )


def size(number: Number) -> Number:
    """How large it is, whichever way."""
    return constant("", "", SIZE, abs(float(number)))


def named(found: Fitting) -> Text:
    a, b, c = found.three
    return say("{a}, {b} and {c}", a=a, b=b, c=c)


def _fit(i: In, found: Fitting) -> Judged:
    return (
        "pass",
        say("Fit {three}", three=named(found)),
        say(
            "They leave {f}, of {low} to {high} allowed. All three go in, flat and oiled; then the flywheel"
            " at its full torque, and read the float again before its seal goes in.",
            f=found.float_then,
            low=i.low,
            high=i.high,
        ),
    )


def _done(i: In, found: Fitting) -> Judged:
    return (
        "pass",
        say("End float right: {f}", f=found.left),
        "Write it down with the three shims. Flywheel off once more, the seal in, the same three shims in,"
        " flywheel on at its full torque: then the crank must still turn by hand and move that much.",
    )


def _read_again(i: In, found: Fitting) -> Judged | None:
    little = past(i.low, found.left)
    if not little and not past(found.left, i.high):
        return None
    return (
        "fail",
        say("Too little float: {f}" if little else "Too much float: {f}", f=found.left),
        say(
            "{low} to {high} is allowed. The three were to leave {then}: look for a burr, dirt, a shim left"
            " out or one too many, and a flywheel nut that is not at its full torque. Then enter the three"
            " as trial shims with this float.",
            low=i.low,
            high=i.high,
            then=found.float_then,
        ),
    )


def _no_set(i: In, found: Fitting) -> Judged | None:
    if found.serves:
        return None
    if past(found.least, i.high):
        return (
            "fail",
            say("Too much float: {f} with the thickest three", f=found.least),
            say(
                "Measure float and trial shims again. If it stays, thrust bearing, saddle or crank have"
                " worn, or were cut: look at all three faces. A worn saddle is cut square and gets a"
                " bearing with a thicker flange. {other}",
                other=_another(found),
            ),
        )
    if past(i.low, found.most):
        return (
            "fail",
            say("Too little float: {f} with the thinnest three", f=found.most),
            say(
                "Look first for dirt, a burr, a bearing off its dowel, a flywheel that does not sit, and"
                " that the bearing's flange is of the width that this saddle wants. If it stays,"
                " get thinner shims, {less} less in all, and never fit fewer than three. {other} A thrust"
                " face is cut only where no shims are sold so thin.",
                less=at_least(float(i.low - found.most), SIZE),
                other=_another(found),
            ),
        )
    return (
        "fail",
        say("None of these sets fits: {f} at best", f=found.float_then),
        say("{low} to {high} is allowed. {other}", low=i.low, high=i.high, other=_another(found)),
    )


def _another(found: Fitting) -> Text:
    if found.add is None:
        return say("No third shim beside two of these would serve.")
    least, most = at_least(found.add.least, SIZE), at_most(found.add.most, SIZE)
    return say(
        "A shim of {least} to {most} makes a set with {a} and {b}.",
        least=least,
        most=most,
        a=found.add.first,
        b=found.add.second,
    )


def _warm(i: In, found: Fitting) -> Judged | None:
    if not past(i.least_warm, found.warm):
        return None
    what = say("{three}", three=named(found)) if i.after is None else say("The three")
    if found.warm <= 0:
        return (
            "fail",
            say("Binds warm: {f} left", f=found.warm),
            say(
                "{what} leave {cold} cold, and heat takes {by}. Is what holds the thrust faces apart really"
                " what was told, and so warm? If it is, this engine wants more float than its sheet allows:"
                " ask its maker.",
                what=what,
                cold=found.left,
                by=size(found.change),
            ),
        )
    return (
        "attention",
        say("Little float warm: {f}", f=found.warm),
        say(
            "{what} leave {cold} cold, and {least} are wanted warm. Choose three that leave more, within"
            " the sheet's {high}.",
            what=what,
            cold=found.left,
            least=i.least_warm,
            high=i.high,
        ),
    )
