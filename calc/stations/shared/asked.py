"""Inputs that calculators of several stations ask for alike."""

from typing import Any

from calc.declare.fields import choice, given
from calc.reference.materials import MATERIALS
from calc.stations.shared.forms import RZ, SIZE, TIMES


def material_of(
    label: str,
    ids: tuple[str, ...],
    *,
    example: str,
    feature: str = "",
    fold: bool = True,
    must: bool = False,
) -> Any:
    """What a part is made of, out of the grades that such a part may be of."""
    options = {id: MATERIALS[id].name for id in ids}
    return choice(label, options, feature=feature, example=example, fold=fold, must=must)


def roughness_of(of: str, symbol: str, usual: str, why: str) -> Any:
    """Rz of a face that is pressed against another."""
    return given(
        f"Roughness of the {of}, Rz",
        symbol,
        RZ,
        hard="0 to 40 µm",
        usual="0 to 16 µm",
        fold=True,
        assumed=(usual, f"{why}; common practice, no source"),
    )


def friction_of(
    of: str, hint: str, why: str = "common practice, no source", usual: str = "0.06 to 0.25", when=()
) -> Any:
    """Friction in a joint, along its axis."""
    return given(
        f"Friction of {of}",
        "µ",
        TIMES,
        hard="0.02 to 0.6",
        usual=usual,
        fold=True,
        hint=hint,
        assumed=("0.12", why),
        when=when,
    )


def grip_wanted(
    assumed: str, hint: str, hard: str = "0 to 0.2 mm", usual: str = "0.003 to 0.05 mm", when=()
) -> Any:
    """Interference that a ring must keep."""
    return given(
        "Interference wanted, least",
        "δ_min",
        SIZE,
        hard=hard,
        usual=usual,
        fold=True,
        hint=hint,
        assumed=(assumed, "common practice, no source"),
        when=when,
    )
