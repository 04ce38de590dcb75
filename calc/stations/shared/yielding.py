"""What a press fit loses for good where one of its parts yields, and how much more would make one yield right through: as lines of working."""

from typing import NamedTuple

from calc.core.kinds import LENGTH, STRESS
from calc.core.working import Number, constant, form, greatest, least, step
from calc.formulas import press_fit as fit
from calc.reference import sources

SIZE, FINE, MPA = (
    form(LENGTH, 3),
    form(LENGTH, 4),
    form(STRESS, 1),
)  # a little that is lost must not read as nothing


class Heat(NamedTuple):
    """Both parts at one heat: its name ("cold", "hot"), the interference there if nothing yielded, the compliance, and of the inner and the
    outer part the yield stress (the inner's in compression) and the modulus."""

    name: str
    interference: Number
    compliance: Number
    yields: tuple
    moduli: tuple


def lost_and_room(inner_bore, joint, outer_outside, *heats: Heat) -> tuple[Number, Number]:
    """The interference gone for good after the worst of the heats, and the least that may be added before one part yields right through."""
    lost, room = [], []
    for name, interference, give, strengths, moduli in heats:
        whole = greatest(interference, 0.0)
        real = constant(
            f"p_y,{name}",
            f"Contact pressure {name}, counting what yields",
            MPA,
            fit.pressure_past_yield(whole, inner_bore, joint, outer_outside, give, *strengths, *moduli),
            sources.PAST_YIELD,
        )
        lost.append(
            step(
                f"δ_l,{name}",
                f"Interference gone for good, {name}",
                FINE,
                fit.grip_lost(whole, real, joint, give),
                sources.PAST_YIELD,
            )
        )
        most = min(
            fit.inner_plastic_pressure(strengths[0], inner_bore, joint),
            fit.outer_plastic_pressure(strengths[1], joint, outer_outside),
        )
        through = (
            most * float(joint * give)
            + fit.inner_set(most, inner_bore, joint, strengths[0], moduli[0])
            + fit.outer_set(most, joint, outer_outside, strengths[1], moduli[1])
        )
        room.append(
            constant(
                f"δ_t,{name}",
                f"Interference at which one part yields right through, {name}",
                SIZE,
                through,
                sources.PAST_YIELD,
            )
            - interference
        )
    return greatest(*lost), step(
        "δ_r", "Interference that may be added until one part yields right through", SIZE, least(*room)
    )
