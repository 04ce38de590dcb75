"""What the sum does not know: creep, guessed sections, the thread that nobody judged."""

from calc.core.result import Remark, note, warning
from calc.core.working import constant
from calc.reference.materials import MATERIALS
from calc.stations.crankcase.stud_preload_hot.asked import In
from calc.stations.crankcase.stud_preload_hot.joint import Joint
from calc.stations.shared.forms import DEGREES_C

MAGNESIUM = "mg-az91"


def remarks_on(i: In, joint: Joint) -> tuple[Remark | None, ...]:
    metal = MATERIALS[MAGNESIUM]
    creeps = metal.limit_temperature or 0.0
    magnesium = i.case_material == MAGNESIUM
    from_here = constant("", "", DEGREES_C, creeps)
    hot = float(i.case_temperature) >= creeps - 1e-9
    return (
        warning(
            "At {t} magnesium under a thread or a nut gives way slowly, from {c} on, and does not come"
            " back. How"
            " much of the preload goes nobody can tell to a number: tighten again after the first heat, and"
            " look"
            " for it at every service.",
            t=i.case_temperature,
            c=from_here,
        )
        if magnesium and hot
        else None,
        note(
            "Magnesium under a thread creeps from about {c} on, at a hot start sooner than running: a stud"
            " that was"
            " pulled once so hot has lost some of its preload for good.",
            c=from_here,
        )
        if magnesium and not hot
        else None,
        note(
            "The thread in the case was not judged: the calculator of the insert tells the pull that it"
            " bears."
        )
        if i.pull is None
        else None,
        note(
            "What the gas pulls is not known here: whether enough preload is left in frost was judged only"
            " by whether"
            " any is."
        )
        if i.gas is None
        else None,
        note(
            "On the first warm-up cylinder and head are hot while the stud is still cool: then it pulls {w}.",
            w=joint.warming,
        )
        if joint.warming > joint.running
        else None,
    )
