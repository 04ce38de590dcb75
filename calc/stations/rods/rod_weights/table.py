"""Rod by rod: what its ends weigh, and what comes off its pads."""

from calc.core.conformance import past
from calc.core.result import Table
from calc.core.working import Number, constant
from calc.stations.rods.rod_weights.asked import In
from calc.stations.rods.rod_weights.rod import Rod
from calc.stations.rods.rod_weights.rods import Rods
from calc.stations.rods.rod_weights.told import GRAMS

FINE = 0.05e-3  # kg: what a balance to a tenth of a gram shows as nothing


def rod_by_rod(rods: Rods, i: In) -> Table:
    return Table(
        "Rod by rod, to match the lightest",
        ("Rod", "Big end", "Small end", "Whole", "Off the big end's pad", "Off the small end's pad"),
        tuple(
            (
                rod.name,
                rod.big,
                rod.small,
                constant("", "", GRAMS, float(rod.whole)),
                _off(rod.off_big),
                _off(rod.off_small),
            )
            for rod in rods.each
        ),
        tuple(_state(rod, rods, i) for rod in rods.each),
    )


def _off(metal: Number) -> Number | str:
    return metal if float(metal) > FINE else "–"


def _state(rod: Rod, rods: Rods, i: In) -> str:
    if rod.off_big > i.most_big or rod.off_small > i.most_small:
        return "fail"
    over = past(rod.big - rods.light_big, i.allowed) or past(rod.small - rods.light_small, i.allowed)
    return "attention" if over else "pass"
