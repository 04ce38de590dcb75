"""The pressure left over the hole, for the sheet's tester and for the reader's."""

import math

from calc.core.drawing import Axis, Plot, Points, Series
from calc.core.result import say
from calc.core.working import Number
from calc.formulas import leak as gas
from calc.stations.cylinders.cylinder_leak_down.asked import In
from calc.stations.cylinders.cylinder_leak_down.leak import Leak
from calc.stations.cylinders.cylinder_leak_down.told import KPA
from calc.stations.shared.forms import COARSE


def pressure_over_hole(i: In, found: Leak) -> Plot:
    room = float(i.room)
    least = 0.5 * min(float(i.worn), float(found.standard), float(i.left))

    def curve(supply: Number, orifice: Number) -> Points:
        top = float(supply)
        bottom = min(least, 0.5 * top)
        pressures = (top - (top - bottom) * (n / 32) ** 2 for n in range(33))
        return tuple((_hole(p + room, top + room, room, float(orifice)), p) for p in pressures)

    own = curve(i.supply, i.orifice)
    sheet = curve(i.sheet_supply, i.sheet_orifice)
    same = own == sheet
    widest = max(x for x, _ in (*own, *sheet))
    return Plot(
        "Pressure left over the size of the leak",
        say("A hole of {d} leaves {p}; the limit is {w}.", d=found.hole, p=i.left, w=i.worn),
        Axis("Round hole that leaks as much", COARSE),
        Axis("Pressure left", KPA),
        (
            Series("" if same else "sheet's tester", sheet),
            *(() if same else (Series("this tester", own, "dashed"),)),
            Series("limit", ((0.0, float(i.worn)), (widest, float(i.worn))), "limit"),
        ),
        ((float(found.hole), float(i.left), "read"),),
    )


def _hole(inside: float, up: float, room: float, orifice: float) -> float:
    return orifice * math.sqrt(gas.behind_an_orifice(up, inside, room))
