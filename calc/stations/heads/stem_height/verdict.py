"""Do the stems stand even and within limits, and what is to be done where they do not?"""

from calc.core.conformance import DUST, past
from calc.core.result import Judged, Limit, Text, say
from calc.core.working import Number, constant
from calc.stations.heads.stem_height.asked import In
from calc.stations.heads.stem_height.out_of_line import odd_one
from calc.stations.heads.stem_height.stems import Stems
from calc.stations.shared.forms import COARSE


def verdict_on(i: In, stems: Stems) -> Judged:
    """State, headline, and what to do; the worst first."""
    found = (
        _no_room(i, stems)
        or _heights(i, stems)
        or _springs(stems)
        or _alone(stems)
        or (
            "pass",
            say("Even: {s} apart, all in limits", s=stems.spread),
            (
                "Write them down by valve. After any more cutting, measure again: a seat sunk raises its stem"
                " by as much."
            ),
        )
    )
    return _stretched(i, stems, "fail" if found[0] == "fail" else "attention") or found


def _no_room(i: In, stems: Stems) -> Judged | None:
    """A tip or a seat would have to give more than it may."""
    if float(stems.tip) > float(i.tip_most) + DUST:
        return (
            "fail",
            say("{name} too high: {t} off its tip", name=stems.ground.name, t=stems.tip),
            say(
                "A tip may lose {most}. Do not grind it thin: the valve lies too deep. Try a new valve; if"
                " that stands as high, fit a new ring.",
                most=i.tip_most,
            ),
        )
    if float(stems.sink) > float(i.sink_most) + DUST:
        return (
            "fail",
            say("{name} too low: {z} to sink", name=stems.sunk.name, z=stems.sink),
            say(
                "A seat may go {most} deeper. Do not cut it for that: look first whether this is the right"
                " valve, how long it is, and whether it lies on its seat.",
                most=i.sink_most,
            ),
        )
    return None


def _heights(i: In, stems: Stems) -> Judged | None:
    valves = stems.valves
    out = [v for v in valves if past(i.low, v.level) or past(v.level, i.high)]
    if out:
        headline = say("Out of limits: {n} of {all}", n=str(len(out)), all=str(len(valves)))
        return "fail", headline, _work(i, stems)
    if any(float(v.tip) > DUST or float(v.sink) > DUST for v in valves):
        return "attention", say("Uneven: {s} apart", s=stems.spread), _work(i, stems)
    return None


def _work(i: In, stems: Stems) -> Text:
    """What to grind and sink; where one valve alone stands low, first whether it is that valve's fault."""
    work = " and ".join(
        words
        for words, wanted in (("take the tips down", stems.tip), ("sink the seats", stems.sink))
        if float(wanted) > DUST
    )
    how = (
        " as in the table, a little at a time, and measure again. After that a tip may still lose {t}, a"
        " seat {z}."
    )
    left = dict(
        t=constant("", "", COARSE, max(float(i.tip_most - stems.tip), 0.0)),
        z=constant("", "", COARSE, max(float(i.sink_most - stems.sink), 0.0)),
    )
    if odd_one(i, stems.valves) is not stems.below:
        return say(work.capitalize() + how, **left)
    return say(
        "Measure {name} again first, pressed down and turned on its seat. Is it the right valve, and as"
        " long as a new one? Does blue show that it lies? Only when all that is right: {do}",
        name=stems.below.name,
        do=say(work + how, **left),
    )


def _springs(stems: Stems) -> Judged | None:
    tall = [v for v in stems.valves if float(v.shim) > 0]
    if tall:
        return (
            "attention",
            say("Heights right; {n} of the springs too tall", n=str(len(tall))),
            "Put the shims of the table under them, and measure every fitted height with the shims in place.",
        )
    if float(stems.tight.shim) < 0:
        return (
            "attention",
            say("Heights right; spring {name} too short", name=stems.tight.name),
            say(
                "It has {f} with no shim at all. Look whether retainer and keepers belong to this valve, and"
                " check that its coils do not bind.",
                f=stems.tight.fitted,
            ),
        )
    return None


def _alone(stems: Stems) -> Judged | None:
    if len(stems.valves) > 1:
        return None
    return (
        "attention",
        say("One stem alone: {H}, within its limits", H=stems.valves[0].height),
        "Measure the others: what counts besides is that they stand even.",
    )


def _stretched(i: In, stems: Stems, state: str) -> Judged | None:
    """A valve that has grown long is told before all else: it must go, whatever is wrong besides."""
    longest = _longest(stems)
    if longest is None or i.length_most is None or not past(longest[1], i.length_most):
        return None
    name, length = longest
    return (
        state,
        say("{name} has stretched: {L}, {most} when new", name=name, L=length, most=i.length_most),
        (
            "Do not fit it again, and grind nothing for it: a valve that stretches drops its head next,"
            " and this is the one warning. Look at its neck, fit a new one, and measure that."
        ),
    )


def _longest(stems: Stems) -> tuple[str, Number] | None:
    """Name and length of the longest valve, of those whose length was read."""
    read = [(v.name, v.length) for v in stems.valves if v.length is not None]
    return max(read, key=lambda each: float(each[1]), default=None)


def limits_of(i: In, stems: Stems) -> tuple[Limit, ...]:
    longest = _longest(stems)
    length = (
        ()
        if longest is None or i.length_most is None
        else (Limit("the length of the valve", longest[1], high=i.length_most, level="attention"),)
    )
    return (
        Limit("the highest stem", stems.above.level, high=i.high),
        Limit("the lowest stem", stems.below.level, low=i.low),
        Limit("what comes off a tip", stems.tip, high=i.tip_most),
        Limit("what a seat is sunk by", stems.sink, high=i.sink_most),
        Limit("the evenness", stems.spread, high=i.most_spread, level="attention"),
        *length,
    )
