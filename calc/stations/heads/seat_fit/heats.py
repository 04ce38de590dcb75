"""Ring and pocket at one heat, and the four heats that a ring must bear."""

from typing import NamedTuple

from calc.core.working import Number, constant, least, step
from calc.formulas import past_yield
from calc.formulas import press_fit as fit
from calc.reference import sources
from calc.stations.heads.seat_fit.asked import In
from calc.stations.shared.forms import CONTACT, SIZE
from calc.stations.shared.growth import growth, reference_temperature
from calc.stations.shared.ring_in_wall import Heat, Joint, at_heat, compliance, poissons_ratio, stiffness
from calc.stations.shared.yielding import interference_lost, interference_through


class Case(NamedTuple):
    """The joint at one heat: the interference at which something begins to yield and at which the weaker part
    gives way, the shares of first yield, and what is lost for good."""

    heat: Heat
    begins: Number
    gives_way: Number
    weaker: str
    ring_used: Number
    head_used: Number
    lost: Number

    @property
    def bears(self) -> Number:
        return self.heat.interference

    @property
    def spare(self) -> Number:
        """What may be added before the weaker part gives way."""
        return self.gives_way - self.bears


def four_heats(i: In, joint: Joint, bearing: Number) -> tuple[Case, Case, Case, Case]:
    """Cold; warming up, a hot ring in a cool head; running; stopped hot, the ring as warm as the head."""
    reference = reference_temperature()

    def warm(tag: str, when: str, ring_field: str, head_field: str) -> Case:
        fields = ring_field, head_field
        temperatures = getattr(i, ring_field), getattr(i, head_field)
        strains = (
            growth(part.material, t, reference, f"{part.letter},{tag}", f"{part.words} {when}", field)
            for part, t, field in zip((joint.ring, joint.wall), temperatures, fields)
        )
        bears = step(
            f"δ_{tag}",
            f"Interference {when}, if nothing yielded",
            SIZE,
            fit.interference_at(bearing, joint.size, *strains),
            sources.THERMAL,
        )
        return case_of(joint, tag, when, temperatures, bears)

    return (
        case_of(joint, "cold", "cold", (reference, reference), bearing),
        warm("w", "while warming up", "ring_warming", "head_warming"),
        warm("run", "when running", "ring_temperature", "head_temperature"),
        warm("s", "when stopped hot", "head_temperature", "head_temperature"),
    )


def case_of(joint: Joint, tag: str, when: str, temperatures: tuple[Number, Number], bears: Number) -> Case:
    """What the joint is like with ring and head at those temperatures."""
    ring, head = joint.ring, joint.wall
    mark, behind = f",{tag}", f" {when}"
    moduli = (stiffness(ring, temperatures[0], mark, behind), stiffness(head, temperatures[1], mark, behind))
    ratios = poissons_ratio(ring, mark, behind), poissons_ratio(head, mark, behind)
    give = compliance(joint.shapes, moduli, ratios)
    heat = at_heat(joint, tag, when, temperatures, bears, give, moduli, comma="")
    pressed = step(
        f"p_e,{tag}",
        f"Contact pressure {when}, if nothing yielded",
        CONTACT,
        fit.contact_pressure(bears, joint.size, give),
        sources.LAME,
    )
    first = least(*heat.begins)
    lost = (
        interference_lost(joint, heat, f"Interference lost for good {when}", SIZE)
        if pressed > first
        else constant("", "", SIZE, 0.0)
    )
    begins = step(
        f"δ_y,{tag}",
        f"Interference at which something begins to yield {when}",
        SIZE,
        fit.interference_for(first, joint.size, give),
        sources.LAME,
    )
    weaker = weaker_part(joint, heat)
    gives_way = constant(
        f"δ_p,{tag}",
        f"Interference at which the {weaker} gives way {when}",
        SIZE,
        interference_through(joint, heat),
        sources.PAST_YIELD,
    )
    return Case(heat, begins, gives_way, weaker, pressed / heat.begins[0], pressed / heat.begins[1], lost)


def weaker_part(joint: Joint, heat: Heat) -> str:
    """Which of the two yields right through at the lower pressure."""
    ring = past_yield.inner_plastic_pressure(heat.strengths[0], joint.bore, joint.size)
    head = past_yield.outer_plastic_pressure(heat.strengths[1], joint.size, joint.outside)
    return joint.ring.words if ring <= head else joint.wall.words
