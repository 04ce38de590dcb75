"""Balancing a set in two planes, by a trial mass in each."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.flywheel.balance_two_plane.asked import In, refuse_impossible
from calc.stations.flywheel.balance_two_plane.drawing import both_planes
from calc.stations.flywheel.balance_two_plane.planes import planes_of
from calc.stations.flywheel.balance_two_plane.told import Out
from calc.stations.flywheel.balance_two_plane.verdict import limits_of, remarks_on, verdict_on


@calculator(
    "balance-two-plane",
    "Balancing in two planes",
    In,
    Out,
    purpose="Which mass goes where in each of two planes, so that both bearings come to rest?",
    finds=(
        "two plane balancing",
        "dynamic balancing in two planes",
        "couple unbalance",
        "balance crank flywheel and clutch together",
        "influence matrix",
    ),
    sources=(sources.INFLUENCE, sources.BALANCE_GRADE, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.IN_ITS_PLANE, cautions.SPINNING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def balance_two_plane(i: In) -> Answer:
    """Each trial mass's answer at both bearings, as vectors; the two unbalances whose answers add up to the
    first run solve two equations in two unknowns. Each is held to its plane's share of what is permitted.
    """
    refuse_impossible(i)
    a, b, condition = planes_of(i)
    return answer(
        a.mass,
        a.place,
        b.mass,
        b.place,
        a.unbalance,
        b.unbalance,
        a.permitted,
        b.permitted,
        condition,
        verdict=verdict_on(i, a, b),
        limits=limits_of(a, b),
        remarks=remarks_on(float(condition)),
        figures=lambda: (both_planes(i, a, b),),
    )
