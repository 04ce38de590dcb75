"""The engine speed at which a valve's spring no longer holds its follower on the lobe."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.cam.valve_float.asked import In
from calc.stations.cam.valve_float.drawing import forces
from calc.stations.cam.valve_float.leaving import leaving
from calc.stations.cam.valve_float.told import Out
from calc.stations.cam.valve_float.verdict import limits_of, remarks_on, verdict_on


@calculator(
    "valve-float",
    "Valve float",
    In,
    Out,
    purpose="At what speed do these springs let the valve leave its lobe, and is that above the highest?",
    finds=("valve float", "valve bounce", "spring for more speed", "rev limit", "follower leaves the lobe"),
    sources=(sources.LEAVES_LOBE, sources.LOBE_LAWS, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.SPRING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def valve_float(i: In) -> Answer:
    """Force balance on the closing side of each flank: the spring against all that moves, as felt at the
    valve, times the deceleration that the lobe asks of it.

    A smooth lobe, alike on both flanks, a constant ratio, a straight spring, no friction, no gas, nothing
    that bends.
    """
    found = leaving(i)
    return answer(
        found.speed,
        found.margin,
        found.mass,
        found.lift,
        found.spring,
        found.inertia,
        found.load_wanted,
        verdict=verdict_on(i, found),
        limits=limits_of(i, found),
        remarks=remarks_on(i, found),
        figures=lambda: (forces(i, found),),
    )
