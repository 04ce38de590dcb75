"""What heat and frost make of a stud's preload, and whether stud, thread and joint bear it."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.crankcase.stud_preload_hot.asked import In
from calc.stations.crankcase.stud_preload_hot.drawing import section
from calc.stations.crankcase.stud_preload_hot.joint import joint_of
from calc.stations.crankcase.stud_preload_hot.remarks import remarks_on
from calc.stations.crankcase.stud_preload_hot.told import Out
from calc.stations.crankcase.stud_preload_hot.verdict import limits_of, verdict_on
from calc.stations.crankcase.stud_preload_hot.worst import worst_of


@calculator(
    "stud-preload-hot",
    "Preload of a stud, hot and in frost",
    In,
    Out,
    purpose="What does heat make of this stud's preload, and is it borne, hot and in frost?",
    finds=(
        "hot stud",
        "cylinder stud preload",
        "head stud preload",
        "thermal preload",
        "pulled stud",
        "stud stretch",
        "hot torque",
        "waisted stud",
        "case creep",
    ),
    sources=(
        sources.BOLT_SPRINGS,
        sources.THERMAL,
        sources.VDI_2230,
        sources.ISO_16047,
        sources.STRESS_AREA,
        sources.BOLT_CLASSES,
        sources.MATERIALS,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def stud_preload_hot(i: In) -> Answer:
    """Two springs: the stud in its sections, and what it clamps, each part with its own length, section,
    material and temperature.

    VDI 2230's thermal term without its change of the modulus; the stud's ends in nut and thread are left
    out, which makes the shift a little too large. What is clamped is taken stiffer by the band told, and
    friction at both ends of its own. What the gas adds to the stud is left out, a few per
    cent. Creep is warned of, not worked out.
    """
    joint = joint_of(i)
    found = worst_of(i, joint)
    return answer(
        joint.running,
        found.worst,
        found.slackest,
        joint.warming,
        joint.frozen,
        joint.change,
        joint.stud_rate,
        joint.joint_rate,
        joint.grip,
        found.stress,
        found.used,
        found.serves_from,
        found.serves_to,
        verdict=verdict_on(i, joint, found),
        limits=limits_of(found),
        remarks=remarks_on(i, joint),
        figures=lambda: (section(i, joint),),
    )
