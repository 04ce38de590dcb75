"""A seat ring and its pocket, as every calculator of the two asks for them."""

from typing import Any

from calc.declare.calculator import Inputs, Number, measured, which_valve
from calc.stations.heads import HEADS
from calc.stations.shared.asked import material_of
from calc.stations.shared.forms import SIZE

RINGS = (
    "sintered-iron",
    "high-chrome-iron",
    "grey-iron",
    "cobalt-alloy",
    "aluminium-bronze",
    "copper-nickel-silicon",
)


class RingInPocket(Inputs):
    """The three sizes that both calculators of a seat ring begin with."""

    valve: str = which_valve()
    pocket_bore: Number = measured(
        "Pocket bore",
        "D_p",
        SIZE,
        tool="a bore gauge set in a ring",
        hard="10 to 90 mm",
        usual="25 to 60 mm",
        feature="head.seat_pocket_{valve}",
        of="head_material",
        stage="finished",
    )
    ring_outside: Number = measured(
        "Ring outside",
        "D_r",
        SIZE,
        tool="a micrometer",
        hard="10 to 90 mm",
        usual="25 to 60 mm",
        feature="head.seat_ring_outside_{valve}",
        of="ring_material",
        stage="finished",
    )


def material_of_ring() -> Any:
    """Input: what the ring is made of."""
    return material_of(
        "Ring, material", RINGS, feature="head.seat_ring_alloy_{valve}", example="sintered-iron"
    )


def material_of_head() -> Any:
    """Input: what the head is made of."""
    return material_of("Head, material", HEADS, feature="head.alloy", example="al-si-cu-t6")
