"""Do the shells hold, cold and running, and do shell and housing bear it?"""

from calc.core.conformance import past
from calc.core.result import Judged, Limit, Remark, note, say, warning
from calc.core.working import Number
from calc.stations.crank.shell_crush.asked import In
from calc.stations.crank.shell_crush.grip import Grip

MOST_OF_HOUSING = 0.5  # of its yield; common practice, no source


def verdict_on(g: Grip) -> Judged:
    return _does_not_hold(g) or _too_much(g) or _worth_a_look(g) or _holds(g)


def limits_of(g: Grip) -> tuple[Limit, ...]:
    p = g.pair
    return (
        Limit("how far the lesser half stands proud", _lesser(g), low=p.low),
        Limit("how far the greater half stands proud", _greater(g), high=p.high),
        Limit("the grip left running", g.left, low=0),
        Limit("the shell's stress", g.shell_used, high=1, level="attention"),
        Limit("the housing's stress", g.housing_used, high=MOST_OF_HOUSING, level="attention"),
    )


def _lesser(g: Grip) -> Number:
    return min(g.pair.one, g.pair.other, key=float)


def _greater(g: Grip) -> Number:
    return max(g.pair.one, g.pair.other, key=float)


def _does_not_hold(g: Grip) -> Judged | None:
    a, p = _lesser(g), g.pair
    others = "Other shells. Never file a joint to bring the other half up, and lay nothing behind a shell."
    if not past(a, 0):
        return (
            "fail",
            say("Shell not proud: {a}", a=a),
            "Press it home again and read the other end. If it stays, it turns: it was filed, or is of"
            " another housing. " + others,
        )
    if past(p.low, a):
        return (
            "fail",
            say("Too little crush: {a}, at least {l}", a=a, l=p.low),
            "Wipe the seat, press it home and read again. Then measure the housing's bore, which may be bored"
            " or pounded too wide. If that is right: " + others[0].lower() + others[1:],
        )
    if not past(g.left, 0):
        return (
            "fail",
            say("Turns when hot: {d} of interference left", d=g.left),
            "The housing grows away from the shells. Look at metals and temperatures first; if they are"
            " right, these shells need more crush, or a dowel that holds them, as the maker says.",
        )
    return None


def _too_much(g: Grip) -> Judged | None:
    a, p = _greater(g), g.pair
    if not past(a, p.high):
        return None
    return (
        "fail",
        say("Too much crush: {a}, at most {h}", a=a, h=p.high),
        "Wipe the seat, press it home and read again: dirt behind it, or an end that was not flush, reads"
        " like this. If it stays, it buckles inwards at the joint. Measure the housing's bore, and take"
        " other shells; do not file these.",
    )


def _worth_a_look(g: Grip) -> Judged | None:
    if past(g.shell_used, 1):
        return (
            "attention",
            say("Shell yields: {u} of what it bears", u=g.shell_used),
            "It holds now, and loses part of its grip for good. Check how far both halves stand proud, and"
            " the housing's bore. Once taken out, these shells do not go in again.",
        )
    if past(g.housing_used, MOST_OF_HOUSING):
        return (
            "attention",
            say("Housing strained: {u} of its yield", u=g.housing_used),
            "In a soft case that gives, grip is lost with the hours. Measure the least wall round the"
            " bearing, and keep to the least crush.",
        )
    return None


def _holds(g: Grip) -> Judged:
    return (
        "pass",
        say("Shells hold: {c} cold, {h} running", c=g.held.cold.interference, h=g.held.hot.interference),
        say(
            "Bolt up. They open the housing by {u}, which a gauge in the fitted shells finds as clearance.",
            u=g.held.cold.opened,
        ),
    )


def remarks_on(i: In, g: Grip) -> tuple[Remark | None, ...]:
    return (
        (
            note("The other half was not read: it is taken to stand proud alike. Read both.")
            if i.other_proud is None
            else None
        ),
        (
            warning(
                "The two halves differ: one stands {a} proud, the other {b}. Are they of one pair?",
                a=g.pair.one,
                b=g.pair.other,
            )
            if abs(float(g.pair.one - g.pair.other)) > float(g.pair.high - g.pair.low)
            else None
        ),
        note(
            "A housing that did not give would put {r} into the shell; this one leaves {s}.",
            r=g.rigid,
            s=g.hoop,
        ),
    )
