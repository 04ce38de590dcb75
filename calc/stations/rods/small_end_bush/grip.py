"""The bush in the rod: how hard it grips cold and running, what of that is lost for good, and which bush
would serve."""

from calc.core.working import Number, step
from calc.formulas import press_fit as fit
from calc.reference import sources
from calc.reference.materials import Material
from calc.stations.rods.small_end_bush.asked import In
from calc.stations.rods.small_end_bush.told import Out
from calc.stations.shared.forms import TIMES
from calc.stations.shared.ring_in_wall import Joint, Part, bearing_interference, poissons_ratio, stiffness
from calc.stations.shared.sleeve import Grip, Pressed, Told, grip_of

TOLD = Told(
    Out.pressure, (Out.bush_used, Out.rod_used), Out.bush_wanted, Out.bush_most, Out.grip_lost, Out.grip_left
)


def bush_in_rod(
    i: In, bush: Material, rod: Material, outside: Number, bush_growth: Number, rod_growth: Number
) -> Grip:
    """How the bush grips as it was pressed in."""
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
    running = i.rod_temperature, i.rod_temperature
    pressed = Pressed(bearing, warm, loss, ratios, cold_moduli, hot_moduli, running)
    return grip_of(joint, interference, pressed, i.least_grip, TOLD)
