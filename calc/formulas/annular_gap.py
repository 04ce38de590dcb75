"""Oil that a pressure drives along the narrow gap round a plunger in its bore.

Local flow of a narrow gap, c³·Δp/(12·µ·L) per width, summed up round the bore (Reynolds; Merritt, Hydraulic
Control Systems, from memory). Laminar, parallel axes, one viscosity all along. With `diameter` at the middle
of the gap it is out by less than 0.1 % at c/d = 0.01; with the plunger's or the bore's, by about 1 %. What
the moving plunger drags along is left out: 2c/d of what it displaces.

`clearance` is RADIAL, half of what bore less plunger gives: taken for the diametral one, the leak comes out
eight times too high. Lengths in m, pressure in Pa, viscosity in Pa·s, flow in m³/s; `eccentricity` is the
plunger's offset over the radial clearance, 0 in the middle to 1 where it touches.
"""

import math

from calc.core.working import PI, Value


def eccentric(eccentricity: Value) -> Value:
    """Leak over that of a plunger in the middle: 1 + 1.5·ε², 2.5 where it touches."""
    return 1 + 1.5 * eccentricity**2


def leak(
    diameter: Value, clearance: Value, length: Value, viscosity: Value, pressure: Value, eccentricity: Value
) -> Value:
    """Q = π·d·c³·Δp·(1 + 1.5·ε²)/(12·µ·L)."""
    return PI * diameter * clearance**3 * pressure * eccentric(eccentricity) / (12 * viscosity * length)


def reynolds(flow: Value, diameter: Value, density: Value, viscosity: Value) -> Value:
    """Re = ρ·v·2c/µ = 2·ρ·Q/(π·d·µ) on the gap's hydraulic diameter; laminar up to about 2000."""
    return 2 * density * flow / (PI * diameter * viscosity)


def plunger_area(diameter: Value) -> Value:
    """Area on which the load stands, m²."""
    return PI / 4 * diameter**2


def sink_speed(flow: Value, diameter: Value) -> Value:
    """Speed at which the plunger goes down as the oil below it leaks away, m/s."""
    return flow / plunger_area(diameter)


def clearance_for(clearance: Value, time: Value, wanted_time: Value) -> Value:
    """Clearance that changes the leak-down time to the one wanted: time goes as one over the cube of the
    clearance."""
    return clearance * (time / wanted_time) ** (1 / 3)


def alike(one: Value, other: Value) -> Value:
    """Even clearance that leaks as a straight taper from `one` to `other` does, in the middle: the parts
    along the flow lie one behind the other, ∫dx/c³ = L·(c₁ + c₂)/(2·c₁²·c₂²). Radial, m."""
    return (2 * one**2 * other**2 / (one + other)) ** (1 / 3)


STRIPS = 360


def aside(one: float, other: float, offset: float) -> float:
    """Leak of a tapered gap whose plunger lies `offset` out of its middle over that in the middle: strips
    round the gap, each with its own taper, in series along. For an even gap it is
    `eccentric(offset/clearance)`.

    Lengths in m, floats; `offset` from 0 to the narrower of both clearances. Trapezoidal rule round the gap,
    which for a periodic film is exact to the last digits.
    """
    turns = (2 * math.pi * n / STRIPS for n in range(STRIPS))
    strips = (_passes(one - offset * math.cos(t), other - offset * math.cos(t)) for t in turns)
    return sum(strips) / STRIPS / _passes(one, other)


def _passes(one: float, other: float) -> float:
    """1/∫dx/c³ along a strip for each unit of its length; none where it is shut at one place."""
    if min(one, other) <= 0:
        return 0.0
    return 2 * one**2 * other**2 / (one + other)
