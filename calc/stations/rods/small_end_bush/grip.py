"""The bush in the rod: how hard it grips cold and running, what of that is lost for good, and which bush
would serve."""

from typing import NamedTuple

from calc.core.working import Number, greatest, least, step
from calc.formulas import press_fit as fit
from calc.reference import sources
from calc.reference.materials import REFERENCE, Material
from calc.stations.rods.small_end_bush.asked import In
from calc.stations.rods.small_end_bush.told import Out
from calc.stations.shared.forms import CONTACT, TIMES
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
    pressure: Number
    bush_used: Number
    rod_used: Number
    serving: Window
    lost: Number
    left: Number
    room: Number

    @property
    def hardest(self) -> tuple[str, Number]:
        """The part that uses more of its yield, and how much."""
        return ("Rod", self.rod_used) if self.rod_used > self.bush_used else ("Bush", self.bush_used)

    @property
    def gives(self) -> bool:
        return self.hardest[1] > 1

    @property
    def loosest(self) -> str:
        """When it grips least."""
        return "cold" if self.cold.interference <= self.hot.interference else "when running"


def bush_in_rod(
    i: In, bush: Material, rod: Material, outside: Number, bush_growth: Number, rod_growth: Number
) -> Grip:
    """Pressed in as it comes: the thinner the bush is honed, the less it presses, so this is the harder
    case."""
    shapes = (
        step("s_b", "Shape of the bush", TIMES, fit.inner_shape(i.supplied_bore, i.rod_bore), sources.LAME),
        step("s_r", "Shape of the rod's eye", TIMES, fit.outer_shape(i.rod_bore, outside), sources.LAME),
    )
    ring, wall = Part(bush, "b", "bush"), Part(rod, "r", "rod")
    joint = Joint(ring, wall, i.supplied_bore, i.rod_bore, outside, shapes)
    ratios = poissons_ratio(ring), poissons_ratio(wall)
    interference = Out.interference(i.bush_outside - i.rod_bore)
    loss, bearing = bearing_interference(interference, i.bush_roughness, i.bore_roughness)
    warm = Out.interference_hot(
        fit.interference_at(bearing, i.rod_bore, bush_growth, rod_growth), sources.THERMAL
    )
    cold_moduli = stiffness(ring), stiffness(wall)
    hot_moduli = (
        stiffness(ring, i.rod_temperature, ",hot", ", running"),
        stiffness(wall, i.rod_temperature, ",hot", ", running"),
    )
    cold_give, hot_give = compliance(shapes, cold_moduli, ratios), compliance(shapes, hot_moduli, ratios)
    pressure = Out.pressure(fit.contact_pressure(bearing, i.rod_bore, cold_give), sources.LAME)
    pressure_hot = step(
        "p_hot",
        "Contact pressure, running",
        CONTACT,
        fit.contact_pressure(warm, i.rod_bore, hot_give),
        sources.LAME,
    )
    cold = at_heat(joint, "cold", "cold", (REFERENCE, REFERENCE), bearing, cold_give, cold_moduli)
    hot = at_heat(joint, "hot", "hot", (i.rod_temperature,) * 2, warm, hot_give, hot_moduli)
    bush_used, rod_used = (
        out(greatest(pressure / at_20, pressure_hot / at_heat), sources.MISES)
        for out, at_20, at_heat in zip((Out.bush_used, Out.rod_used), cold.begins, hot.begins)
    )
    serving = window(joint, loss, i.least_grip, cold, hot, Out.bush_wanted, Out.bush_most)
    gone, room = lost_and_room(joint, cold, hot)
    lost = Out.grip_lost(gone)
    left = Out.grip_left(least(bearing, warm) - lost)
    return Grip(
        joint, ratios, interference, cold, hot, pressure, bush_used, rod_used, serving, lost, left, room
    )
