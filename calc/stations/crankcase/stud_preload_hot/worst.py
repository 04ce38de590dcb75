"""The stud at its worst, hot with a slippery thread, and at its least; and which cold preload serves both."""

from math import inf, sqrt
from typing import NamedTuple

from calc.core.working import PI, Number, constant, greatest, step
from calc.core.working import sqrt as root
from calc.formulas import bolt_torque
from calc.reference import sources
from calc.reference.standards.threads import THREADS
from calc.stations.crankcase.stud_preload_hot.asked import In
from calc.stations.crankcase.stud_preload_hot.joint import Joint
from calc.stations.crankcase.stud_preload_hot.told import Out
from calc.stations.shared import bolts
from calc.stations.shared import thread_sizes as sizes
from calc.stations.shared.forms import FRICTION, KILONEWTON, SIZE, TIMES

SAFE_PULL = 2.0  # the thread in the case over the stud's pull: common practice, no source
OVER_GAS = 1.5  # preload over the gas's pull: common practice, no source


class Worst(NamedTuple):
    """`safety` is the pull of the thread in the case over the worst preload, `over_gas` the least preload
    over the gas's pull; None where not told. `left` is the least preload, below nothing where
    the joint opens."""

    worst: Number
    left: Number
    slackest: Number
    stress: Number
    used: Number
    safety: Number | None
    over_gas: Number | None
    serves_from: Number
    serves_to: Number


def worst_of(i: In, joint: Joint) -> Worst:
    pitch, nominal, pitch_diameter = sizes.basic(THREADS[i.thread])
    turned = bolts.Turned(
        pitch, pitch_diameter, bolts.rubs_on(i.bearing, nominal), i.thread_friction, i.head_friction
    )
    meant = bolts.levers(turned)
    slick, rough = bolts.slippery_end(turned, i.spread), bolts.rough_end(turned, i.spread)
    more = step("k_s", "Preload of a slippery thread over that meant", TIMES, meant.nut / slick.nut)
    less = step("k_r", "Preload of a rough thread over that meant", TIMES, meant.nut / rough.nut)
    tight = step("F_s", "Preload cold, slippery thread", KILONEWTON, more * i.preload)
    worst = Out.worst(tight + joint.hottest)
    left = step("F_0", "Left of a rough thread's preload", KILONEWTON, less * i.preload + joint.coldest)
    slackest = Out.slackest(greatest(left, 0.0))
    across = step("d_0", "Diameter of the stud's least section", SIZE, root(4 * joint.section / PI))
    twist = step(
        "κ",
        "Shear over tension, slippery thread",
        FRICTION,
        bolt_torque.twist(across, slick.thread),
        sources.VDI_2230,
    )
    stress = Out.stress(
        greatest(
            bolt_torque.together(tight / joint.section, twist),
            bolt_torque.running(worst / joint.section, twist, tight / joint.section),
        ),
        sources.VDI_2230,
    )
    yields = bolts.yield_stress(i.strength, THREADS[i.thread].d)
    return Worst(
        worst,
        left,
        slackest,
        stress,
        Out.used(stress / yields),
        None if i.pull is None else step("S_p", "Pull of the case's thread over it", TIMES, i.pull / worst),
        None if i.gas is None else step("S_g", "Least preload over the gas's pull", TIMES, slackest / i.gas),
        Out.serves_from(_from(i, float(less), float(joint.coldest))),
        Out.serves_to(_to(i, float(more), joint, float(twist), float(yields))),
    )


def _from(i: In, less: float, coldest: float) -> Number:
    needed = 0.0 if i.gas is None else OVER_GAS * float(i.gas)
    return constant("", "", KILONEWTON, max(0.0, (needed - coldest) / less))


def _to(i: In, more: float, joint: Joint, twist: float, yields: float) -> Number:
    """Cold preload with which the stud stays at 90 % of yield and the thread in the case at half of its
    pull; 0 where heat alone is too much."""
    section, added = float(joint.section), float(joint.hottest)
    target = bolts.TARGET * yields * section
    cold = target / sqrt(1 + 3 * twist**2)
    q = 3 / 4 * twist**2
    inside = added**2 - (1 + q) * (added**2 - target**2)
    hot = (sqrt(inside) - added) / (1 + q) if inside > 0 else 0.0
    thread = inf if i.pull is None else float(i.pull) / SAFE_PULL - added
    return constant("", "", KILONEWTON, max(0.0, min(cold, hot, thread)) / more)
