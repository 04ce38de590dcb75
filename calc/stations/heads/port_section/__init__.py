"""A port's mouth and the manifold on it: area, gas speed, and the step where the two meet."""

from calc.core.working import PI, sqrt
from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.heads.port_section.asked import In
from calc.stations.heads.port_section.drawing import port_and_manifold, speed_plot
from calc.stations.heads.port_section.flow import flow_of
from calc.stations.heads.port_section.joint import joint_of
from calc.stations.heads.port_section.openings import check_offsets, openings_of
from calc.stations.heads.port_section.remarks import remarks_on
from calc.stations.heads.port_section.table import side_by_side
from calc.stations.heads.port_section.told import Out
from calc.stations.heads.port_section.verdict import check_speeds, limits_of, verdict_on


@calculator(
    "port-section",
    "Port and manifold",
    In,
    Out,
    purpose="How large is the port, how fast does the gas go through it, and does the manifold leave a step?",
    finds=(
        "port area",
        "port matching",
        "gas speed",
        "port velocity",
        "hydraulic diameter",
        "oval port",
        "D port",
        "manifold step",
        "intake port",
        "exhaust port",
    ),
    sources=(sources.PORT_PLANE, sources.CONTINUITY, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.CUTTING, cautions.MAGNESIUM, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def port_section(i: In) -> Answer:
    """Flat sections of three shapes; continuity for the speed, with gas as thick as in the cylinder and the
    whole port filled.

    The mean is over one stroke of one cylinder: at mid stroke it goes about 1.6 times as fast. The step is
    taken all round the edge, as the distance from one edge to the other.
    """
    check_speeds(i)
    port, manifold = openings_of(i)
    check_offsets(i, port, manifold)
    flow = flow_of(i, port, manifold)
    joint = joint_of(i, port, manifold)
    return answer(
        flow.area,
        flow.speed,
        joint.facing,
        joint.drop,
        flow.perimeter,
        Out.hydraulic(4 * flow.area / flow.perimeter, sources.PORT_PLANE),
        Out.equal_round(sqrt(4 * flow.area / PI), sources.PORT_PLANE),
        flow.manifold_area,
        Out.ratio(flow.manifold_area / flow.area),
        flow.piston_speed,
        flow.swept,
        Out.speed_limit(i.most_speed * flow.area / (2 * flow.swept), sources.CONTINUITY),
        verdict=verdict_on(i, flow, joint),
        limits=limits_of(i, flow, joint),
        remarks=remarks_on(i, joint),
        tables=lambda: (side_by_side(i, joint),),
        figures=lambda: (port_and_manifold(port, joint), speed_plot(i, flow)),
    )
