"""Balancing in one plane by a trial mass, with phase or by amplitudes alone."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.flywheel.balance_trial.asked import In, refuse_impossible
from calc.stations.flywheel.balance_trial.drawing import from_the_end
from calc.stations.flywheel.balance_trial.influence import found_of
from calc.stations.flywheel.balance_trial.told import Out
from calc.stations.flywheel.balance_trial.verdict import limits_of, remarks_on, verdict_on


@calculator(
    "balance-trial",
    "Balancing by a trial mass",
    In,
    Out,
    purpose="What did the trial mass show, and which mass goes where?",
    finds=(
        "trial weight",
        "influence coefficient",
        "single plane balancing",
        "four run method",
        "balancing without phase",
        "correction mass",
        "vibration of the flywheel",
    ),
    sources=(sources.INFLUENCE, sources.FOUR_RUNS, sources.BALANCE_GRADE, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.IN_ITS_PLANE, cautions.SPINNING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def balance_trial(i: In) -> Answer:
    """Vibration is linear in the unbalance: what the trial mass adds to the reading, as a vector, tells how
    much and how late the machine answers, and the reading before it is divided by that.

    Without phase: the mean square of three runs at 0, 120 and 240° less the first run's square is the square
    of the trial's own answer, and the differences of the squares are the heavy spot's place.
    """
    refuse_impossible(i)
    found = found_of(i)
    return answer(
        found.correction,
        found.place,
        found.unbalance,
        found.heavy,
        found.permitted,
        found.vibration,
        found.answer,
        verdict=verdict_on(i, found),
        limits=limits_of(found),
        remarks=remarks_on(i, found),
        figures=lambda: (from_the_end(i, found),),
    )
