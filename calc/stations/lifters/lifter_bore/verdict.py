"""What is said of bore, wall and fit: what forbids the cut, then where the bore stands."""

from calc.core.conformance import past
from calc.core.result import Judged, Limit, Remark, note, say, warning
from calc.core.working import constant
from calc.stations.lifters.lifter_bore.asked import PRESS, In
from calc.stations.lifters.lifter_bore.bore import Bore
from calc.stations.lifters.lifter_bore.press import Press
from calc.stations.shared import honing
from calc.stations.shared.forms import FINE, SIZE
from calc.stations.shared.ring_in_wall import short_by

NEAR_YIELD = 0.9  # common practice, no source: nearer than a tenth, the doubt of the readings alone decides


def verdict_on(i: In, bore: Bore, press: Press) -> Judged:
    return (
        _too_thin_or_too_weak(i, bore, press)
        or _binds(i, bore, press)
        or _too_large_or_near_yield(i, bore, press)
        or _to_cut(i, bore)
    )


def limits_of(i: In, bore: Bore, press: Press) -> tuple[Limit, ...]:
    """What the verdict is decided by."""
    to_hone = Limit("what comes off", bore.stock, low=i.least_hone, high=i.most_hone, level="attention")
    return (
        Limit("the wall left", bore.wall, low=i.least_wall),
        Limit("the bore", i.bore, high=bore.largest),
        Limit("the plunger's clearance", press.plunger_left, low=i.least_plunger),
        Limit("the clearance in the case", press.case_left, low=i.least_case),
        Limit("the body's stress", press.body_used, high=1),
        Limit("the unit's stress", press.unit_used, high=1),
        Limit("the margin of the body's stress", press.body_used, high=NEAR_YIELD, level="attention"),
        Limit("the margin of the unit's stress", press.unit_used, high=NEAR_YIELD, level="attention"),
        *(() if bore.done else (to_hone,)),
    )


def _too_thin_or_too_weak(i: In, bore: Bore, press: Press) -> Judged | None:
    if past(i.least_wall, bore.wall):
        return (
            "fail",
            say("Wall too thin: {w}, {least} wanted", w=bore.wall, least=i.least_wall),
            "Do not cut. Take a body with more outside or a straighter bore, or a slimmer unit.",
        )
    if i.fit_wanted == PRESS and press.worst_used > 1:
        body = press.body_used >= press.unit_used
        cracks = body and press.joint.wall.material.brittle
        return (
            "fail",
            say(
                ("Body" if body else "Unit")
                + (" may crack" if cracks else " yields")
                + ": {s} of its strength",
                s=press.worst_used,
            ),
            "Do not press it in. Type less interference, or slip it in and hold it by a ring.",
        )
    return None


def _binds(i: In, bore: Bore, press: Press) -> Judged | None:
    pressed = i.fit_wanted == PRESS
    if past(i.least_plunger, press.plunger_left):
        still = bore.done and past(bore.stock, 0.0)
        less = (
            "Hone on to {D}, and measure again." if still else "Type less interference, or slip the unit in."
        )
        return (
            "fail",
            say("Plunger binds: {c} left, {least} wanted", c=press.plunger_left, least=i.least_plunger),
            say("Pressing closes its bore by {d}. " + less, d=press.closing, D=bore.target)
            if pressed
            else "Measure both again, clean and at one temperature. If it stays, another unit.",
        )
    if past(i.least_case, press.case_left):
        return (
            "fail",
            say("Body binds in the case: {c} left", c=press.case_left),
            say(
                "{least} are wanted"
                + (" and pressing takes {g}" if pressed else "")
                + ". Take another body, or hone the case where its maker allows it.",
                least=i.least_case,
                g=press.growth,
            ),
        )
    return None


def _too_large_or_near_yield(i: In, bore: Bore, press: Press) -> Judged | None:
    if bore.too_large:
        return (
            "fail",
            say("Bore too large by {d}", d=short_by(bore.stock)),
            "Measure again, both equally warm. If it stays, a larger unit or another body: no plating, no"
            " glue.",
        )
    if i.fit_wanted == PRESS and press.worst_used > NEAR_YIELD:
        return (
            "attention",
            say("Near yield: {s} used", s=press.worst_used),
            "Measure body and unit again, and type less interference.",
        )
    return None


def _to_cut(i: In, bore: Bore) -> Judged:
    if bore.done:
        return (
            "pass",
            say("Done: the bore fits, {w} of wall", w=bore.wall),
            "Stop honing. Wash until a white rag stays white, then measure again with its unit.",
        )
    if honing.bored_first(bore.stock, i.most_hone):
        return (
            "attention",
            say("Bore first: {a} to come off", a=bore.stock),
            honing.plan(bore.target, SIZE, i.least_hone, i.most_hone),
        )
    if past(i.least_hone, bore.stock):
        return (
            "attention",
            say("Little left to hone: {a}", a=bore.stock),
            "It may not clean up. Look at the bore under a glass: where tool marks would stay, take another"
            " body.",
        )
    return (
        "pass",
        say("Hone {a} off, to {D}", a=bore.stock, D=bore.target),
        "Short strokes, plenty of oil, and look at it often; let it cool before you measure. Leave a"
        " cross-hatch, no polish.",
    )


def remarks_on(i: In, bore: Bore, press: Press) -> tuple[Remark | None, ...]:
    """What holds the unit, and how deep a body is hard."""
    return (
        note(
            "Pressed in, the unit's bore closes: a plunger with {c} of clearance keeps {l}.",
            c=constant("", "", FINE, float(i.plunger_bore - i.plunger)),
            l=press.plunger_left,
        )
        if i.fit_wanted == PRESS
        else note(
            "Slipped in it bears no stress. What holds it is the snap ring: “Snap ring and its groove” works"
            " that out."
        ),
        warning(
            "A hardened or chilled body is hard only so deep. Ask its maker before you bore through the hard"
            " layer."
        )
        if past(bore.stock, i.most_hone)
        else None,
    )
