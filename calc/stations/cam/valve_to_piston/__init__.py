"""Room between a valve and the piston: where in the turn it is least, and how much is left when running."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.cam.valve_to_piston.asked import In
from calc.stations.cam.valve_to_piston.drawing import figures
from calc.stations.cam.valve_to_piston.nearest import nearest
from calc.stations.cam.valve_to_piston.remarks import remarks_on
from calc.stations.cam.valve_to_piston.told import Out
from calc.stations.cam.valve_to_piston.verdict import limits_of, verdict_on


@calculator(
    "valve-to-piston",
    "Valve to piston",
    In,
    Out,
    purpose="Does this valve stay clear of the piston, where in the turn is it nearest, and is that enough?",
    finds=(
        "valve to piston clearance",
        "piston to valve",
        "V to P",
        "valve relief",
        "valve pocket",
        "valve hits piston",
        "clay test",
    ),
    sources=(
        sources.NEAREST,
        sources.SLIDER_CRANK,
        sources.LOBE_LAWS,
        sources.PARABOLA,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.SPRING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def valve_to_piston(i: In) -> Answer:
    """Way left along the valve at every crank angle, of which the least is told; lash, float and stretch are
    taken off it for the running engine.

    The lobe is taken as smooth and alike on both flanks, the piston's pin in the middle, the crown flat and
    square to the cylinder where the valve meets it. By a dial: the parabola through the least reading and
    its neighbours. By clay: its thickness along the cylinder over the cosine of the lean.
    """
    found = nearest(i)
    return answer(
        found.running,
        found.least,
        found.taken,
        verdict=verdict_on(i, found),
        limits=limits_of(i, found),
        remarks=remarks_on(i, found),
        figures=lambda: figures(i, found),
    )
