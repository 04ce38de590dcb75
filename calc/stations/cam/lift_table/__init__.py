"""A lobe from its lifts every few degrees: lift, duration, centre, velocity and acceleration with their
doubt, and a wrong reading told apart from a wrong lobe."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.cam.lift_table.asked import In
from calc.stations.cam.lift_table.drawing import doubts, plots
from calc.stations.cam.lift_table.lobe import lobe_of
from calc.stations.cam.lift_table.told import Out
from calc.stations.cam.lift_table.verdict import limits_of, remarks_on, verdict_on


@calculator(
    "lift-table",
    "A lobe from its lifts",
    In,
    Out,
    purpose="What lobe do these lifts make, is it good or worn, and is one of the readings wrong?",
    finds=(
        "cam lobe lift",
        "lift curve",
        "camshaft duration",
        "lobe centre",
        "lobe readings",
        "lifter acceleration",
        "worn cam lobe",
        "flat cam",
        "degree wheel table",
        "cam profile",
    ),
    sources=(sources.LIFT_CURVE, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def lift_table(i: In) -> Answer:
    """Local polynomials of the fourth degree through the readings; the doubt of each reading and of its angle
    goes through them exactly, what they bend off the lobe is judged by a wider one.

    For a flat foot on the lobe, read along the lifter's own line. Velocity and acceleration are the lifter's
    at a steady speed, nothing of the train bending.
    """
    lobe = lobe_of(i)
    return answer(
        lobe.lift,
        lobe.duration,
        lobe.centre,
        lobe.peak,
        lobe.opening,
        lobe.closing,
        lobe.velocity,
        lobe.acceleration,
        lobe.deceleration,
        lobe.ends,
        verdict=verdict_on(i, lobe),
        limits=limits_of(i, lobe),
        remarks=remarks_on(i, lobe),
        tables=lambda: (doubts(lobe),),
        figures=lambda: plots(i, lobe),
    )
