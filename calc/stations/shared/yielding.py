"""What a press fit loses for good where one of its parts yields, and how much more would make one yield right
through, as lines of working."""

from calc.core.working import Form, Number, constant, greatest, least, step
from calc.formulas import past_yield
from calc.reference import sources
from calc.stations.shared.forms import CONTACT, FINE, SIZE
from calc.stations.shared.ring_in_wall import Heat, Joint


def interference_lost(joint: Joint, heat: Heat, label: str, shape: Form) -> Number:
    """The interference that is gone for good after that heat."""
    real = constant(
        f"p_y,{heat.tag}",
        f"Contact pressure {heat.when}, counting what yields",
        CONTACT,
        past_yield.pressure_past_yield(
            heat.interference, joint.bore, joint.size, joint.outside, heat.give, *heat.strengths, *heat.moduli
        ),
        sources.PAST_YIELD,
    )
    lost = past_yield.grip_lost(heat.interference, real, joint.size, heat.give)
    return step(f"δ_l,{heat.tag}", label, shape, lost, sources.PAST_YIELD)


def interference_through(joint: Joint, heat: Heat) -> float:
    """Interference at which the weaker part yields right through, m."""
    sizes = joint.bore, joint.size, joint.outside
    pressure = past_yield.plastic_pressure(*sizes, *heat.strengths)
    return past_yield.taken_up(pressure, *sizes, heat.give, *heat.strengths, *heat.moduli)


def lost_and_room(joint: Joint, *heats: Heat) -> tuple[Number, Number]:
    """The interference gone for good after the worst of the heats, and the least that may be added before one
    part yields right through."""
    lost, room = [], []
    for heat in heats:
        bears = heat._replace(interference=greatest(heat.interference, 0.0))
        lost.append(interference_lost(joint, bears, f"Interference gone for good, {heat.when}", FINE))
        through = constant(
            f"δ_t,{heat.tag}",
            f"Interference at which one part yields right through, {heat.when}",
            SIZE,
            interference_through(joint, heat),
            sources.PAST_YIELD,
        )
        room.append(through - heat.interference)
    return greatest(*lost), step(
        "δ_r", "Interference that may be added until one part yields right through", SIZE, least(*room)
    )
