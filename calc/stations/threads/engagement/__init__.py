"""What a threaded hole and its bolt hold, which strips first, and how long the engagement must be for the
bolt to break before."""

from calc.core.result import Remark, note, warning
from calc.core.working import constant, least
from calc.declare.calculator import Answer, Limit, answer, calculator
from calc.reference import cautions, sources
from calc.reference.standards.threads import Thread
from calc.stations.shared.forms import ROUGH_TIMES
from calc.stations.threads.engagement.asked import In
from calc.stations.threads.engagement.drawing import force_over_length
from calc.stations.threads.engagement.forces import Forces, forces_of
from calc.stations.threads.engagement.shear import shear_of
from calc.stations.threads.engagement.told import Out
from calc.stations.threads.engagement.verdict import verdict_on


@calculator(
    "engagement",
    "Length of engagement",
    In,
    Out,
    purpose="Does the bolt break before the thread strips, and how much thread does it take?",
    finds=(
        "stripped thread",
        "thread stripping",
        "shear area",
        "length of engagement",
        "stud in aluminium",
        "pulled stud",
        "bolt strength",
        "thread depth",
    ),
    sources=(
        sources.H28,
        sources.STRESS_AREA,
        sources.BOLT_CLASSES,
        sources.MATERIALS,
        sources.ISO_965,
        sources.ASME_B1_1,
    ),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def engagement(i: In) -> Answer:
    """Shear areas of both threads at least material (FED-STD-H28/2B), with half of the tensile strength for
    shear, cold and pulled straight.

    All turns are taken to share the load. Beyond about two diameters the first turns carry most of it, and
    more length adds little. Strengths are typical: a casting that has run hot holds less.
    """
    shear = shear_of(i)
    forces = forces_of(i, shear)
    return answer(
        forces.hole_strips,
        forces.breaks,
        forces.wanted,
        forces.bolt_strips,
        shear.hole_area,
        shear.bolt_area,
        forces.area,
        forces.used,
        forces.strong,
        verdict=verdict_on(i, shear.thread, forces),
        limits=_limits_of(i, forces),
        remarks=_remarks_on(i, shear.thread),
        figures=lambda: (force_over_length(i, shear.thread, forces),),
    )


def _limits_of(i: In, forces: Forces) -> tuple[Limit, ...]:
    borne = least(forces.strips, forces.breaks)
    return (
        Limit("the thread's strength over the bolt's yield", forces.used, low=forces.yields),
        *((Limit("the pull that is borne", borne, low=i.pull),) if i.pull is not None else ()),
        Limit("the bolt's breaking first", i.length, low=float(forces.wanted), level="attention"),
    )


def _remarks_on(i: In, thread: Thread) -> tuple[Remark | None, ...]:
    turns = float(i.length) / thread.P
    return (
        (
            warning(
                "Longer than two diameters: the first turns carry most of the load, and the last add"
                " little to it."
            )
            if float(i.length) > 2 * thread.d * (1 + 1e-9)
            else None
        ),
        (
            warning(
                "Only {n} turns: one damaged turn takes a good part of the strength.",
                n=constant("", "", ROUGH_TIMES, turns),
            )
            if turns < 4
            else None
        ),
        note(
            "The force that breaks the bolt counts once. Tightening uses about three quarters of its"
            " yield; the maker's torque has the last word."
        ),
        (
            note(
                "A casting that has run hot holds less. An old thread that was stripped once,"
                " cross-threaded or corroded is not counted here."
            )
            if i.parent in ("al-si-t6", "al-si-cu-t6", "mg-az91")
            else None
        ),
    )
