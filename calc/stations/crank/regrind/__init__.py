"""A worn crank: the first undersize at which all its mains, and all its rod journals, clean up."""

from calc.core.working import Number, greatest
from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.crank.regrind.asked import In, refuse_limits_crossed
from calc.stations.crank.regrind.drawing import across
from calc.stations.crank.regrind.lot import STAY, Lot, mains_of, pins_of
from calc.stations.crank.regrind.remarks import remarks_on
from calc.stations.crank.regrind.skin import ground_off, hardened_left, largest_fillet
from calc.stations.crank.regrind.table import journal_by_journal
from calc.stations.crank.regrind.told import Out
from calc.stations.crank.regrind.verdict import limits_of, verdict_on


@calculator(
    "regrind",
    "Which undersize",
    In,
    Out,
    purpose=(
        "Do these journals stay, or at which undersize do all mains and all rod journals clean up, and does"
        " the crank bear it?"
    ),
    finds=(
        "crank grinding",
        "crankshaft grinding",
        "grind the crankshaft",
        "undersize journal",
        "undersize shells",
        "worn crankshaft",
        "main bearing undersize",
        "rod bearing undersize",
        "journal wear",
        "crank polish",
        "oval journal",
    ),
    sources=(sources.OLD_AXIS, sources.TWO_POINT, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.SPINNING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def regrind(i: In) -> Answer:
    """Each journal ground about its old axis: 2·smallest − unworn − bow where wear lies on one side,
    smallest − bow where it is even; all of a kind to the first undersize of whose limits any lies within
    that.

    The circle that lies within the worn outline and keeps its centre; no standard. Undersizes count from the
    standard size and are even. A journal whose axis may move cleans up at its smallest reading at best, and
    then moves throw and angle.
    """
    refuse_limits_crossed(i)
    mains, pins = mains_of(i), pins_of(i)
    every = (*mains.each, *pins.each)
    off = ground_off(i, mains, pins)
    hard, fillet_most = hardened_left(i, off), largest_fillet(i, mains, pins)
    # what is ground is drawn before what stays
    worst = min((mains, pins), key=lambda lot: (lot.state == STAY, float(lot.stock)))
    return answer(
        mains.clean,
        pins.clean,
        *_told(mains),
        *_told(pins),
        Out.round(greatest(*(j.round for j in every))),
        Out.taper(greatest(*(j.taper for j in every))),
        off,
        verdict=verdict_on(i, mains, pins, hard, fillet_most),
        limits=limits_of(i, mains, pins, hard, fillet_most),
        remarks=remarks_on(i, mains, pins, hard),
        tables=lambda: (journal_by_journal(mains, pins),),
        figures=lambda: (across(i, worst, i.bow if worst is mains else None),),
    )


def _told(lot: Lot) -> tuple[Number, ...]:
    """What a kind of journal is ground to."""
    return (lot.undersize, lot.low, lot.high, lot.aim, lot.stock, lot.most, lot.shell)
