"""The guide in the head: how hard it grips cold, running and in the oven, what of that is lost for good, and
which guide would serve."""

from dataclasses import dataclass

from calc.core.working import Number, step
from calc.formulas import press_fit as fit
from calc.reference import sources
from calc.reference.materials import Material
from calc.stations.heads.guide_fit.asked import In
from calc.stations.heads.guide_fit.sizes import Sizes
from calc.stations.heads.guide_fit.told import Out
from calc.stations.shared.forms import TIMES
from calc.stations.shared.growth import growth
from calc.stations.shared.ring_in_wall import Joint, Part, bearing_interference, poissons_ratio, stiffness
from calc.stations.shared.sleeve import Grip, Pressed, Told, grip_of


@dataclass(frozen=True)
class GuideGrip(Grip):
    """`oven` is the interference there, while seats are fitted."""

    oven: Number


TOLD = Told(
    Out.pressure,
    (Out.guide_used, Out.head_used),
    Out.guide_wanted,
    Out.guide_most,
    Out.grip_lost,
    Out.grip_left,
)


def guide_in_head(
    i: In,
    sizes: Sizes,
    guide: Material,
    head: Material,
    outside: Number,
    guide_growth: Number,
    head_growth: Number,
    reference: Number,
) -> GuideGrip:
    """How the guide grips as it was pressed in."""
    joint = _joint(sizes, guide, head, outside)
    ring, wall, hole = joint.ring, joint.wall, joint.size
    ratios = poissons_ratio(ring), poissons_ratio(wall)
    cold_moduli = stiffness(ring), stiffness(wall)
    hot_moduli = stiffness(ring, i.guide_temperature, ",hot"), stiffness(wall, i.head_temperature, ",hot")
    interference = Out.interference(sizes.around - hole)
    loss, bearing = bearing_interference(interference, i.guide_roughness, i.hole_roughness)
    warm = Out.interference_hot(
        fit.interference_at(bearing, hole, guide_growth, head_growth), sources.THERMAL
    )
    oven = _in_the_oven(i, joint, bearing, reference)
    running = i.guide_temperature, i.head_temperature
    pressed = Pressed(bearing, warm, loss, ratios, cold_moduli, hot_moduli, running)
    grip = grip_of(joint, interference, pressed, i.least_grip, TOLD)
    return GuideGrip(**vars(grip), oven=oven)


def _joint(sizes: Sizes, guide: Material, head: Material, outside: Number) -> Joint:
    bore, hole = sizes.pressed_in, sizes.hole
    shapes = (
        step("s_g", "Shape of the guide", TIMES, fit.inner_shape(bore, hole), sources.LAME),
        step("s_h", "Shape of the head round it", TIMES, fit.outer_shape(hole, outside), sources.LAME),
    )
    return Joint(Part(guide, "g", "guide"), Part(head, "h", "head"), bore, hole, outside, shapes)


def _in_the_oven(i: In, joint: Joint, bearing: Number, reference: Number) -> Number:
    """Interference while seats are fitted: guide and head at one heat."""
    guide, head = (
        growth(
            part.material,
            i.oven_temperature,
            reference,
            f"{part.letter},o",
            f"{part.words} in the oven",
            "oven_temperature",
        )
        for part in (joint.ring, joint.wall)
    )
    return Out.interference_oven(fit.interference_at(bearing, joint.size, guide, head), sources.THERMAL)
