"""Does the piston keep clear of the head once the seats are cut, and are deck and ratio within their
limits?"""

from calc.core.advice import at_least
from calc.core.conformance import past
from calc.core.result import Judged, Remark, note, say, warning
from calc.core.working import Number
from calc.declare.calculator import Limit
from calc.stations.crankcase.deck_cut.asked import ONE, In
from calc.stations.shared.forms import COARSE


def verdict_on(i: In, deck: Number, ratio: Number, nearer: Number) -> Judged:
    return (
        _meets_the_head(i, deck)
        or _ratio_high(i, ratio)
        or _out(i, deck, ratio)
        or _in_order(i, deck, ratio, nearer)
    )


def _meets_the_head(i: In, deck: Number) -> Judged | None:
    if not past(i.deck_touch, deck):
        return None
    return (
        "fail",
        say("Piston may meet the head: {t} of deck", t=deck),
        say(
            "Put {s} more of shim under each cylinder of the side, all alike, and read the deck again.",
            s=at_least(i.deck_low - deck, COARSE),
        )
        if i.deck_low >= i.deck_touch
        else say(
            "Put {s} more of shim under each cylinder of the side.", s=at_least(i.deck_touch - deck, COARSE)
        ),
    )


def _ratio_high(i: In, ratio: Number) -> Judged | None:
    if i.ratio_most is None or not past(ratio, i.ratio_most):
        return None
    return (
        "fail",
        say("Ratio too high: {e}, {most} allowed", e=ratio, most=i.ratio_most),
        "It knocks, and knocking breaks pistons. Put shims in, or cut less.",
    )


def _out(i: In, deck: Number, ratio: Number) -> Judged | None:
    if past(i.deck_low, deck):
        return (
            "attention",
            say("Little deck: {t}, {low} as made", t=deck, low=i.deck_low),
            say(
                "Put {s} more of shim under each cylinder of the side, all alike, unless the maker allows"
                " this deck.",
                s=at_least(i.deck_low - deck, COARSE),
            ),
        )
    if i.deck_high is not None and past(deck, i.deck_high):
        return (
            "attention",
            say("Much deck: {t}, {high} as made", t=deck, high=i.deck_high),
            "The ratio falls, and the charge burns badly round a wide gap. Take shims out, if there are any.",
        )
    return None


def _in_order(i: In, deck: Number, ratio: Number, nearer: Number) -> Judged:
    return (
        "pass",
        say("Deck {t}, ratio {e}, then", t=deck, e=ratio),
        say(
            "Cut all seats of a side to one height, and read each deck with its own cylinder. Pushrods want"
            " to be {p} shorter."
            if float(nearer) > 0
            else "Cut all seats of a side to one height, and read each deck with its own cylinder.",
            p=nearer,
        ),
    )


def limits_of(i: In, deck: Number, ratio: Number) -> tuple[Limit, ...]:
    found = (
        Limit("the deck height", deck, low=i.deck_touch),
        Limit("the deck height", deck, low=i.deck_low, high=i.deck_high, level="attention"),
    )
    return found if i.ratio_most is None else (*found, Limit("the ratio", ratio, high=i.ratio_most))


def remarks_on(i: In, nearer: Number, wanted: Number) -> tuple[Remark | None, ...]:
    return (
        warning(
            "One side cut alone makes two unlike halves of an engine: cut the other alike, or shim this one"
            " back."
        )
        if i.sides == ONE and float(nearer) != 0
        else None,
        note(
            "Pushrods left as they are press their hydraulic plungers in by {p} more, and their angle at"
            " the rocker changes.",
            p=nearer,
        )
        if float(nearer) > 0
        else None,
        note(
            "Manifold, pushrod tubes and baffles are made for the old width, studs stand out farther by as"
            " much: look that no nut runs out of thread."
        )
        if float(nearer) != 0
        else None,
        note("{g} more of ratio would take a cut of {c}.", g=i.gain, c=wanted) if float(i.gain) > 0 else None,
    )
