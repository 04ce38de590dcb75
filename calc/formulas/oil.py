"""Viscosity of an oil at any temperature, from two points: ASTM D341, Walther's equation.

log₁₀ log₁₀(ν + 0.7) = A − B·log₁₀ T, ν in mm²/s, T in kelvin. Holds from 2 mm²/s up; below, the standard adds
terms that are left out here. Between and near the two points it holds within the doubt of the points, far
outside within some per cent, and not at all in the cold where wax begins to form. Viscosities in m²/s,
temperatures in K, densities in kg/m³; plain numbers and traced ones.
"""

from calc.core.kinds import KINEMATIC_VISCOSITY, TEMPERATURE
from calc.core.spelling import unit_named
from calc.core.working import Value, in_unit, log10, of_unit

MM2_S, KELVIN = KINEMATIC_VISCOSITY.metric, unit_named(TEMPERATURE, "K")
SHIFT = 0.7
GROWTH = 0.0007  # 1/K: oil's growth in volume, typical of mineral oils, from memory

# Typical viscosities at 40 and 100 °C, mm²/s, from memory; makers' data differ by a tenth and more
GRADES = {
    "sae-30": ("SAE 30", 95.0, 11.0),
    "sae-40": ("SAE 40", 140.0, 14.5),
    "sae-50": ("SAE 50", 215.0, 19.5),
    "sae-10w-30": ("SAE 10W-30", 68.0, 10.6),
    "sae-10w-40": ("SAE 10W-40", 95.0, 14.4),
    "sae-15w-40": ("SAE 15W-40", 108.0, 14.5),
    "sae-20w-50": ("SAE 20W-50", 160.0, 18.0),
    "iso-vg-10": ("test oil, ISO VG 10", 10.0, 2.6),
    "iso-vg-46": ("ISO VG 46", 46.0, 6.8),
}


def walther(viscosity: Value) -> Value:
    """log₁₀ log₁₀(ν + 0.7), a pure number that falls in a straight line over log₁₀ T. ValueError for ν ≤ 0.3
    mm²/s, where there is none."""
    if in_unit(viscosity, MM2_S) <= 1 - SHIFT:
        raise ValueError(
            "a viscosity of 0.3 mm²/s or less has no place on Walther's line; give more than 0.3 mm²/s"
        )
    return log10(log10(in_unit(viscosity, MM2_S) + SHIFT))


def log_temperature(temperature: Value) -> Value:
    """log₁₀ of the absolute temperature. ValueError at 0 K and below."""
    if in_unit(temperature, KELVIN) <= 0:
        raise ValueError("there is no temperature at or below 0 K; give more")
    return log10(in_unit(temperature, KELVIN))


def slope(viscosity_1: Value, temperature_1: Value, viscosity_2: Value, temperature_2: Value) -> Value:
    """B of Walther's line. ValueError where the temperatures are alike, or viscosity does not fall as
    temperature rises."""
    if (
        float(temperature_1) == float(temperature_2)
        or (float(viscosity_1) > float(viscosity_2)) != (float(temperature_1) < float(temperature_2))
        or float(viscosity_1) == float(viscosity_2)
    ):
        raise ValueError(
            "an oil gets thinner as it gets warmer; give two temperatures, and less viscosity at the higher"
        )
    return (walther(viscosity_1) - walther(viscosity_2)) / (
        log_temperature(temperature_2) - log_temperature(temperature_1)
    )


def height(viscosity: Value, temperature: Value, slope: Value) -> Value:
    """A of Walther's line through a point."""
    return walther(viscosity) + slope * log_temperature(temperature)


def viscosity(temperature: Value, height: Value, slope: Value) -> Value:
    """ν on Walther's line, m²/s."""
    return of_unit(
        10 ** (10 ** (height - slope * log_temperature(temperature))) - SHIFT, KINEMATIC_VISCOSITY, MM2_S
    )


def viscosity_between(
    temperature: Value, viscosity_1: Value, temperature_1: Value, viscosity_2: Value, temperature_2: Value
) -> Value:
    """ν at a temperature, m²/s, from two points of the oil's data sheet."""
    b = slope(viscosity_1, temperature_1, viscosity_2, temperature_2)
    return viscosity(temperature, height(viscosity_1, temperature_1, b), b)


def density_at(density: Value, temperature: Value, reference: Value, growth: Value = GROWTH) -> Value:
    """ρ at a temperature, from that at the reference (15 °C in data sheets): ρ/(1 + β·ΔT)."""
    return density / (1 + growth * (temperature - reference))
