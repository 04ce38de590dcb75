"""The bore that is wanted beside the one that is there: what is to come off, what wall is left, whether it is
done."""

from typing import NamedTuple

from calc.core.conformance import past
from calc.core.result import impossible
from calc.core.working import Number, greatest, least, step
from calc.stations.lifters.lifter_bore.asked import PRESS, In
from calc.stations.lifters.lifter_bore.told import Out
from calc.stations.shared.forms import SIZE


class Bore(NamedTuple):
    """`outside` is that of a ring with the thinnest wall, `largest` the bore in which the unit still fits."""

    target: Number
    outside: Number
    stock: Number
    wall: Number
    clearance_now: Number
    largest: Number
    too_large: bool
    done: bool


def bore_wanted(i: In) -> Bore:
    """Raises where sizes do not go together, or nothing is left of a wall."""
    pressed = i.fit_wanted == PRESS
    _refuse_what_does_not_go_together(i)
    target = Out.target(i.unit_outside - i.grip if pressed else i.unit_outside + i.slip)
    outside = step("D_e", "Outside of a ring with the thinnest wall", SIZE, i.body - i.runout)
    _refuse_what_leaves_no_wall(i, target, outside)
    stock = Out.stock(target - i.bore)
    wall = Out.wall((outside - greatest(i.bore, target)) / 2)
    now = Out.clearance_now(i.bore - i.unit_outside)
    if pressed:
        largest = least(target + i.tolerance, i.unit_outside)
        too_large = past(i.bore, largest) or not past(i.unit_outside, i.bore)
        reached = not past(stock, i.tolerance)
    else:
        largest = i.unit_outside + i.most_slip
        too_large = past(i.bore, largest)
        reached = not past(i.least_slip, now)
    return Bore(target, outside, stock, wall, now, largest, too_large, reached and not too_large)


def _refuse_what_does_not_go_together(i: In) -> None:
    if i.plunger_bore >= i.unit_outside:
        raise impossible(
            "plunger_bore",
            "is {d}, not smaller than the unit's outside, {D}; give less",
            d=i.plunger_bore,
            D=i.unit_outside,
        )
    if i.plunger >= i.plunger_bore:
        raise impossible(
            "plunger", "is {p}, not smaller than its bore, {b}; give less", p=i.plunger, b=i.plunger_bore
        )
    if i.body >= i.lifter_hole:
        raise impossible(
            "body", "is {d}, not smaller than its bore in the case, {D}; give less", d=i.body, D=i.lifter_hole
        )
    if i.fit_wanted != PRESS and not i.least_slip <= i.slip <= i.most_slip:
        raise impossible(
            "slip",
            "is {s}, not within the clearance allowed; give {a} to {b}",
            s=i.slip,
            a=i.least_slip,
            b=i.most_slip,
        )


def _refuse_what_leaves_no_wall(i: In, target: Number, outside: Number) -> None:
    for name, value in (("bore", i.bore), ("unit_outside", target)):
        if value >= outside:
            raise impossible(
                name,
                "leaves no wall: a bore of {d} in a body of {D} with {r} of runout; give less",
                d=value,
                D=i.body,
                r=i.runout,
            )
    if i.least_hone >= i.most_hone:
        raise impossible(
            "least_hone",
            "is {a}, not less than the hone takes off at most, {b}; give less",
            a=i.least_hone,
            b=i.most_hone,
        )
    if i.fit_wanted == PRESS and target <= i.plunger_bore:
        raise impossible("grip", "is {g}, as much as the unit's own wall; give less", g=i.grip)
