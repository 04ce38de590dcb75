"""A sleeve that is pressed into its wall to stay there, as guide and bush are: how hard it grips cold and
running, what of that is lost for good, and which sleeve would serve."""

from dataclasses import dataclass
from typing import NamedTuple

from calc.core.working import Number, Value, greatest, least, step
from calc.declare.calculator import Output
from calc.formulas import press_fit as fit
from calc.reference import sources
from calc.reference.materials import REFERENCE
from calc.stations.shared.forms import CONTACT
from calc.stations.shared.ring_in_wall import Heat, Joint, Pair, Window, at_heat, compliance, window
from calc.stations.shared.yielding import lost_and_room


class Told(NamedTuple):
    """The results of a calculator that a sleeve's grip gives; `used` are the shares of yield of sleeve and
    wall."""

    pressure: Output
    used: tuple[Output, Output]
    wanted: Output
    most: Output
    lost: Output
    left: Output


class Pressed(NamedTuple):
    """What presses: the interference that bears cold and running if nothing yielded, what roughness took of
    it, the parts' Poisson's ratios, their moduli cold and running, their temperatures running (K)."""

    bearing: Number
    warm: Number
    loss: Number
    ratios: Pair
    moduli: Pair
    moduli_hot: Pair
    running: tuple[Number, Number]


@dataclass(frozen=True)
class Grip:
    """`left` is what is left of the interference for good, `room` what may be added until one part gives
    way."""

    joint: Joint
    ratios: Pair
    interference: Number
    cold: Heat
    hot: Heat
    pressure: Number
    used: Pair
    serving: Window
    lost: Number
    left: Number
    room: Number

    @property
    def hardest(self) -> tuple[str, Number]:
        """The part that uses more of its yield, and how much."""
        sleeve, wall = self.used
        part, share = (self.joint.wall, wall) if wall > sleeve else (self.joint.ring, sleeve)
        return part.words.capitalize(), share

    @property
    def gives(self) -> bool:
        return self.hardest[1] > 1

    @property
    def cracks(self) -> bool:
        """A brittle wall does not yield."""
        sleeve, wall = self.used
        return self.gives and wall > sleeve and self.joint.wall.material.brittle

    @property
    def loosest(self) -> str:
        """When it grips least."""
        return "cold" if self.cold.interference <= self.hot.interference else "when running"


def grip_of(joint: Joint, interference: Number, pressed: Pressed, least_grip: Number, told: Told) -> Grip:
    """Pressed in as it comes: the thinner the sleeve is reamed or honed, the less it presses, so this is the
    harder case."""
    bearing, warm, ratios, size = pressed.bearing, pressed.warm, pressed.ratios, joint.size
    give: Value = compliance(joint.shapes, pressed.moduli, ratios)
    give_hot: Value = compliance(joint.shapes, pressed.moduli_hot, ratios)
    pressure = told.pressure(fit.contact_pressure(bearing, size, give), sources.LAME)
    label = "Contact pressure, running"
    pressure_hot = step("p_hot", label, CONTACT, fit.contact_pressure(warm, size, give_hot), sources.LAME)
    cold = at_heat(joint, "cold", "cold", (REFERENCE, REFERENCE), bearing, give, pressed.moduli)
    hot = at_heat(joint, "hot", "hot", pressed.running, warm, give_hot, pressed.moduli_hot)
    sleeve, wall = (
        out(greatest(pressure / at_20, pressure_hot / at_work), sources.MISES)
        for out, at_20, at_work in zip(told.used, cold.begins, hot.begins)
    )
    serving = window(joint, pressed.loss, least_grip, cold, hot, told.wanted, told.most)
    gone, room = lost_and_room(joint, cold, hot)
    lost = told.lost(gone)
    left = told.left(least(bearing, warm) - lost)
    return Grip(joint, ratios, interference, cold, hot, pressure, (sleeve, wall), serving, lost, left, room)
