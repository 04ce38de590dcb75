"""A seat ring and its pocket, as every calculator of the two asks for them."""

from typing import Any

from calc.declare.calculator import Inputs, Number, measured, which_valve
from calc.stations.heads import HEADS
from calc.stations.shared.asked import material_of
from calc.stations.shared.forms import COARSE, SIZE

RINGS = (
    "sintered-iron",
    "high-chrome-iron",
    "grey-iron",
    "cobalt-alloy",
    "aluminium-bronze",
    "copper-nickel-silicon",
)


def ring_outside(of: str = "", fold: bool = False) -> Any:
    """Input: the ring's outside; `of` names the choice of its material, so that it may be read warm."""
    return measured(
        "Ring outside",
        "D_r",
        SIZE,
        tool="a micrometer",
        hard="10 to 90 mm",
        usual="25 to 60 mm",
        feature="head.seat_ring_outside_{valve}",
        of=of,
        stage="finished",
        fold=fold,
    )


def ring_bore() -> Any:
    """Input: the ring's bore."""
    return measured(
        "Ring bore",
        "d_r",
        COARSE,
        tool="a calliper or bore gauge",
        hard="4 to 88 mm",
        feature="head.seat_ring_bore_{valve}",
        stage="finished",
        fold=True,
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
    ring_outside: Number = ring_outside(of="ring_material")


def material_of_ring() -> Any:
    """Input: what the ring is made of."""
    return material_of(
        "Ring, material", RINGS, feature="head.seat_ring_alloy_{valve}", example="sintered-iron"
    )


def material_of_head() -> Any:
    """Input: what the head is made of."""
    return material_of("Head, material", HEADS, feature="head.alloy", example="al-si-cu-t6")
