"""A reading with its doubt weighed against its limits."""

from typing import NamedTuple

from calc.core.conformance import PROOF, accepted, decide, deciding_share, phi, probability, quantile
from calc.core.kinds import RATIO
from calc.core.working import Number, constant, form, least, step
from calc.reference import sources
from calc.stations.measuring.reading_verdict.asked import OTHER, SIMPLE, In
from calc.stations.measuring.reading_verdict.told import Out
from calc.stations.shared.forms import FINE, SIZE, TIMES

APART = SIZE.apart_from(0)  # a distance from a limit is none only where it is none
IN, OUT, CANNOT_TELL = "in", "out", "cannot tell"


class Weighed(NamedTuple):
    """What a reading with its doubt says of its size.

    `within` is the probability that the size lies within; `guard` is how far inside a single limit a reading
    proves it; `deciding` is the doubt that would decide. `accepted` holds the least and the greatest reading
    that proves the size within (m), None where there is no such limit, or where no reading does.
    """

    within: Number
    margin: Number
    guard: Number
    deciding: Number
    decision: str
    accepted: tuple | None


def weighed(i: In) -> Weighed:
    u = step("u", "Standard uncertainty", FINE, i.doubt / i.coverage, sources.GUM)
    a, b = _standardised(i, u)
    below, above = (float("inf") if x is None else float(x) for x in (a, b))
    within = Out.probability(_probability(a, b), sources.JCGM_106)
    margins = [m for m in (_over(i.reading, i.low), _over(i.high, i.reading)) if m is not None]
    margin = Out.margin(least(*margins) if len(margins) == 2 else margins[0], form=APART)
    wanted = float(i.proof) if i.rule == OTHER else PROOF
    single = constant(
        "z",
        "Standard uncertainties to the probability wanted, on one side",
        form(RATIO, 3),
        quantile(wanted),
        sources.JCGM_106,
    )
    guard = Out.guard(single * u, sources.ISO_14253)
    # where both limits count, the margin must make up a little more than on one side
    needed = single
    if margin:
        needed = constant(
            "z_d",
            "Standard uncertainties that the margin must make up",
            form(RATIO, 3),
            abs(float(margin)) / float(u) / deciding_share(below, above, wanted),
            sources.JCGM_106,
        )
    deciding = Out.deciding(i.coverage * abs(margin) / needed, sources.JCGM_106)
    alone = IN if margin >= 0 else OUT
    decision = alone if i.rule == SIMPLE else decide(below, above, wanted)
    return Weighed(
        within, margin, guard, deciding, decision, accepted(float(u), _plain(i.low), _plain(i.high), wanted)
    )


def _standardised(i: In, u: Number) -> tuple[Number | None, Number | None]:
    """How far inside each limit the reading lies, in standard uncertainties."""
    a, b = (
        "Above the lower limit, in standard uncertainties",
        "Below the upper limit, in standard uncertainties",
    )
    return (
        None if i.low is None else step("a", a, TIMES, (i.reading - i.low) / u),
        None if i.high is None else step("b", b, TIMES, (i.high - i.reading) / u),
    )


def _probability(a: Number | None, b: Number | None) -> Number:
    if a is None:
        assert b is not None, "there is a limit"
        return phi(b)
    return phi(a) if b is None else probability(a, b)


def _over(upper: Number | None, lower: Number | None) -> Number | None:
    return None if upper is None or lower is None else upper - lower


def _plain(limit: Number | None) -> float | None:
    return None if limit is None else float(limit)
