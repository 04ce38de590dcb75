"""Cylinder by cylinder: as read, its slope, and with the shims."""

from calc.core.result import Table
from calc.core.working import constant
from calc.stations.cylinders.deck_height.barrels import OVER, Head
from calc.stations.shared.forms import SIZE


def cylinder_by_cylinder(heads: list[Head]) -> Table:
    return Table(
        "Cylinder by cylinder",
        ("Cylinder", "Without shims", "Slope", "Shims", "Deck then"),
        tuple(
            (
                barrel.name,
                barrel.bare,
                constant("", "", SIZE, float(barrel.slope) * float(OVER)),
                head.thick,
                deck,
            )
            for head in heads
            for barrel, deck in zip(head.barrels, head.decks, strict=True)
        ),
    )
