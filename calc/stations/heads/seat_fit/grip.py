"""The ring in its pocket at four heats: what grip it has, what of that is lost for good, and which ring would
serve."""

from typing import NamedTuple

from calc.core.working import Number, constant, greatest, least, step
from calc.formulas import press_fit as fit
from calc.reference import sources
from calc.stations.heads.seat_fit.asked import In
from calc.stations.heads.seat_fit.told import Out
from calc.stations.shared.forms import CONTACT, SIZE
from calc.stations.shared.growth import growth, reference_temperature
from calc.stations.shared.ring_in_wall import (
    Heat,
    Joint,
    Window,
    at_heat,
    bearing_interference,
    compliance,
    poissons_ratio,
    stiffness,
)
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


class Grip(NamedTuple):
    """`left` is the least that is left of all, at the heat called `when`."""

    cold: Case
    warming: Case
    running: Case
    stopped: Case
    interference: Number
    hot: Number
    stop: Number
    lost: Number
    spare: Number
    left: Number
    when: str
    pressure: Number
    pressure_hot: Number
    ring_used: Number
    head_used: Number
    serving: Window

    @property
    def cases(self) -> tuple[Case, ...]:
        return self.cold, self.warming, self.running, self.stopped

    @property
    def hardest(self) -> Case:
        """The heat at which the least is to spare."""
        return min(self.cases, key=lambda case: float(case.spare))

    @property
    def warming_presses_hardest(self) -> bool:
        of_all = max(float(self.ring_used), float(self.head_used))
        of_warming = max(float(self.warming.ring_used), float(self.warming.head_used))
        return self.hardest is self.warming or of_warming >= of_all


def grip_in_pocket(i: In, joint: Joint) -> Grip:
    """What yields in one heat is gone in all of them."""
    grip = Out.interference(i.ring_outside - i.pocket_bore)
    loss, bearing = bearing_interference(grip, i.ring_roughness, i.pocket_roughness)
    cold, _warming, running, stopped = cases = four_heats(i, joint, bearing)
    lost = Out.lost(greatest(*(case.lost for case in cases)))
    spare = Out.spare(least(*(case.spare for case in cases)))
    hot = Out.interference_hot(running.bears - lost)
    stop = Out.interference_stopped(stopped.bears - lost)
    left, when = min(
        (
            (step("δ_1", "Interference left of all, at least", SIZE, case.bears - lost), case.heat.when)
            for case in cases
        ),
        key=lambda pair: float(pair[0]),
    )
    pressure = Out.pressure(
        fit.contact_pressure(bearing - cold.lost, i.pocket_bore, cold.heat.give), sources.LAME
    )
    pressure_hot = Out.pressure_hot(fit.contact_pressure(hot, i.pocket_bore, running.heat.give), sources.LAME)
    ring_used = Out.ring_used(greatest(*(case.ring_used for case in cases)), sources.MISES)
    head_used = Out.head_used(greatest(*(case.head_used for case in cases)), sources.MISES)
    serving = Window(
        Out.ring_wanted(
            i.pocket_bore + loss + i.least_grip + greatest(*(bearing - case.bears for case in cases[1:]), 0.0)
        ),
        Out.ring_most(
            i.pocket_bore + loss + least(*(case.begins + (bearing - case.bears) for case in cases))
        ),
    )
    return Grip(
        *cases,
        grip,
        hot,
        stop,
        lost,
        spare,
        left,
        when,
        pressure,
        pressure_hot,
        ring_used,
        head_used,
        serving,
    )


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
    ring = fit.inner_plastic_pressure(heat.strengths[0], joint.bore, joint.size)
    head = fit.outer_plastic_pressure(heat.strengths[1], joint.size, joint.outside)
    return joint.ring.words if ring <= head else joint.wall.words
