"""How hard the strongest spring's wire is stressed, and what share of an endless life's stress that is."""

from typing import NamedTuple

from calc.core.kinds import RATIO
from calc.core.working import Number, Value, constant, form, step
from calc.formulas import spring
from calc.reference import sources
from calc.stations.heads.valve_spring.asked import PEENED, In
from calc.stations.heads.valve_spring.loads import Loads
from calc.stations.heads.valve_spring.told import Out
from calc.stations.shared.forms import MPA, NEWTON


class Life(NamedTuple):
    stress: Number
    stress_solid: Number
    plain_solid: Number  # pressed solid, without Wahl's factor
    endurance: Number


def life_of(i: In, loads: Loads) -> Life:
    factor = step("K_w", "Wahl's factor", form(RATIO, 4), spring.wahl(loads.coil), sources.WAHL)

    def sheared(load: Number) -> Value:
        return spring.shear_stress(load, i.wire, i.mean_diameter, factor)

    strong = loads.strong
    shut = step(
        "τ_s", "Shear stress, valve shut, strongest spring, Wahl", MPA, sheared(strong.seat), sources.WAHL
    )
    stress = Out.stress(sheared(strong.open), sources.WAHL)
    solid_load = step(
        "F_c",
        "Load pressed solid, strongest spring",
        NEWTON,
        spring.load_at(loads.solid, strong.load, i.height_1, strong.rate),
    )
    stress_solid = Out.stress_solid(sheared(solid_load), sources.WAHL)
    plain_solid = constant("", "", MPA, float(stress_solid / factor))
    return Life(stress, stress_solid, plain_solid, _endurance(i, shut, stress))


def _endurance(i: In, shut: Number, full: Number) -> Number:
    """By the amplitude between both stresses and their mean."""
    amplitude, mean = (
        constant(f"τ_{letter}", f"{words} of the wire", MPA, value, sources.ENDURANCE)
        for letter, words, value in zip(
            "am",
            ("Endurance amplitude", "Its mean stress"),
            spring.PEENED if i.peened == PEENED else spring.UNPEENED,
        )
    )
    return Out.endurance(
        spring.endurance_share(
            (full - shut) / 2, (full + shut) / 2, amplitude, mean, spring.SHEAR_STRENGTH * i.tensile
        ),
        sources.ENDURANCE,
    )
