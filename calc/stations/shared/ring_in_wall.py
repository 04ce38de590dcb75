"""A ring pressed into a wall, as lines of a calculator's working: seat ring, guide, bush, plunger unit.

Stiffness and strength of both parts at a heat, what roughness leaves of the interference, when each part
begins to yield, and which sizes of the ring serve. What comes past first yield stands in `yielding`.
"""

import math
from typing import NamedTuple

from calc.core.advice import at_least, at_most
from calc.core.result import Text, say
from calc.core.working import Form, Number, Value, constant, greatest, least, step
from calc.declare.calculator import Output
from calc.formulas import press_fit as fit
from calc.reference import sources
from calc.reference.materials import REFERENCE, Material
from calc.stations.shared.forms import CONTACT, GPA, MPA, SIZE, TIMES

Pair = tuple[Number, Number]  # of the ring and of the wall


class Part(NamedTuple):
    """One of the two: its material, the letter behind its symbols, and what labels call it."""

    material: Material
    letter: str
    words: str


class Joint(NamedTuple):
    """Both parts; as diameters the ring's bore, the joint (`size`) and the wall's outside; the shapes of ring
    and wall, as `press_fit` counts them."""

    ring: Part
    wall: Part
    bore: Number
    size: Number
    outside: Number
    shapes: Pair


class Heat(NamedTuple):
    """A joint at one heat: symbols end in `tag`, labels in `when`.

    `interference` is that which bears if nothing yielded, `give` what of it, per diameter, a unit of pressure
    takes up, `begins` the pressures at which ring and wall begin to yield.
    """

    tag: str
    when: str
    interference: Number
    give: Value
    moduli: Pair
    strengths: Pair
    begins: Pair


# what the parts are made of


def stiffness(part: Part, temperature: Number | float = REFERENCE, mark: str = "", when: str = "") -> Number:
    """Modulus of elasticity of a part at a temperature (K). Here and below `mark` ends the symbol, `when` the
    label."""
    return constant(
        f"E_{part.letter}{mark}",
        f"Stiffness of the {part.words}{when}",
        GPA,
        part.material.modulus_at(temperature),
        sources.MATERIALS,
    )


def poissons_ratio(part: Part, mark: str = "", when: str = "", shape: Form = TIMES) -> Number:
    """Poisson's ratio of a part; heat does not change it here."""
    label = f"Poisson's ratio of the {part.words}{when}"
    return constant(f"ν_{part.letter}{mark}", label, shape, part.material.nu, sources.MATERIALS)


def strength(part: Part, value: float, mark: str = "", when: str = "") -> Number:
    """Yield stress of a part, Pa."""
    label = f"Yield stress of the {part.words}{when}"
    return constant(f"R_{part.letter}{mark}", label, MPA, value, sources.MATERIALS)


def compliance(shapes: Pair, moduli: Pair, ratios: Pair) -> Value:
    """Interference per diameter that a unit of pressure takes up, 1/Pa."""
    return fit.compliance(*shapes, moduli[0], ratios[0], moduli[1], ratios[1])


# what bears, and when it yields


def bearing_interference(grip: Number, ring_roughness: Number, wall_roughness: Number) -> Pair:
    """What roughness takes of the interference, and what is left of it to bear."""
    loss = step(
        "δ_z",
        "Interference lost to roughness",
        SIZE,
        fit.roughness_loss(ring_roughness, wall_roughness),
        sources.ROUGHNESS_LOSS,
    )
    return loss, step("δ_e", "Interference that bears", SIZE, grip - loss)


def ring_begins(joint: Joint, strength: Number, mark: str = "", when: str = "") -> Number:
    """Pressure at which the ring begins to yield; `strength` in compression."""
    return step(
        f"p_{joint.ring.letter}{mark}",
        f"Pressure at which the {joint.ring.words} begins to yield{when}",
        CONTACT,
        fit.inner_yield_pressure(strength, joint.bore, joint.size),
        sources.MISES,
    )


def wall_begins(joint: Joint, strength: Number, mark: str = "", when: str = "") -> Number:
    """Pressure at which the wall begins to yield."""
    return step(
        f"p_{joint.wall.letter}{mark}",
        f"Pressure at which the {joint.wall.words} begins to yield{when}",
        CONTACT,
        fit.outer_yield_pressure(strength, joint.size, joint.outside),
        sources.MISES,
    )


def at_heat(
    joint: Joint,
    tag: str,
    when: str,
    temperatures: tuple,
    interference: Number,
    give: Value,
    moduli: Pair,
    comma: str = ",",
) -> Heat:
    """The joint with ring and wall at their temperatures; `comma` stands before `when` in the labels."""
    mark, behind = f",{tag}", f"{comma} {when}"
    ring, wall = joint.ring, joint.wall
    strengths = (
        strength(ring, ring.material.compressive_yield_at(temperatures[0]), mark, behind),
        strength(wall, wall.material.yield_at(temperatures[1]), mark, behind),
    )
    begins = ring_begins(joint, strengths[0], mark, behind), wall_begins(joint, strengths[1], mark, behind)
    return Heat(tag, when, interference, give, moduli, strengths, begins)


def short_by(of: Number) -> Number:
    """By how much a size or an interference falls short of nothing, to be told in a sentence."""
    return constant("", "", SIZE, -float(of))


def bore_moved(symbol: str, label: str, joint: Joint, grip: Number, give: Value, modulus: Number) -> Number:
    """How far the ring's bore moves when it is pressed in with that grip: less than nothing, it closes."""
    pressure = fit.contact_pressure(grip, joint.size, give)
    moved = fit.inner_bore_change(pressure, joint.bore, joint.size, modulus)
    return step(symbol, label, SIZE, moved, sources.LAME)


# which rings serve


class Window(NamedTuple):
    """The outsides of a ring that hold, at least, and that overload nothing, at most."""

    least: Number
    most: Number

    @property
    def serves(self) -> bool:
        """Does any size in whole micrometres lie within it?"""
        return math.ceil(float(self.least) * 1e6) <= math.floor(float(self.most) * 1e6)

    def told(self, template: str) -> Text:
        """A sentence with both ends, {w} and {m}, each rounded to the side on which it serves."""
        return say(template, w=at_least(self.least, SIZE), m=at_most(self.most, SIZE))


def window(
    joint: Joint, loss: Number, least_grip: Number, cold: Heat, hot: Heat, wanted: Output, most: Output
) -> Window:
    """The rings that keep the least grip at both heats and make nothing yield at either."""
    eased = cold.interference - hot.interference
    return Window(
        wanted(joint.size + loss + least_grip + greatest(eased, 0.0)),
        most(
            joint.size
            + loss
            + least(
                fit.interference_for(least(*cold.begins), joint.size, cold.give),
                fit.interference_for(least(*hot.begins), joint.size, hot.give) + eased,
            )
        ),
    )
