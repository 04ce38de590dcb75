"""A maker's own values of a material, before those of the generic grade that was chosen: for any calculator
of a press fit.

own: own_values("ring", "head"),          # one folded table, empty unless somebody knows better
...
ring, head = (own_grade(MATERIALS[id], row) for id, row in zip((ring_material, head_material), own))
"""

from dataclasses import replace
from typing import Any

from calc.core.kinds import EXPANSION, MODULUS, RATIO, STRESS
from calc.core.working import form
from calc.declare.fields import column, grid
from calc.reference.materials import Material


def own_values(*parts: str) -> Any:
    """One row for each part; any cell may stay empty."""
    return grid(
        "Maker's own values of the material",
        parts,
        (
            column(
                "Stiffness E",
                "E",
                form(MODULUS, 0),
                hard="20 to 700 GPa",
                usual="40 to 250 GPa",
                optional=True,
            ),
            column(
                "Poisson's ratio", "ν", form(RATIO, 2), hard="0.1 to 0.45", usual="0.2 to 0.4", optional=True
            ),
            column(
                "Expansion, 20 to 100 °C",
                "α",
                form(EXPANSION, 1),
                hard="2 to 35 µm/(m·K)",
                usual="9 to 27 µm/(m·K)",
                optional=True,
            ),
            column(
                "Yield stress at 20 °C",
                "R",
                form(STRESS, 0),
                hard="20 to 3000 MPa",
                usual="80 to 1500 MPa",
                optional=True,
            ),
        ),
        least=0,
        fold=True,
        hint=(
            "Where they are known, they replace those of the material chosen. They change with heat as"
            " its own do. In compression, the yield stress of cast and sintered rings is higher than in"
            " tension: type the one in tension."
        ),
    )


def own_grade(material: Material, row: tuple | None) -> Material:
    """The grade with a row's values in place of its own; its strength keeps its fall with heat. The grade
    itself where nothing was typed."""
    if row is None:
        return material
    E, nu, alpha, strength = (None if value is None else float(value) for value in row)
    share = 1.0 if strength is None else strength / material.yield_20
    return replace(
        material,
        name=f"{material.name}, maker's values",
        E=E or material.E,
        nu=nu or material.nu,
        alpha=alpha or material.alpha,
        ultimate=share * material.ultimate,
        yields=tuple((t, share * y) for t, y in material.yields),
    )
