"""Leak-down of a closed engine: what two gauges and an orifice say of a cylinder, and where its air goes."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.cylinders.cylinder_leak_down.asked import In
from calc.stations.cylinders.cylinder_leak_down.drawing import pressure_over_hole
from calc.stations.cylinders.cylinder_leak_down.leak import leak_of
from calc.stations.cylinders.cylinder_leak_down.remarks import remarks_on
from calc.stations.cylinders.cylinder_leak_down.told import Out
from calc.stations.cylinders.cylinder_leak_down.verdict import limits_of, verdict_on


@calculator(
    "cylinder-leak-down",
    "Leak-down of a cylinder",
    In,
    Out,
    purpose="How much does this cylinder leak, does that serve, and is it valve, ring or joint?",
    finds=(
        "leak-down test",
        "leakdown tester",
        "cylinder leakage",
        "differential pressure test",
        "blow-by",
        "leaking rings",
        "leaking valve",
        "comeback",
    ),
    sources=(sources.ORIFICE, sources.STANDARD_FLOW, sources.CRANK_ARM, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.CRANK_HELD, cautions.COMPRESSED_AIR, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def cylinder_leak_down(i: In) -> Answer:
    """Two holes in series, steady: what the tester's orifice lets in, the leak lets out. Ideal air,
    isentropic to the throat, choked or not (St Venant and Wantzel); both holes with one discharge
    coefficient, so that it counts for the flow and not for the hole.

    The limits hold for one supply and one orifice. A reading of another tester is told as that one would
    show it.
    """
    found = leak_of(i)
    return answer(
        found.standard,
        found.hole,
        found.flow,
        found.loss,
        found.hole_worn,
        found.choking,
        found.force,
        found.torque,
        verdict=verdict_on(i, found),
        limits=limits_of(i, found),
        remarks=remarks_on(i, found),
        figures=lambda: (pressure_over_hole(i, found),),
    )
