"""Is the other casting worth having, and is its gain to be believed?"""

from calc.core.result import Judged, Limit, Remark, note, say, warning
from calc.core.working import Number, constant
from calc.stations.heads.fin_cooling.asked import In
from calc.stations.heads.fin_cooling.casting import Fins
from calc.stations.heads.fin_cooling.comparison import Comparison
from calc.stations.shared.forms import ROUGH

# a gap narrower than this, or a channel deeper than so many gaps, starves; common practice, no source
NARROW, DEEP = constant("", "", ROUGH, 3.5e-3), 10.0
HIGH = 0.20  # the trade sees a tenth to a fifth more; common practice, no source


def verdict_on(i: In, found: Comparison) -> Judged:
    change, gap = found.change, found.other.fins.gap
    between = say("{a} to {d}", a=found.change_least, d=change) if found.slower < 1 else say("{d}", d=change)
    if change < 0:
        return (
            "fail",
            say("Sheds less: {d}", d=change),
            "Keep this one, or look what is amiss with the other: fewer or shorter fins, a poorer alloy, or"
            " less air.",
        )
    if found.change_least < i.least_gain:
        return (
            "attention",
            say("Hardly more: {d}, {m} wanted", d=between, m=i.least_gain),
            "Not worth a casting. Clean fins, tight baffles and a fan belt that does not slip give as much.",
        )
    if _starved(found.other.fins):
        return (
            "attention",
            say("{d} more, if air still enters {g}", d=change, g=gap),
            say(
                "Between fins so close the air slows down, and the gain is gone when its coefficient falls to"
                " {h}. Believe it when a thermometer in the head has shown it.",
                h=found.even,
            ),
        )
    return (
        "pass",
        say("Sheds {d} more at the same heat", d=between),
        say(
            "Make sure that baffles and fan fit the new fins: the gain is gone when the air's coefficient"
            " falls to {h}.",
            h=found.even,
        ),
    )


def limits_of(i: In, found: Comparison) -> tuple[Limit, ...]:
    """What the verdict is decided by."""
    return (
        Limit("the gain", found.change, low=0.0),
        Limit("the gain, fan as before", found.change_least, low=i.least_gain, level="attention"),
    )


def remarks_on(i: In, found: Comparison) -> tuple[Remark | None, ...]:
    """What the air may do otherwise, and whether the two stand on as much wall."""
    this, other = found.this.fins, found.other.fins
    return (
        warning(
            "The other's gaps are closer, and the same coefficient was taken for both. It will be less:"
            " closer fins pass less air at the same fan. Give what you expect."
        )
        if i.air_other is None and other.gap < this.gap
        else note("A coefficient holds for one gap and one fan only: closer fins do not keep it."),
        warning(
            "A gap of {g} under fins {l} long is a deep, narrow channel: less than about {n}, or deeper than"
            " ten gaps, and the air goes round it. Common practice, no source.",
            g=other.gap,
            l=other.length,
            n=NARROW,
        )
        if _starved(other)
        else None,
        warning(
            "The trade's figure for a casting with more fin is a tenth to a fifth more heat; common practice,"
            " no source. Look at the coefficients again."
        )
        if float(found.change) > HIGH
        else None,
        note("The two do not take the same height of wall: {a} and {b}.", a=_height(this), b=_height(other))
        if not 0.95 <= _height(other).value / _height(this).value <= 1.05
        else None,
    )


def _starved(fins: Fins) -> bool:
    """Does the air go round such a channel?"""
    return fins.gap < NARROW or float(fins.length) > DEEP * float(fins.gap)


def _height(fins: Fins) -> Number:
    """The wall that the fins take."""
    return constant("", "", ROUGH, float(fins.number) * float(fins.thickness + fins.gap))
