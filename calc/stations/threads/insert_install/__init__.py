"""A thread insert in a case or head: hole and tap for it, how deep, how far from the edge, and whether the
parent metal holds the stud."""

from calc.declare.calculator import Answer, Limit, answer, calculator
from calc.reference import cautions, sources
from calc.stations.threads.insert_install.asked import BLIND, In
from calc.stations.threads.insert_install.depths import depths_of
from calc.stations.threads.insert_install.drawing import section
from calc.stations.threads.insert_install.edge import edge_of
from calc.stations.threads.insert_install.hole import hole_of
from calc.stations.threads.insert_install.remarks import remarks_on
from calc.stations.threads.insert_install.strength import strength_of
from calc.stations.threads.insert_install.told import Out
from calc.stations.threads.insert_install.verdict import Planned, verdict_on


@calculator(
    "insert-install",
    "Thread insert in a case or head",
    In,
    Out,
    purpose="What do I drill and tap for this insert, how deep, and does the metal round it hold the stud?",
    finds=(
        "wire thread insert",
        "thread repair",
        "pulled stud",
        "stripped thread",
        "STI tap",
        "stud hole",
        "key-locking insert",
        "threaded bush",
        "edge distance",
        "pull-out",
    ),
    sources=(
        sources.STI,
        sources.H28,
        sources.ISO_965,
        sources.ASME_B1_1,
        sources.MATERIALS,
        sources.PRACTICE,
    ),
    cautions=(cautions.MAKER_FIRST, cautions.CUTTING, cautions.AIRCRAFT),
)
def insert_install(i: In) -> Answer:
    """Sizes of the tapped hole, depths from the face, edge distance by common practice, and the pull at which
    the parent's thread shears.

    Wire inserts: the tapped hole is the stud's thread at a nominal diameter of d + 1.299·P. Full engagement
    is the insert's length less a pitch for its half-formed ends. Shear area at least material
    (FED-STD-H28/2), shear strength as half of the tensile, less as the alloy's yield falls with heat. The
    insert's own data go before all of it.
    """
    hole = hole_of(i)
    depths = depths_of(i, hole)
    edge = edge_of(i, hole)
    strength = strength_of(i, hole, depths.whole)
    planned = Planned(hole, depths, edge, strength)
    return answer(
        hole.drill,
        strength.pull,
        strength.safety,
        strength.force,
        hole.minor,
        hole.pitch_diameter,
        hole.major,
        Out.countersink(hole.major + 0.25 * hole.pitch, sources.PRACTICE),
        depths.setting,
        depths.tapped,
        depths.drilled,
        depths.left,
        edge.least,
        strength.area,
        verdict=verdict_on(i, planned),
        limits=_limits_of(i, planned),
        remarks=remarks_on(i),
        cautions=(cautions.MAGNESIUM,) if i.parent == "mg-az91" else (),
        figures=lambda: (section(i, hole, depths),),
    )


def _limits_of(i: In, planned: Planned) -> tuple[Limit, ...]:
    _, depths, edge, strength = planned
    return (
        Limit("the metal left under the hole", depths.left, low=0),
        Limit("the distance to the edge", i.edge, low=edge.least),
        Limit("the depth under the face", depths.setting, low=0),
        Limit("the pull over the preload", strength.safety, low=1),
        Limit("the pull over the preload", strength.safety, low=i.safety_least, level="attention"),
        Limit("the distance to the edge", i.edge, low=edge.wished, level="attention"),
        *(
            (Limit("the metal left under the hole", depths.left, low=i.floor_least, level="attention"),)
            if i.way == BLIND
            else ()
        ),
    )
