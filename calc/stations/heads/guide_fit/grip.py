"""The guide in the head: how hard it grips cold, running and in the oven, what of that is lost for good, and
which guide would serve."""

from typing import NamedTuple

from calc.core.working import Number, greatest, least, step
from calc.formulas import press_fit as fit
from calc.reference import sources
from calc.reference.materials import REFERENCE, Material
from calc.stations.heads.guide_fit.asked import In
from calc.stations.heads.guide_fit.sizes import Sizes
from calc.stations.heads.guide_fit.told import Out
from calc.stations.shared.forms import CONTACT, TIMES
from calc.stations.shared.growth import growth
from calc.stations.shared.ring_in_wall import (
    Heat,
    Joint,
    Pair,
    Part,
    Window,
    at_heat,
    bearing_interference,
    compliance,
    poissons_ratio,
    stiffness,
    window,
)
from calc.stations.shared.yielding import lost_and_room


class Grip(NamedTuple):
    """`left` is what is left of the interference for good, `room` what may be added until one part gives
    way."""

    joint: Joint
    ratios: Pair
    interference: Number
    cold: Heat
    hot: Heat
    oven: Number  # interference there
    pressure: Number
    guide_used: Number
    head_used: Number
    serving: Window
    lost: Number
    left: Number
    room: Number

    @property
    def hardest(self) -> tuple[str, Number]:
        """The part that uses more of its yield, and how much."""
        return ("Head", self.head_used) if self.head_used > self.guide_used else ("Guide", self.guide_used)

    @property
    def gives(self) -> bool:
        return self.hardest[1] > 1

    @property
    def cracks(self) -> bool:
        """A brittle head does not yield."""
        return self.gives and self.hardest[0] == "Head" and self.joint.wall.material.brittle

    @property
    def loosest(self) -> str:
        """When it grips least."""
        return "cold" if self.cold.interference <= self.hot.interference else "when running"


def guide_in_head(
    i: In,
    sizes: Sizes,
    guide: Material,
    head: Material,
    outside: Number,
    guide_growth: Number,
    head_growth: Number,
    reference: Number,
) -> Grip:
    """Pressed in as it comes: the thinner the guide is reamed, the less it presses, so this is the harder
    case."""
    joint = _joint(sizes, guide, head, outside)
    ring, wall, hole, shapes = joint.ring, joint.wall, joint.size, joint.shapes
    ratios = poissons_ratio(ring), poissons_ratio(wall)
    cold_moduli = stiffness(ring), stiffness(wall)
    hot_moduli = stiffness(ring, i.guide_temperature, ",hot"), stiffness(wall, i.head_temperature, ",hot")
    cold_give, hot_give = compliance(shapes, cold_moduli, ratios), compliance(shapes, hot_moduli, ratios)
    interference = Out.interference(sizes.around - hole)
    loss, bearing = bearing_interference(interference, i.guide_roughness, i.hole_roughness)
    warm = Out.interference_hot(
        fit.interference_at(bearing, hole, guide_growth, head_growth), sources.THERMAL
    )
    oven = _in_the_oven(i, joint, bearing, reference)
    pressure = Out.pressure(fit.contact_pressure(bearing, hole, cold_give), sources.LAME)
    pressure_hot = step(
        "p_hot",
        "Contact pressure, running",
        CONTACT,
        fit.contact_pressure(warm, hole, hot_give),
        sources.LAME,
    )
    running = i.guide_temperature, i.head_temperature
    cold = at_heat(joint, "cold", "cold", (REFERENCE, REFERENCE), bearing, cold_give, cold_moduli)
    hot = at_heat(joint, "hot", "hot", running, warm, hot_give, hot_moduli)
    guide_used, head_used = (
        out(greatest(pressure / at_20, pressure_hot / at_work), sources.MISES)
        for out, at_20, at_work in zip((Out.guide_used, Out.head_used), cold.begins, hot.begins)
    )
    serving = window(joint, loss, i.least_grip, cold, hot, Out.guide_wanted, Out.guide_most)
    gone, room = lost_and_room(joint, cold, hot)
    lost = Out.grip_lost(gone)
    left = Out.grip_left(least(bearing, warm) - lost)
    return Grip(
        joint,
        ratios,
        interference,
        cold,
        hot,
        oven,
        pressure,
        guide_used,
        head_used,
        serving,
        lost,
        left,
        room,
    )


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
