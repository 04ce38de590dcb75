"""What is said of the heat that a ring needs: too much, hardly any room, none at all, near the temper, or
just so."""

from calc.core.advice import at_most
from calc.core.result import Judged, Remark, Text, note, say, warning
from calc.core.working import Number
from calc.stations.heads.seat_shrink.asked import In
from calc.stations.heads.seat_shrink.baths import BATHS, FREEZING, READING, at
from calc.stations.heads.seat_shrink.drop import Drop, Fitting
from calc.stations.shared.forms import DEGREES_C, SIZE

WARM = at(353.15)  # an oven, no longer a hand's heat


def verdict_on(i: In, drop: Drop, fitting: Fitting, easy: Number | None) -> Judged:
    if drop.margin < 0:
        return _over_the_limit(i, drop, fitting, easy)
    if min(drop.may_cool, drop.may_warm) < READING:
        return (
            "attention",
            say("Hardly any room: {c} as the ring goes in", c=drop.clearance_in),
            say(
                "It sticks once the head has cooled {k} or the ring has warmed {r}: no hand is so quick. Ask"
                " for more clearance.",
                k=drop.may_cool,
                r=drop.may_warm,
            ),
        )
    if float(drop.wanted) == 0:
        return (
            "pass",
            "No heat needed: the cold ring drops in",
            say(
                "There is {c} to spare at first. Warm the head by hand until it is dry, so that no frost"
                " forms in the pocket, and hold the ring down until it grips.",
                c=drop.clearance_in,
            ),
        )
    return _near_the_temper(drop, fitting, easy) or _hot_enough(drop)


def _over_the_limit(i: In, drop: Drop, fitting: Fitting, easy: Number | None) -> Judged:
    """How cold the ring must be, or that cold is not enough either."""
    coldest, ring = BATHS[-1][1], fitting.ring
    ring_growth = float(drop.most) - (fitting.grip + fitting.clearance) / fitting.pocket
    if ring_growth < ring.strain_at(coldest):
        return "fail", say("Does not drop in even at {cold}", cold=coldest), _other_ring(i, drop, fitting)
    limit = float(i.head_limit)
    near = limit - float(READING)
    heats = (*([min(float(easy), near)] if easy else ()), near, limit)  # the better first
    words, bath = next(
        ((words, bath) for heat in heats for words, bath in BATHS if fitting.head_for(bath) <= heat),
        BATHS[-1],
    )
    return (
        "fail",
        say("Over the limit: the head would need {t}", t=drop.needed.held_to(None, limit)),
        say(
            "Chill the ring. Out of {words} at {bath} the head needs {t}; with the head at its limit of"
            " {limit}, {ring} or colder is enough.",
            words=words,
            bath=bath,
            t=at(fitting.head_for(bath)),
            limit=i.head_limit,
            ring=at_most(ring.temperature_for(ring_growth), DEGREES_C),
        ),
    )


def _other_ring(i: In, drop: Drop, fitting: Fitting) -> Text:
    """The largest ring that drops in out of the coldest bath, if one that holds does."""
    coldest = BATHS[-1][1]
    largest = fitting.pocket * (1 + float(drop.most) - fitting.ring.strain_at(coldest)) - fitting.clearance
    if largest > fitting.pocket:
        return say(
            "Do not drive it in. Measure both again. Out of liquid nitrogen, and with the head at its limit,"
            " a ring of {d} at most drops in.",
            d=at_most(largest, SIZE),
        )
    return say(
        "Do not drive it in. With {c} to spare and the head at {limit} no ring that holds drops in: ask for"
        " less clearance.",
        c=i.clearance,
        limit=i.head_limit,
    )


def _near_the_temper(drop: Drop, fitting: Fitting, easy: Number | None) -> Judged | None:
    temper = fitting.head.limit_temperature
    if easy is None or temper is None or drop.needed <= easy:
        return None
    if float(drop.needed) > temper:
        return (
            "attention",
            say("Heat to {t} softens the head", t=drop.needed),
            say(
                "{name} begins to lose its temper above {limit}, for good. Chill the ring more; go past"
                " {limit} only if the maker of this head allows it.",
                name=fitting.head.name,
                limit=at(temper),
            ),
        )
    colder = next(((words, bath) for words, bath in BATHS if fitting.head_for(bath) <= float(easy)), None)
    chill = (
        say(
            "Chill the ring more: out of {bath} at {at} the head needs {t}.",
            bath=colder[0],
            at=colder[1],
            t=at(fitting.head_for(colder[1])),
        )
        if colder
        else say("No bath is cold enough to keep the head at {easy}: ask for less clearance.", easy=easy)
    )
    return (
        "attention",
        say("Heat to {t}: near the temper's edge", t=drop.needed.held_to(None, float(easy))),
        say("{colder} If it must be so hot, take it out as soon as it is soaked through.", colder=chill),
    )


def _hot_enough(drop: Drop) -> Judged:
    if drop.margin < READING:
        return (
            "attention",
            say("Heat to {t}, close to the limit", t=drop.needed),
            say(
                "A contact thermometer may be off by {off}. Check yours in boiling water first, or chill the"
                " ring more.",
                off=READING,
            ),
        )
    return (
        "pass",
        say("Heat the head to {t}", t=drop.needed),
        say(
            "Soak it at that heat all through, and read it in the pocket with a contact thermometer, or"
            " beside it with a temperature crayon. Then ring in, square and in one move, and hold it down"
            " until it grips: it sticks once the head has cooled {k}.",
            k=drop.may_cool,
        ),
    )


def remarks_on(i: In, drop: Drop, fitting: Fitting) -> tuple[Remark | None, ...]:
    """What else to think of before the head is hot."""
    head = fitting.head
    temper = head.limit_temperature
    return (
        warning(
            "{name} begins to lose its temper above {t}, and the limit given is {limit}: what is lost there"
            " is lost for good.",
            name=head.name,
            t=at(temper),
            limit=i.head_limit,
        )
        if temper and float(i.head_limit) > temper
        else None,
        warning(
            "Expansion of {name} is held only up to {t}: the head temperature is drawn out from there, and"
            " rough.",
            name=head.name,
            t=at(head.hottest),
        )
        if float(drop.needed) > head.hottest
        else None,
        note(
            "Guides loosen in the oven too. Near {t} an iron guide of usual fit keeps hardly any grip and may"
            " slide while you work: measure the height of each before and after.",
            t=at(473.15),
        )
        if drop.heated > WARM
        else None,
        note(
            "Frost on a chilled ring takes up the clearance: wipe it off, and go from the cold to the pocket"
            " in one move."
        )
        if i.ring_temperature < FREEZING
        else None,
        note(
            "How fast the ring warms is not computed here; reckon with seconds. The two allowances hold each"
            " alone: while the ring warms, the head cools. Lay out the driver, its guide and the gauntlets,"
            " know which way up the ring goes, and go through the moves once cold."
        ),
    )
