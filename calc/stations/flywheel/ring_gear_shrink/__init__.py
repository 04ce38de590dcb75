"""A ring gear shrunk onto its flywheel: how hot it must be, and whether it holds at speed."""

from calc.core.result import note
from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.flywheel.ring_gear_shrink.asked import In
from calc.stations.flywheel.ring_gear_shrink.drawing import rim
from calc.stations.flywheel.ring_gear_shrink.joint import joint_of, refuse_impossible
from calc.stations.flywheel.ring_gear_shrink.told import Out
from calc.stations.flywheel.ring_gear_shrink.verdict import allowed, limits_of, verdict_on


@calculator(
    "ring-gear-shrink",
    "Shrinking on a ring gear",
    In,
    Out,
    purpose="How hot must this ring gear be to drop onto its seat, and does it stay there?",
    finds=(
        "ring gear",
        "starter ring",
        "flywheel ring gear",
        "heat the ring gear",
        "shrink fit",
        "ring gear temperature",
        "starter teeth",
    ),
    sources=(
        sources.THERMAL,
        sources.LAME,
        sources.FLAT_DISC,
        sources.FRICTION_HOLD,
        sources.MATERIALS,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.HOT_RING, cautions.FLYWHEEL_BURST, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def ring_gear_shrink(i: In) -> Answer:
    """Free growth of each part from the 20 °C of its size; grip by two rings (Lamé) as wide as the ring
    gear, less
    what both grow by as they spin, its teeth as dead weight.

    The flywheel's web behind the seat is wider than the ring gear and stiffer than taken: true grip and
    pull are a
    little higher. Roughness is small beside such an interference and left out.
    """
    refuse_impossible(i)
    joint = joint_of(i)
    most = allowed(i, joint)
    return answer(
        *joint.told,
        verdict=verdict_on(i, joint, most),
        limits=limits_of(i, joint, most),
        remarks=(
            note(
                "Measure the heat with a probe or a temperature crayon on the ring's body, never by its"
                " colour."
            ),
            note(
                "In degrees Fahrenheit the same heat is a number twice as large: look which one the oven"
                " shows."
            ),
        ),
        figures=lambda: (rim(i, joint),),
    )
