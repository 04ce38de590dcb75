"""Does it leak, is it tight, or cannot that be told from temperature and gauge?"""

from calc.core.advice import at_least
from calc.core.result import Judged, Remark, note, say, warning
from calc.formulas import leak as gas
from calc.stations.heads.head_leak.asked import VACUUM, In
from calc.stations.heads.head_leak.leak import Leak
from calc.stations.heads.head_leak.told import WHOLE_SECONDS, kpa

LONGEST = 1800.0  # s: a longer test is another day's weather; common practice, no source


def verdict_on(i: In, found: Leak) -> Judged:
    leak, doubt, allowed = found.leak, found.doubt, found.allowed
    if leak < -doubt:
        return (
            "unsure",
            "Pressure moved the wrong way",
            "No leak does that: the air "
            + ("cooled" if i.mode == VACUUM else "warmed")
            + ", or the pump was still open. Shut it off, let everything become equally warm, and test"
            " again.",
        )
    if i.start - found.loss <= found.least_loss and leak - doubt <= allowed:
        return (
            "unsure",
            "All gone: the test was too long",
            "Read again after a time in which about a tenth is lost, and type both readings.",
        )
    if leak - doubt > allowed:
        return (
            "fail",
            say("Leaks {q}, {limit} allowed", q=leak, limit=allowed),
            "Cup, plug and hoses first: they leak more often than seats. Wipe valve and seat, tap the stem,"
            " turn the valve half round, test again, and see how the other seats do. No seat is cut for a"
            " number alone: find the place by soap water or by ear.",
        )
    if leak + doubt <= allowed:
        return (
            "pass",
            say("Tight: {q}, {limit} allowed", q=leak, limit=allowed),
            "Write it down with pressure and time: only tests made alike can be compared.",
        )
    return _cannot_tell(i, found)


def _cannot_tell(i: In, found: Leak) -> Judged:
    """Longer is better as long as the doubt, which falls with the time, comes down to the distance from the
    limit."""
    apart = max(abs(float(found.allowed - found.leak)), 1e-12)
    longer = float(i.time) * float(found.doubt) / apart
    return (
        "unsure",
        say("Leak or drift? {q} ± {u}", q=found.leak, u=found.doubt),
        say(
            "Let everything become equally warm, then test for {t} or longer, with less hose, or with a finer"
            " gauge.",
            t=at_least(longer, WHOLE_SECONDS),
        )
        if longer <= LONGEST
        else say(
            "Too near to the limit of {limit} for this gauge. Take it as leaking, or test with a finer"
            " gauge.",
            limit=found.allowed,
        ),
    )


def remarks_on(i: In, found: Leak) -> tuple[Remark | None, ...]:
    """What temperature did, how the leak fell off, and what the hole is worth."""
    if float(found.ratio) > gas.critical_ratio():
        choked = "not choked: it depends on both pressures."
    elif i.mode == VACUUM:
        choked = "choked: a deeper vacuum would draw no more."
    else:
        choked = "choked: it depends on the pressure inside alone."
    return (
        note(
            "The gauge went down by {all}: {drift} of it by temperature, {loss} by leak.",
            all=kpa(i.start - i.end),
            drift=kpa(i.start - i.end - found.loss),
            loss=found.loss,
        )
        if float(i.warming)
        else None,
        warning(
            "A change of {t} was taken out by the gas law, as well as the thermometer knew it. Better wait"
            " until nothing changes.",
            t=i.warming,
        )
        if abs(float(i.warming)) > 0.5
        else None,
        note(
            "More than a tenth was lost, and a leak falls off with its pressure: at the start it was {q}, in"
            " the mean {m}.",
            q=found.leak,
            m=found.mean,
        )
        if found.loss > i.start / 10
        else None,
        note(
            "The hole is a measure only: a real leak is a scratch or a crack, longer and larger. The flow"
            " through the hole is " + choked
        ),
    )
