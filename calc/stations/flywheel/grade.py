"""How much unbalance a part may keep: balance quality grade, mass and highest speed (ISO 21940-11)."""

from typing import Any

from calc.core.kinds import BALANCE_GRADE, MASS, UNBALANCE
from calc.core.working import PI, Number, form
from calc.declare.calculator import given, limit, measured
from calc.stations.shared.forms import TURNS

KILOS = form(MASS, 2, "kg", "lb")
GRAMS = form(MASS, 2)
MOMENT = form(UNBALANCE, 1)
GRADE = form(BALANCE_GRADE, 1)


def permitted_unbalance(mass: Number, grade: Number, speed: Number) -> Number:
    """Residual unbalance that a rigid rotor may keep, kg·m, of its mass (kg), grade e·ω (m/s) and highest
    speed (1/s): ISO 21940-11."""
    return mass * grade / (2 * PI * speed)


def rotor_mass(label: str, example: str) -> Any:
    return measured(
        label, "M", KILOS, tool="a balance", hard="0.2 to 200 kg", usual="2 to 60 kg", example=example
    )


def top_speed() -> Any:
    return given(
        "Highest speed",
        "n",
        TURNS,
        hard="200 1/ to 30000 1/min",
        usual="2000 1/ to 12000 1/min",
        feature="crank.top_speed",
        fold=True,
        hint="The highest that the engine may ever see, not the one at which the machine turns it.",
    )


def grade_limit() -> Any:
    return limit(
        "Balance quality grade",
        "G",
        GRADE,
        feature="flywheel.balance_grade",
        which="high",
        hard="0.1 to 400 mm/s",
        usual="1 to 16 mm/s",
        hint="G 6.3 is 6.3 mm/s: the speed at which the centre of mass goes round.",
    )
