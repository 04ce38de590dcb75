"""Rod by rod: at what it cleans up, where it has least stock, and what becomes of its length."""

import math

from calc.core.conformance import past
from calc.core.result import Table
from calc.core.working import constant
from calc.stations.rods.big_end_resize.asked import In
from calc.stations.rods.big_end_resize.rod import Rod
from calc.stations.shared.forms import SIZE


def rod_by_rod(rods: list[Rod], i: In) -> Table:
    return Table(
        "Rod by rod",
        (
            "Rod",
            "Cleans up at",
            "Least stock, one side",
            "There",
            "Stock along the rod",
            "Centre distance lost",
            "Centre distance, then",
        ),
        tuple(
            (
                rod.name,
                rod.clean,
                constant("", "", SIZE, float(i.wanted - rod.clean) / 2),
                _where(rod.where),
                constant("", "", SIZE, float(rod.stocks[0] + rod.stocks[1])),
                rod.lost,
                rod.length,
            )
            for rod in rods
        ),
        tuple(_state(rod, i) for rod in rods),
    )


def _state(rod: Rod, i: In) -> str:
    if past(rod.clean, i.high) or past(i.least_length, rod.length):
        return "fail"
    return "attention" if past(rod.clean, i.wanted) else "pass"


def _where(angle: float) -> str:
    """Words for a direction from the rod's own, as a reading would be called."""
    degrees = abs(math.degrees(angle))
    if 80 < degrees < 100:
        return "parting line"
    half, off = ("rod", degrees) if degrees < 90 else ("cap", 180 - degrees)
    if off < 10:
        return f"{half}, along it"
    return f"{half}, {round(off, -1):.0f}° {'right' if angle > 0 else 'left'}"
