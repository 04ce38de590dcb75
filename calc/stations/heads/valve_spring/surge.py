"""The speeds at which a harmonic of the cam meets the spring's own frequency."""

import math
from typing import NamedTuple

from calc.core.kinds import DENSITY, MASS
from calc.core.result import Table
from calc.core.working import Number, constant, form, step
from calc.formulas import spring
from calc.reference import sources
from calc.reference.materials import MATERIALS
from calc.stations.heads.valve_spring.asked import In
from calc.stations.heads.valve_spring.told import Out
from calc.stations.shared.forms import TURNS


class Surge(NamedTuple):
    frequency: Number
    order: Number  # harmonic that meets it at top speed
    speed: Number  # at which the harmonic wanted meets it


def surge_of(i: In, rate: Number) -> Surge:
    density = constant(
        "ρ", "Density of steel", form(DENSITY, 0), MATERIALS["spring-steel"].density, sources.MATERIALS
    )
    mass = step(
        "m_n",
        "Mass of the turns that move",
        form(MASS, 1),
        spring.active_mass(i.wire, i.mean_diameter, i.active_turns, density),
    )
    frequency = Out.frequency(spring.surge_frequency(rate, mass), sources.SURGE)
    return Surge(
        frequency, Out.order(frequency / (i.top_speed / 2)), Out.surge_speed(2 * frequency / i.least_order)
    )


def harmonics(surge: Surge) -> Table:
    """The highest speeds at which a whole number of waves fits into a turn of the camshaft."""
    first = max(1, math.ceil(float(surge.order) - 1e-9))
    return Table(
        "Speeds at which a harmonic of the cam meets the spring",
        ("Harmonic", "Engine speed"),
        tuple(
            (str(j), constant("", "", TURNS, 2 * float(surge.frequency) / j)) for j in range(first, first + 5)
        ),
    )
