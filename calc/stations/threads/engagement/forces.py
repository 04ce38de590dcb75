"""The forces at which hole, bolt's thread and bolt give way, and the length at which the bolt goes first."""

from typing import NamedTuple

from calc.core.working import PI, Number, constant, greatest, least, step
from calc.reference import sources
from calc.reference.materials import MATERIALS
from calc.reference.standards.threads import stress_height
from calc.stations.shared.forms import KILONEWTON, MPA, SIZE
from calc.stations.threads.engagement.asked import In
from calc.stations.threads.engagement.bolt_strength import BOLTS, strength_of
from calc.stations.threads.engagement.shear import Shear
from calc.stations.threads.engagement.told import Out


class Forces(NamedTuple):
    """`strips` is that of the weaker thread, `used` that over what breaks the bolt; `strong` breaks the
    strongest bolt of its class, `yields` is the share of its strength at which the bolt yields, `wanted` the
    length."""

    area: Number
    hole_strips: Number
    bolt_strips: Number
    strips: Number
    breaks: Number
    strong: Number
    used: Number
    yields: float
    wanted: Number


def forces_of(i: In, shear: Shear) -> Forces:
    strength, yields = strength_of(i.bolt_class, shear.thread)
    hole, bolt = _hole_tensile(i), _bolt_tensile(i, strength)
    core = step(
        "d_t",
        "Diameter of the stress area",
        SIZE,
        shear.nominal - stress_height(shear.thread) * shear.pitch,
        sources.STRESS_AREA,
    )
    area = Out.stress_area(PI / 4 * core**2, sources.STRESS_AREA)
    hole_strips = Out.hole_strips(i.shear * hole * shear.hole_area, sources.H28)
    bolt_strips = Out.bolt_strips(i.shear * bolt * shear.bolt_area, sources.H28)
    breaks = Out.bolt_breaks(bolt * area, sources.STRESS_AREA)
    strips = step("F_min", "Force that strips the weaker thread", KILONEWTON, least(hole_strips, bolt_strips))
    used = Out.used(strips / breaks)
    strong = Out.strong(breaks * i.strongest if i.bolt_strength is None else breaks, sources.BOLT_CLASSES)
    # a stronger bolt has a stronger thread too: only the hole's must outlast the strongest
    wanted = Out.wanted(i.length * greatest(strong / hole_strips, breaks / bolt_strips))
    return Forces(area, hole_strips, bolt_strips, strips, breaks, strong, used, yields, wanted)


def _hole_tensile(i: In) -> Number:
    if i.parent_strength is not None:
        return i.parent_strength
    metal = MATERIALS[i.parent]
    return constant("R_n", f"Tensile strength of {metal.name}", MPA, metal.ultimate, sources.MATERIALS)


def _bolt_tensile(i: In, strength: float) -> Number:
    if i.bolt_strength is not None:
        return i.bolt_strength
    label = f"Tensile strength of a bolt {BOLTS[i.bolt_class]}"
    return constant("R_m", label, MPA, strength, sources.BOLT_CLASSES)
