"""Oil through a short round hole: the friction of its wall and the loss at its edge, one after the other.

The wall alone lets Q_w through (Hagen and Poiseuille, laminar), the edge alone Q_e (orifice). In series both
take their share of the pressure, Q/Q_w of it the wall and (Q/Q_e)² the edge, so that there is no step between
thick and thin oil. Leaves out what the swirl behind the inlet adds in a hole shorter than a few diameters;
the discharge coefficient carries that.

Lengths in m, pressure in Pa, viscosity in Pa·s, density in kg/m³, flow in m³/s.
"""

from calc.core.working import PI, Value, sqrt

LAMINAR = 2000.0  # Reynolds number up to which a pipe's flow is laminar


def wall_flow(diameter: Value, length: Value, viscosity: Value, pressure: Value) -> Value:
    """Q_w = π·d⁴·Δp/(128·µ·L)."""
    return PI * diameter**4 * pressure / (128 * viscosity * length)


def edge_flow(diameter: Value, density: Value, pressure: Value, discharge: Value) -> Value:
    """Q_e = C·π/4·d²·√(2·Δp/ρ)."""
    return discharge * PI / 4 * diameter**2 * sqrt(2 * pressure / density)


def flow(wall: Value, edge: Value) -> Value:
    """The Q that solves Q/Q_w + (Q/Q_e)² = 1: below either."""
    return 2 / (1 / wall + sqrt(1 / wall**2 + 4 / edge**2))


def reynolds(flow: Value, diameter: Value, density: Value, viscosity: Value) -> Value:
    """Re = ρ·v·d/µ = 4·ρ·Q/(π·d·µ)."""
    return 4 * density * flow / (PI * diameter * viscosity)
