"""Is the ratio that of the engine's sheet; and what gives one that is wanted?"""

from calc.core.advice import at_least
from calc.core.conformance import past
from calc.core.result import Judged, Limit, Text, say
from calc.core.working import constant
from calc.stations.cylinders.compression.asked import WANTED, In
from calc.stations.cylinders.compression.told import CC
from calc.stations.cylinders.compression.volumes import Volumes, Wanted, deck_for
from calc.stations.shared.forms import COARSE

SAME = 0.005e-3  # m: less than this no shim is changed for


def verdict_on(i: In, v: Volumes, wanted: Wanted) -> Judged:
    return _what_gives_it(i, wanted) if i.aim == WANTED else _as_it_is(i, v)


def limits_of(i: In, v: Volumes, wanted: Wanted) -> tuple[Limit, ...]:
    if i.aim == WANTED:
        return (
            Limit("the ratio wanted", i.wanted, low=i.low, high=i.high),
            Limit("the deck height left", wanted.deck, low=i.least_deck, level="attention"),
            Limit("the deck height left", wanted.deck, high=i.most_deck, level="attention"),
        )
    return (
        Limit("the deck height", i.deck, low=i.least_deck, high=i.most_deck),
        Limit("the compression ratio", v.ratio, low=i.low, high=i.high),
    )


def _deck_first(i: In) -> Judged | None:
    if past(i.least_deck, i.deck):
        return (
            "fail",
            say("Deck {t}: {least} is the least", t=i.deck, least=i.least_deck),
            "The piston comes too near the head, whatever the ratio. Read it again at both ends of the pin,"
            " choose shims by the deck height, and work the ratio out with them.",
        )
    if past(i.deck, i.most_deck):
        return (
            "fail",
            say("Deck {t}: {most} is the most", t=i.deck, most=i.most_deck),
            "Read it again at both ends of the pin. Take shims out, as far as there are any; else a part is"
            " too short, or belongs to another engine. Then work the ratio out again.",
        )
    return None


def _as_it_is(i: In, v: Volumes) -> Judged:
    if unfit := _deck_first(i):
        return unfit
    if past(v.ratio, i.high):
        return "fail", say("Ratio {e}: over {high}", e=v.ratio, high=i.high), _too_high(i, v)
    if past(i.low, v.ratio):
        return "fail", say("Ratio {e}: under {low}", e=v.ratio, low=i.low), _too_low(i, v)
    return (
        "pass",
        say("Ratio {e}: within {low} to {high}", e=v.ratio, low=i.low, high=i.high),
        "Do the other cylinders too. Write down bore, chamber, deck and crown with each: a rebore or a cut"
        " changes it.",
    )


def _too_high(i: In, v: Volumes) -> Text:
    deck = deck_for(i, v, i.high)
    more = deck - float(i.deck)
    again = "Read chamber, deck and the crown's sign again: the engine knocks when it is so."
    if deck <= float(i.most_deck):
        return say(
            again + " If it stays, shims {s} thicker or a little more, as they are sold, under both cylinders"
            " of that head bring it within. Read the deck again with them.",
            s=at_least(more, COARSE),
        )
    return say(
        again + " If it stays, the chamber must be {v} larger: shims alone would leave too much deck.",
        v=at_least(more * float(v.area), CC),
    )


def _too_low(i: In, v: Volumes) -> Text:
    deck = deck_for(i, v, i.low)
    less = float(i.deck) - deck
    again = "Read chamber, deck and the crown's sign again."
    if deck >= float(i.least_deck):
        return say(
            again + " If it stays, shims {s} thinner under both cylinders of that head bring it within, where"
            " such shims are in; where none are, the chamber is too large.",
            s=at_least(less, COARSE),
        )
    return say(
        again
        + " If it stays, the chamber must be {v} smaller. Never take it from the deck: {t} would be left, and"
        " {least} must be.",
        v=at_least(less * float(v.area), CC),
        t=constant("", "", COARSE, deck),
        least=i.least_deck,
    )


def _what_gives_it(i: In, wanted: Wanted) -> Judged:
    if past(i.wanted, i.high) or past(i.low, i.wanted):
        return (
            "fail",
            say("Ratio {e} wanted: {low} to {high} allowed", e=i.wanted, low=i.low, high=i.high),
            "Fuel, timing and cooling were made for the sheet's ratio. Only the engine's maker can allow"
            " another.",
        )
    if abs(float(wanted.shim)) < SAME:
        return (
            "pass",
            say("Nothing to change: it is {e}", e=i.wanted),
            "Put it together with these shims, and write the ratio down.",
        )
    if past(i.least_deck, wanted.deck) or past(wanted.deck, i.most_deck):
        return "attention", _not_by_shims(i, wanted), _by_chamber(i, wanted)
    thicker = wanted.shim > 0
    return (
        "pass",
        say(
            "Shims {s} " + ("thicker" if thicker else "thinner") + " give {e}",
            s=constant("", "", COARSE, abs(float(wanted.shim))),
            e=i.wanted,
        ),
        say(
            "The deck is then {t}. Change both cylinders of a head alike, from the sizes sold, and measure"
            " again. Or {chamber}",
            t=wanted.deck,
            chamber=_chamber(i, wanted),
        ),
    )


def _not_by_shims(i: In, wanted: Wanted) -> Text:
    if wanted.deck < 0:
        return say("Not by shims: piston {t} proud", t=constant("", "", COARSE, -float(wanted.deck)))
    return say("Not by shims: they leave {t} of deck", t=wanted.deck)


def _by_chamber(i: In, wanted: Wanted) -> Text:
    span = say("{low} to {high} of deck are allowed.", low=i.least_deck, high=i.most_deck)
    if wanted.chamber <= 0:
        return say("{span} No chamber gives it either: take other pistons.", span=span)
    return say("{span} Leave the deck, and {chamber}", span=span, chamber=_chamber(i, wanted))


def _chamber(i: In, wanted: Wanted) -> Text:
    by = constant("", "", CC, abs(float(wanted.chamber - i.chamber)))
    if wanted.chamber > i.chamber:
        return say("grind the chamber out by {v}, to {w}.", v=by, w=wanted.chamber)
    return say("cut the sealing step until the chamber is {v} smaller, {w}.", v=by, w=wanted.chamber)
