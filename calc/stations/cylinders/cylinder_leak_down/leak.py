"""The leak behind the tester's orifice: as a hole, as a flow, and as another tester would show it."""

import math
from typing import NamedTuple

from calc.core.kinds import ANGLE, LEAK, MASS_FLOW, SPECIFIC_HEAT, TEMPERATURE
from calc.core.result import impossible
from calc.core.working import PI, Number, constant, form, sin, sqrt, step
from calc.formulas import leak as gas
from calc.reference import sources
from calc.stations.cylinders.cylinder_leak_down.asked import In
from calc.stations.cylinders.cylinder_leak_down.told import KPA, Out
from calc.stations.shared.forms import FINE_SHARE, SIZE

ABSOLUTE = form(TEMPERATURE, 2, "K", "K")
ATMOSPHERE = constant("p_n", "Standard atmosphere", KPA, gas.ATMOSPHERE, sources.STANDARD_FLOW)
ZERO = constant("T_n", "Reference temperature of the flow", ABSOLUTE, 273.15, sources.STANDARD_FLOW)
AIR = constant("R", "Gas constant of air", form(SPECIFIC_HEAT, 1), gas.AIR_CONSTANT, sources.ORIFICE)
OFF = constant("θ", "Off the top", form(ANGLE, 0), math.radians(10))


class Leak(NamedTuple):
    """`standard` is the pressure that the sheet's tester would leave."""

    loss: Number
    hole: Number
    flow: Number
    standard: Number
    hole_worn: Number
    choking: Number
    force: Number
    torque: Number


def leak_of(i: In) -> Leak:
    _check(i)
    up = step("P_1", "Supply, absolute", KPA, i.supply + i.room)
    inside = step("P_2", "Cylinder, absolute", KPA, i.left + i.room)
    share = step(
        "a", "Hole's area ÷ orifice's", FINE_SHARE, gas.behind_an_orifice(up, inside, i.room), sources.ORIFICE
    )
    force, torque = _on_the_crank(i)
    return Leak(
        Out.loss((i.supply - i.left) / i.supply),
        Out.hole(i.orifice * sqrt(share)),
        _flow(i, up, inside),
        _standard(i, share),
        _hole_worn(i),
        Out.choking(i.room / inside),
        force,
        torque,
    )


def _check(i: In) -> None:
    for name, other, left, supply in (
        ("left", "the supply", i.left, i.supply),
        ("worn", "the supply that it is for", i.worn, i.sheet_supply),
        ("good", "the supply that it is for", i.good, i.sheet_supply),
    ):
        if left > supply:
            raise impossible(name, "is {p}, more than " + other + ", {s}; give {s} or less", p=left, s=supply)


def _flow(i: In, up: Number, inside: Number) -> Number:
    """Through the orifice, as a volume at 0 °C and one atmosphere."""
    warm = step("T", "Air, absolute", ABSOLUTE, i.temperature)
    area = PI * i.orifice**2 / 4
    mass = step(
        "m",
        "Air through the orifice",
        form(MASS_FLOW, 3),
        gas.mass_flow(area, up, inside, warm, i.discharge, gas_constant=AIR),
        sources.ORIFICE,
    )
    throughput = step("Q", "The same as throughput", form(LEAK, 1), mass * AIR * warm)
    return Out.flow(gas.standard_flow(throughput, warm, ZERO, ATMOSPHERE), sources.STANDARD_FLOW)


def _standard(i: In, share: Number) -> Number:
    """The pressure that the same hole leaves with the sheet's supply and orifice."""
    if float(i.supply) == float(i.sheet_supply) and float(i.orifice) == float(i.sheet_orifice):
        return Out.standard(i.left)
    there = float(share) * (float(i.orifice) / float(i.sheet_orifice)) ** 2
    room = float(i.room)
    inside = gas.middle_pressure(float(i.sheet_supply) + room, room, there)
    return Out.standard(
        constant("p_s2", "With the sheet's tester the same hole leaves", KPA, inside - room, sources.ORIFICE)
    )


def _hole_worn(i: In) -> Number:
    share = gas.behind_an_orifice(i.sheet_supply + i.room, i.worn + i.room, i.room)
    return Out.hole_worn(i.sheet_orifice * sqrt(share), sources.ORIFICE)


def _on_the_crank(i: In) -> tuple[Number, Number]:
    """Force on the piston, and what it turns the crank with ten degrees off the top."""
    force = Out.force(i.left * PI * i.bore**2 / 4)
    throw = step("R_c", "Throw", SIZE, i.stroke / 2)
    if throw >= i.rod:
        raise impossible("rod", "is {l}, no longer than half the stroke, {r}; give more", l=i.rod, r=throw)
    leaned = step("s_β", "Sine of the rod's lean", FINE_SHARE, throw / i.rod * sin(OFF))
    arm = step(
        "b",
        "Arm of the rod about the crank's centre, over the cosine of its lean",
        SIZE,
        throw * (sin(OFF) + math.cos(float(OFF)) * leaned / sqrt(1 - leaned**2)),
        sources.CRANK_ARM,
    )
    return force, Out.torque(force * arm)
