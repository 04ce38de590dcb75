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
    clearances are those that the sheet's sizes leave. `new` where pistons in hand are for bores still to be
    machined: `tightest` is what the largest of them has in the largest finished bore, `loosest` what the
    smallest has in the smallest."""

    read: bool
    new: bool
    tight: str
    loose: str
    clearance: Number
    most: Number
    largest: Number
    tightest: Number
    loosest: Number
    hot: Number
    closes: Number
    wall: Number | None


def pairs_of(i: In, lot: Lot, reference: Number) -> Pairs:
    pistons = {name: row[0] for name, row in zip(CYLINDERS, i.pistons or ()) if row is not None}
    bores = [b for b in lot.each if b.name in pistons]
    new = not lot.stays and any(pistons[b.name] >= b.smallest for b in bores)
    for b in bores:
        if lot.stays and pistons[b.name] >= b.smallest:
            raise impossible(
                f"pistons.{b.name}.1",
                "is {d}, and the bore is {b} where it is smallest; a piston is smaller than its bore",
                d=pistons[b.name],
                b=b.smallest,
            )
    if bores and lot.stays:
        tight = min(bores, key=lambda b: float(b.smallest - pistons[b.name]))
        loose = max(bores, key=lambda b: float(b.largest - pistons[b.name]))
        least, most = tight.smallest - pistons[tight.name], loose.largest - pistons[loose.name]
        bore, piston, names = tight.smallest, pistons[tight.name], (tight.name, loose.name)
    elif new:
        tight = max(bores, key=lambda b: float(pistons[b.name]))
        loose = min(bores, key=lambda b: float(pistons[b.name]))
        bore, piston, names = lot.low, pistons[tight.name], (tight.name, loose.name)
        least, most = i.least_clearance * 1, i.most_clearance * 1
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
    small = pistons[names[1]] if names[1] else piston
    return Pairs(
        bool(names[0]) and not new,
        new,
        *names,
        clearance,
        widest,
        piston,
        lot.high - piston,
        lot.low - small,
        hot,
        closes,
        _wall(i, lot),
    )


def _wall(i: In, lot: Lot) -> Number | None:
    if i.register is None:
        return None
    bore = lot.largest if lot.stays else lot.high
    if bore >= i.register:
        raise impossible(
            "register",
            "is {r}, no larger than the bore, {b}; give what is read outside",
            r=i.register,
            b=bore,
        )
    return step("t_w", "Wall left in the case", COARSE, (i.register - bore) / 2)
