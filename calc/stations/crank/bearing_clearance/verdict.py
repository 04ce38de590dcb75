"""What is said of a bearing's clearance: too tight first, for that seizes; then too loose; then how it
runs."""

from calc.core.advice import at_least, at_most
from calc.core.conformance import past
from calc.core.result import Judged, Limit, Text, say
from calc.core.working import Number
from calc.stations.crank.bearing_clearance.asked import In
from calc.stations.crank.bearing_clearance.clearance import Clearance
from calc.stations.shared.forms import SIZE


def verdict_on(i: In, c: Clearance) -> Judged:
    return _tight(i, c) or _worn(c) or _worth_a_look(i, c) or _good(c)


def limits_of(i: In, c: Clearance) -> tuple[Limit, ...]:
    b = c.bearing
    return (
        Limit("the tightest clearance", c.tight, low=b.low),
        Limit("the clearance running", c.running, low=0),
        Limit("the loosest clearance", c.loose, high=_most(c)),
        Limit("the clearance running", c.running, low=i.least_running, level="attention"),
        Limit("the loosest clearance", c.loose, high=b.high, level="attention"),
        *(
            (Limit("the shells' grip running", c.held.hot.interference, low=0, level="attention"),)
            if c.known
            else ()
        ),
    )


def _most(c: Clearance) -> Number:
    """At which it is worn; no less than what fresh parts may have."""
    b = c.bearing
    return b.high if b.worn < b.high else b.worn


def _tight(i: In, c: Clearance) -> Judged | None:
    b = c.bearing
    if past(b.low, c.tight):
        words = "Too tight: {c}, at least {low}" if c.tight > 0 else "No room: {c}, at least {low}"
        return "fail", say(words, c=c.tight, low=b.low), _tight_do(c)
    if not past(c.running, 0):
        return (
            "fail",
            say("Seizes running: {c} left", c=c.running),
            say(
                "Cold it has {c}. Look at the temperatures and metals first; if they are right, it needs {m}"
                " more room cold than the sheet's least.",
                c=c.tight,
                m=at_least(-float(c.running), SIZE),
            ),
        )
    return None


def _tight_do(c: Clearance) -> Text:
    b = c.bearing
    return say(
        "Do not close it: it seizes. Wipe the backs of the shells and their seats, bolt up again to the full"
        " torque and measure all three once more. If it stays, change the one that is out of its own limits:"
        " shells of the wrong undersize, a journal ground too large, a " + b.words + " bored too small."
        " {serves}",
        serves=_serves(c),
    )


def _serves(c: Clearance) -> Text:
    """From which to which size another journal, or other shells, bring both ends within their limits."""
    b = c.bearing
    spare, over = float(c.tight) - float(b.low), float(c.loose) - float(b.high)
    told = [
        say(words, a=at_least(least, SIZE), b=at_most(most, SIZE))
        for words, least, most in (
            ("a journal of {a} to {b}", float(b.journal_least) + over, float(b.journal) + spare),
            ("shells of {a} to {b} each", float(b.wall_least) + over / 2, float(b.wall) + spare / 2),
        )
        if least <= most
    ]
    if len(told) == 2:
        return say("What serves here: {d}, or {w}.", d=told[0], w=told[1])
    if told:
        return say("What serves here: {one}.", one=told[0])
    return say("Neither another journal nor other shells serve alone.")


def _differs(c: Clearance) -> Text | None:
    """Whose own readings lie so far apart that they alone make the bearing loose."""
    b = c.bearing
    journal, bore = float(b.journal - b.journal_least), float(b.bore_most - b.bore)
    apart = max(journal, bore)
    if float(c.loose) - apart > float(b.high):
        return None
    if journal >= bore:
        return say(
            "The journal's own readings differ by {s}, and other shells do not cure that: read it again, at"
            " both ends and in two directions, and see which undersize cleans it up.",
            s=at_least(apart, SIZE),
        )
    return say(
        "The bore's own readings differ by {s}, and other shells do not cure that: bolt it up again clean,"
        " read it in three directions, and look at the " + b.words + ".",
        s=at_least(apart, SIZE),
    )


def _worn(c: Clearance) -> Judged | None:
    b = c.bearing
    if not past(c.loose, _most(c)):
        return None
    return (
        "fail",
        say("Too loose: {c}, {w} allowed", c=c.loose, w=_most(c)),
        _differs(c)
        or say(
            "Measure again with shells and seats wiped. If it stays, change the one that is out of its own"
            " limits: worn shells first, then a journal to the next undersize, a " + b.words + " that was"
            " pounded wide last. {serves}",
            serves=_serves(c),
        ),
    )


def _worth_a_look(i: In, c: Clearance) -> Judged | None:
    b = c.bearing
    if past(i.least_running, c.running):
        return (
            "attention",
            say("Tight running: {c} left", c=c.running),
            say(
                "{least} are wanted for the oil. Look at the temperatures and metals; if they are right, aim"
                " for the loose end of the limits.",
                least=i.least_running,
            ),
        )
    if past(c.loose, b.high):
        return (
            "attention",
            say("Loose for fresh parts: {c}, {h} at most", c=c.loose, h=b.high),
            _differs(c)
            or say(
                "Parts that have run may stay up to {w}, if the shells are smooth and the oil pressure was"
                " good. In an engine that is built anew, change the shells.",
                w=_most(c),
            ),
        )
    if c.known and not past(c.held.hot.interference, 0):
        return (
            "attention",
            say("Shells lose their grip when hot: {d} left", d=c.held.hot.interference),
            "The clearance is right. The shells must be held by more than their crush: check how far each"
            " stands proud, and that dowel or lug is sound.",
        )
    return None


def _good(c: Clearance) -> Judged:
    span = (
        say("{t}", t=c.tight)
        if float(c.loose) - float(c.tight) < 0.5e-6
        else say("{t} to {l}", t=c.tight, l=c.loose)
    )
    return (
        "pass",
        say("Clearance right: {span}, running {r}", span=span, r=c.running),
        "Mark the shells for this place. Oil hole over oil hole, lug or dowel in its seat, backs dry and"
        " shells oiled; then bolt up, and turn the crank by hand after each nut.",
    )
