"""Cylinder by cylinder: its sizes, its form, and at what it cleans up."""

from calc.core.conformance import past
from calc.core.result import Table
from calc.stations.cylinders.cylinder_bore.bore import Bore
from calc.stations.cylinders.cylinder_bore.lot import HONE, STAY, WORN, Lot


def bore_by_bore(lot: Lot) -> Table:
    return Table(
        "Cylinder by cylinder",
        ("Cylinder", "Largest", "Smallest", "Out of round", "Taper", "Cleans up at"),
        tuple((b.name, b.largest, b.smallest, b.oval, b.taper, b.clean) for b in lot.each),
        tuple(_state(lot, b) for b in lot.each),
    )


def _state(lot: Lot, b: Bore) -> str:
    if lot.state in (STAY, HONE):
        return "pass"
    if lot.state == WORN:
        return "attention"
    return "fail" if past(b.clean, lot.high) else "attention" if past(b.clean, lot.aim) else "pass"
