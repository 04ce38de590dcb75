"""Straight fins in a stream of air: how well each works, what a finned wall sheds, and what the air's own
warming takes.

Heat flows one way along a fin of even thickness, under one coefficient all over; end faces and radiation are
left out. Sizes in m, areas in m², coefficients in W/(m²·K), conductivities in W/(m·K), heat per kelvin in
W/K.
"""

import math

from calc.core.working import Value, exp, sqrt, tanh

WARMEST = 0.999  # of the wall's heat over the air: nearer to it no coefficient brings the air


def fin_number(coefficient: Value, conductivity: Value, thickness: Value, length: Value) -> Value:
    """m·L_c, the one pure number that a straight fin's efficiency hangs on: m = √(2h/(k·t)) for a fin much
    wider than thick; L_c = L + t/2 counts the tip as area, for a tip that sheds heat as the sides do."""
    return sqrt(2 * coefficient / (conductivity * thickness)) * (length + thickness / 2)


def fin_efficiency(x: Value) -> Value:
    """Heat that a straight fin sheds over what it would if it were as hot as its root all over: tanh(x)/x
    with x = m·L_c above 0."""
    return tanh(x) / x


def fin_area(thickness: Value, length: Value, width: Value) -> Value:
    """Both sides and the tip of one fin, m²; its end faces left out."""
    return 2 * width * (length + thickness / 2)


def overall_efficiency(efficiency: Value, fins: Value, total: Value) -> Value:
    """Efficiency of fins and bare wall together: 1 − A_f/A_t·(1 − η)."""
    return 1 - fins / total * (1 - efficiency)


def shed(
    fins: Value,
    thickness: Value,
    length: Value,
    gap: Value,
    width: Value,
    coefficient: Value,
    conductivity: Value,
) -> Value:
    """Heat that so many fins and the wall between them shed per kelvin, W/K."""
    each = fins * fin_area(thickness, length, width)
    return coefficient * (
        fins * gap * width + each * fin_efficiency(fin_number(coefficient, conductivity, thickness, length))
    )


def warmed(conductance: Value, capacity: Value) -> Value:
    """Heat per kelvin of wall over *entering* air, W/K: air that takes up `capacity` W per kelvin of its own
    rise gets warmer along the fins."""
    return capacity * (1 - exp(-conductance / capacity))


def unwarmed(heat: float, capacity: float) -> float:
    """The conductance that, with the air's own warming, sheds so much per kelvin: the reverse of `warmed`,
    W/K."""
    return -capacity * math.log(1 - min(heat / capacity, WARMEST))


def hydraulic_diameter(gap: Value, length: Value) -> Value:
    """Four times area over girth of a channel between two fins, closed by the baffle, m."""
    return 2 * gap * length / (gap + length)


def coefficient_for(
    conductance: float,
    fins: float,
    thickness: float,
    length: float,
    gap: float,
    width: float,
    conductivity: float,
) -> float:
    """Coefficient at which such fins shed so much per kelvin, W/(m²·K): the reverse of `shed`, by halving.

    Between the fins the wall itself sheds coefficient · area, whatever the fins do, so it is not above
    conductance / that area.
    """
    low, high = 0.0, conductance / (fins * gap * width)
    for _ in range(80):
        middle = (low + high) / 2
        found = shed(fins, thickness, length, gap, width, middle, conductivity)
        low, high = (middle, high) if found < conductance else (low, middle)
    return (low + high) / 2
