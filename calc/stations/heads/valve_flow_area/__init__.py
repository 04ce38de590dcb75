"""The narrowest way past an open valve: the curtain round it or the throat under it, and whether the engine
outruns it."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.heads.valve_flow_area.asked import In
from calc.stations.heads.valve_flow_area.drawing import area_plot, section
from calc.stations.heads.valve_flow_area.flow import past_the_valve
from calc.stations.heads.valve_flow_area.told import Out
from calc.stations.heads.valve_flow_area.verdict import limits_of, remarks_on, verdict_on


@calculator(
    "valve-flow-area",
    "Valve flow area",
    In,
    Out,
    purpose=(
        "How far must the valve lift before the throat decides, and does the engine run faster than the valve"
        " can fill it?"
    ),
    finds=(
        "curtain area",
        "valve lift",
        "throat area",
        "inlet Mach index",
        "valve size",
        "flow past the valve",
        "more lift",
        "port throat",
    ),
    sources=(sources.CURTAIN, sources.MACH_INDEX, sources.SOUND, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def valve_flow_area(i: In) -> Answer:
    """Geometry of cones, and air as an ideal gas. Heywood's forms take the valve's face as wide as the seat,
    and lie no more than 2 % above the smallest frustum for seats of 30° and steeper, up to a lift of a
    quarter of the seat's inner edge.

    A face that reaches in past the seat makes the curtain a few per cent smaller at low lift. The flow is
    less than the area says: by its coefficient, that a flow bench gives. The Mach index is judged for the
    intake only.
    """
    found = past_the_valve(i)
    return answer(
        found.free,
        found.crossover,
        found.mach,
        found.curtain,
        found.throat_area,
        found.opened,
        Out.past(i.lift - found.crossover),
        found.first_stage,
        Out.lift_ratio(i.lift / i.valve_head),
        Out.throat_ratio(i.throat / i.valve_head),
        found.piston_speed,
        found.speed_limit,
        verdict=verdict_on(i, found),
        limits=limits_of(i, found),
        remarks=remarks_on(i),
        figures=lambda: (area_plot(i, found), section(i, float(found.width))),
    )
