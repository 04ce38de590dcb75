"""Backlash of the cam's gears, by a dial round the gear or from the centres, and the size code to take."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.cam.mesh_backlash.asked import In
from calc.stations.cam.mesh_backlash.drawing import round_the_gear
from calc.stations.cam.mesh_backlash.mesh import mesh_of
from calc.stations.cam.mesh_backlash.told import Out
from calc.stations.cam.mesh_backlash.verdict import limits_of, remarks_on, verdict_on


@calculator(
    "mesh-backlash",
    "Backlash of the cam gear",
    In,
    Out,
    purpose="Have the cam's gears the right play, and if not, which size of gear is to be taken?",
    finds=(
        "cam gear backlash",
        "gear backlash",
        "cam gear size",
        "cam gear code",
        "undersize cam gear",
        "oversize cam gear",
        "timing gear",
        "gear whine",
    ),
    sources=(sources.GEAR_DISTANCE, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def mesh_backlash(i: In) -> Answer:
    """Play at the dial's radius brought to the pitch circle; or the play as drawn and what another distance
    of the axes adds to it, by exact involutes.

    A gear one step larger in pitch radius takes as much play as axes that stand so much nearer, 2·s·tan α_t.
    Of helical gears the play is told along the pitch circle, square to the axis, as a dial on a tooth reads
    it.
    """
    mesh = mesh_of(i)
    return answer(
        mesh.least,
        mesh.most,
        mesh.take,
        mesh.mean,
        mesh.differs,
        mesh.each,
        mesh.least_then,
        mesh.most_then,
        verdict=verdict_on(i, mesh),
        limits=limits_of(i, mesh),
        remarks=remarks_on(i, mesh),
        figures=lambda: (round_the_gear(i, mesh),),
    )
