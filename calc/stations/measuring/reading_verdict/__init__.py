"""Does a reading conform to its limits, does it not, or can nobody tell?"""

from calc.core.result import Limit, Remark, impossible, note, warning
from calc.core.working import constant
from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.measuring.reading_verdict.asked import SIMPLE, In
from calc.stations.measuring.reading_verdict.drawing import scale_of
from calc.stations.measuring.reading_verdict.told import Out
from calc.stations.measuring.reading_verdict.verdict import limit_by_limit, verdict_on
from calc.stations.measuring.reading_verdict.weighed import CANNOT_TELL, IN, Weighed, weighed
from calc.stations.shared.forms import FINE_SHARE, SIZE

WIDE = 1 / 4  # common practice: the expanded doubt should be no more than a quarter of the tolerance


@calculator(
    "reading-verdict",
    "Is this reading within its limits?",
    In,
    Out,
    about_doubt=True,
    purpose="Does a size conform to its limits, does it not, or can the reading not tell?",
    finds=(
        "in tolerance",
        "out of limits",
        "wear limit",
        "decision rule",
        "guard band",
        "probability of conformity",
        "pass or fail",
    ),
    sources=(sources.ISO_14253, sources.JCGM_106, sources.GUM, sources.INVENTED),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def reading_verdict(i: In) -> Answer:
    """A reading with a normal doubt against one or two limits; nothing is known of the size but the reading.

    In: a probability of the proof wanted that the size lies within. Out: the same that it lies beyond one of
    the limits.
    """
    if i.low is None and i.high is None:
        raise impossible("low", "is empty, and so is the upper limit; give at least one of them")
    if i.low is not None and i.high is not None and i.low >= i.high:
        raise impossible(
            "low", "is {low}, not below the upper limit {high}; give less than {high}", low=i.low, high=i.high
        )
    found = weighed(i)
    return answer(
        found.within,
        found.margin,
        Out.in_doubts(found.margin / i.doubt),
        found.guard,
        found.deciding,
        verdict=verdict_on(i, found),
        decides=(Limit("the reading", i.reading, i.low, i.high),),
        remarks=_remarks_on(i, found),
        tables=lambda: (limit_by_limit(i, found),),
        figures=lambda: (scale_of(i, found),),
    )


def _remarks_on(i: In, found: Weighed) -> tuple[Remark | None, ...]:
    return (
        _too_wide(i, found),
        warning(
            "The doubt is not counted, as agreed: {p} of such sizes are not what the reading says.",
            p=constant(
                "", "", FINE_SHARE, float(1 - found.within) if found.decision == IN else float(found.within)
            ),
        )
        if i.rule == SIMPLE and 0.05 < found.within < 0.95
        else None,
        note(
            "The doubt counts against whoever has to prove something: the shop that the size is within,"
            " the customer that it is not (ISO 14253-1)."
        )
        if found.decision == CANNOT_TELL
        else None,
    )


def _too_wide(i: In, found: Weighed) -> Remark | None:
    """What a doubt that is wide beside the limits leaves."""
    if i.low is None or i.high is None:
        return None
    tolerance = float(i.high - i.low)
    if found.accepted is None:
        return warning(
            "The limits lie {t} apart: with this doubt no reading at all could be accepted.",
            t=constant("", "", SIZE, tolerance),
        )
    if float(i.doubt) > WIDE * tolerance:
        return note(
            "The doubt is more than a quarter of what lies between the limits: good parts will often have to"
            " be called undecided."
        )
    return None
