"""Pistons in their bores: clearance cold, wall left, and what plain expansion would make of the tightest
pair."""

from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import Number, step
from calc.reference import sources
from calc.stations.cylinders.cylinder_bore.asked import CYLINDERS, In
from calc.stations.cylinders.cylinder_bore.lot import Lot
from calc.stations.cylinders.cylinder_bore.told import Out
from calc.stations.shared.forms import COARSE, SIZE


class Pairs(NamedTuple):
    """`tight` and `loose` name the cylinders; `read` where pistons were measured and stay, else the
    clearances are those that the sheet's sizes leave."""

    read: bool
    tight: str
    loose: str
    clearance: Number
    most: Number
    hot: Number
    closes: Number
    wall: Number | None


def pairs_of(i: In, lot: Lot, reference: Number) -> Pairs:
    pistons = {name: row[0] for name, row in zip(CYLINDERS, i.pistons or ()) if row is not None}
    bores = [b for b in lot.each if b.name in pistons]
    for b in bores:
        if pistons[b.name] >= b.smallest:
            raise impossible(
                f"pistons.{b.name}.1",
                "is {d}, and the bore is {b} where it is smallest; a piston is smaller than its bore",
                d=pistons[b.name],
                b=b.smallest,
            )
    wall = None
    if i.register is not None:
        bore = lot.largest if lot.stays else lot.high
        if bore >= i.register:
            raise impossible(
                "register",
                "is {r}, no larger than the bore, {b}; give what is read outside",
                r=i.register,
                b=bore,
            )
        wall = step("t_w", "Wall left in the case", COARSE, (i.register - bore) / 2)
    if bores and lot.stays:
        tight = min(bores, key=lambda b: float(b.smallest - pistons[b.name]))
        loose = max(bores, key=lambda b: float(b.largest - pistons[b.name]))
        least, most = tight.smallest - pistons[tight.name], loose.largest - pistons[loose.name]
        bore, piston, names = tight.smallest, pistons[tight.name], (tight.name, loose.name)
    else:
        bore = lot.low
        piston = step("d_1", "Largest piston of that size", SIZE, lot.low - i.least_clearance)
        least, most, names = lot.low - piston, i.most_clearance * 1, ("", "")
    clearance, widest = Out.clearance(least), Out.clearance_most(most)
    grown = step(
        "D_hot",
        "That bore, running",
        SIZE,
        bore * (1 + i.barrel_expansion * (i.barrel_running - reference)),
        sources.THERMAL,
    )
    hot = Out.hot(grown - piston * (1 + i.piston_expansion * (i.skirt_running - reference)), sources.THERMAL)
    closes = Out.closes(reference + (grown / piston - 1) / i.piston_expansion, sources.THERMAL)
    return Pairs(names[0] != "", *names, clearance, widest, hot, closes, wall)
