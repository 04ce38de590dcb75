"""Crank end float: which three of the shims at hand bring it within its limits, and what stands in the way if
none do."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.crankcase.end_float.asked import In
from calc.stations.crankcase.end_float.drawing import in_a_row
from calc.stations.crankcase.end_float.fitting import fitting_of
from calc.stations.crankcase.end_float.remarks import remarks_on
from calc.stations.crankcase.end_float.told import Out
from calc.stations.crankcase.end_float.verdict import limits_of, verdict_on
from calc.stations.crankcase.end_float.warm import refuse_crossed


@calculator(
    "end-float",
    "End float with three shims",
    In,
    Out,
    purpose=(
        "Which three of these shims bring the crank's end float within its limits, and is some left warm?"
    ),
    finds=(
        "crank end float",
        "crankshaft end play",
        "end play",
        "end-float shims",
        "end play shims",
        "flywheel shims",
        "thrust clearance",
        "thrust cut",
        "crank float",
    ),
    sources=(sources.TRIED, sources.THERMAL, sources.MATERIALS, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.FLYWHEEL, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def end_float(i: In) -> Answer:
    """Float read and trial shims are the room without any; of all sets of three, the one nearest to the
    middle of the limits.

    Every set is tried, exactly. Warm, the crank's shoulders and what stands between them grow each with its
    own temperature over the thrust bearing's width. Where the float is judged by a drawer's many sizes, a
    doubt of a reading may choose another set: read the float again with the three in.
    """
    refuse_crossed(i)
    found = fitting_of(i)
    return answer(
        found.float_then,
        found.in_all,
        found.warm,
        *found.three,
        found.sets,
        found.least,
        found.most,
        found.change,
        verdict=verdict_on(i, found),
        limits=limits_of(i, found),
        remarks=remarks_on(i, found),
        figures=lambda: (in_a_row(found),),
    )
