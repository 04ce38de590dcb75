"""Do the springs hold the valves? The weakest is judged for holding, the strongest for stress."""

from calc.core.conformance import past
from calc.core.result import Judged, Limit, say
from calc.core.working import constant
from calc.stations.heads.valve_spring.asked import In
from calc.stations.heads.valve_spring.life import Life
from calc.stations.heads.valve_spring.loads import Loads, Shims
from calc.stations.heads.valve_spring.surge import Surge
from calc.stations.shared.forms import COARSE, NEWTON


def verdict_on(i: In, loads: Loads, life: Life, surge: Surge, shims: Shims) -> Judged:
    """State, headline, and what to do; the worst first."""
    return (
        _bound(loads)
        or _weak(i, loads, shims)
        or _strained(i, loads, life)
        or _unlike_or_surging(i, loads, surge)
        or (
            "pass",
            say("Hold: {F} shut, {m} to bind", F=loads.seat, m=loads.margin),
            (
                "Fit each to its valve. Measure every fitted height; a valve that lies deeper needs a shim of"
                " as much."
            ),
        )
    )


def _bound(loads: Loads) -> Judged | None:
    if loads.margin > 0:
        return None
    return (
        "fail",
        say("Coil bind: {m} short at full lift", m=constant("", "", COARSE, abs(float(loads.margin)))),
        (
            "Do not run it: the valve gear breaks. Take out shims, look whether the spring belongs here,"
            " measure the lift."
        ),
    )


def _weak(i: In, loads: Loads, shims: Shims) -> Judged | None:
    worn, soft = loads.worn, loads.soft
    if past(i.least_seat, worn.load):
        return (
            "fail",
            say("Weak: {F} at {h}, spring {name}", F=worn.load, h=i.height_1, name=worn.name),
            say(
                "There {least} are wanted. Replace it: a shim only hides that it has set.", least=i.least_seat
            ),
        )
    if past(i.least_seat, loads.weak.seat):
        return (
            "fail",
            say("Seat load low as fitted: {F}", F=loads.seat),
            (
                say(
                    "The spring is good but stands too tall. Shim it by {t}, and measure the height again.",
                    t=shims.wanted,
                )
                if shims.wanted <= shims.most
                else say(
                    "The spring is good but stands too tall, and coil bind leaves room for {t} of shims only."
                    " The valve lies too deep: look at its seat.",
                    t=shims.most,
                )
            ),
        )
    if past(i.least_open, soft.open):
        return (
            "fail",
            say("Weak at full lift: {F}, spring {name}", F=loads.open, name=soft.name),
            "Measure lift and fitted height again. If both are right, the spring is too soft: replace it.",
        )
    return None


def _strained(i: In, loads: Loads, life: Life) -> Judged | None:
    stiff = loads.stiff
    if past(i.least_margin, loads.margin):
        return (
            "attention",
            say("Near coil bind: {m} left", m=loads.margin),
            say(
                "{least} were wanted. Take out shims; without any, look whether spring, retainer and lift"
                " belong together.",
                least=i.least_margin,
            ),
        )
    if life.endurance > 1:
        return (
            "attention",
            say("Stressed past endless life: {u} used", u=life.endurance),
            (
                "Such a spring breaks one day. Take less lift or a spring made for this one, and look at old"
                " springs with a magnifier."
            ),
        )
    if past(stiff.seat, i.most_seat):
        return (
            "attention",
            say(
                "Strong: {F} shut, spring {name}",
                F=constant("", "", NEWTON, float(stiff.seat)),
                name=stiff.name,
            ),
            say(
                "More than {most} wears cam and lifters. Take out shims, or change it for one of the set.",
                most=i.most_seat,
            ),
        )
    return None


def _unlike_or_surging(i: In, loads: Loads, surge: Surge) -> Judged | None:
    if past(loads.spread, i.most_spread):
        return (
            "attention",
            say("Uneven: seat loads {d} apart", d=loads.spread),
            say(
                "Up to {most} is usual. Shim the weak ones as in the table, or change them.",
                most=i.most_spread,
            ),
        )
    if surge.order < i.least_order:
        return (
            "attention",
            say("May surge: harmonic {j} at top speed", j=surge.order),
            say(
                "From {n} on, a harmonic lower than {least} meets the spring. Keep below it, or fit a spring"
                " with a friction damper or an inner spring.",
                n=surge.speed,
                least=i.least_order,
            ),
        )
    return None


def limits_of(i: In, loads: Loads, life: Life) -> tuple[Limit, ...]:
    return (
        Limit("the seat load at the first height", loads.worn.load, low=i.least_seat),
        Limit("the seat load", loads.seat, low=i.least_seat),
        Limit("the load at full lift", loads.open, low=i.least_open),
        Limit("the room to coil bind", loads.margin, low=0.0),
        Limit("the room to coil bind wanted", loads.margin, low=i.least_margin, level="attention"),
        Limit("the strongest seat load", loads.stiff.seat, high=i.most_seat, level="attention"),
        Limit("the evenness of the loads", loads.spread, high=i.most_spread, level="attention"),
        Limit("the stress", life.endurance, high=1, level="attention"),
    )
