"""Leak test by change of pressure: how much gas goes, and how large a hole that would be.

A closed volume is put under pressure or vacuum, shut off, and its pressure read again after a while (the
pressure-change method of EN 13184, from memory). `V·dp/dt` is a throughput in Pa·m³/s: 1 Pa·m³/s is 10
mbar·l/s. Gas warms and cools, and a change of temperature looks just like a leak; so does a change of the
barometer, where the gauge reads against the air outside.

Every pressure here is absolute (gauge reading + barometer), every temperature absolute. Volumes in m³ *with
the hoses*, times in s. A loss counts positive under pressure; under vacuum the same formulas give the gain as
a negative number.
"""

from calc.core.working import PI, Value, exp, greatest, log, sqrt

ATMOSPHERE = 101325.0  # Pa, standard atmosphere
AIR_KAPPA = 1.4  # ratio of specific heats of air
AIR_CONSTANT = 287.055  # J/(kg·K), R/M of dry air, M = 28.9647 g/mol


# throughput


def drift_pressure(pressure: Value, temperature_change: Value, temperature: Value) -> Value:
    """Change of pressure that a change of temperature fakes in a tight volume, Pa: p·ΔT/T."""
    return pressure * temperature_change / temperature


def pressure_loss(
    start_pressure: Value, end_pressure: Value, start_temperature: Value, end_temperature: Value
) -> Value:
    """Pressure lost to the leak alone, Pa: the end pressure is first brought back to the start temperature.

    p₁ − p₂·T₁/T₂, exact for an ideal gas in a rigid volume. Negative where gas came in.
    """
    return start_pressure - end_pressure * start_temperature / end_temperature


def leak_rate(volume: Value, loss: Value, time: Value) -> Value:
    """Mean throughput over the test, Pa·m³/s, at the temperature to which `loss` belongs: V·Δp/t.

    Good while the loss is small beside the pressure that drives it; otherwise see `conductance`.
    """
    return volume * loss / time


def standard_flow(
    rate: Value, temperature: Value, standard_temperature: Value, standard_pressure: Value = ATMOSPHERE
) -> Value:
    """The same throughput as a volume flow of gas at a stated reference, m³/s.

    The reference must go with the number: at 0 °C the flow reads 7 % less than at 20 °C.
    """
    return rate / standard_pressure * standard_temperature / temperature


# a drop that is not small


def conductance(volume: Value, start_difference: Value, end_difference: Value, time: Value) -> Value:
    """Volume flow per driving pressure, m³/s, of a leak that falls off with the pressure that drives it:
    V/t·ln(Δp₁/Δp₂).

    The differences are those across the leak (test pressure − outside), both above 0 or both below, corrected
    for temperature.
    """
    return volume / time * log(start_difference / end_difference)


def difference_after(start_difference: Value, conductance: Value, volume: Value, time: Value) -> Value:
    """Pressure difference left after a time, Pa: Δp₁·exp(−C·t/V)."""
    return start_difference * exp(-conductance * time / volume)


def rate_at(conductance: Value, difference: Value) -> Value:
    """Throughput at a given pressure difference, Pa·m³/s: what two tests at unlike pressures can be compared
    by."""
    return conductance * difference


# what can be told apart


def least_loss(
    pressure: Value, temperature_doubt: Value, temperature: Value, gauge_doubt: Value = 0.0
) -> Value:
    """Smallest change of pressure that is told from drift and gauge, Pa.

    `temperature_doubt`: how much the gas may have warmed or cooled unseen, K; `gauge_doubt`: doubt of one
    reading, Pa, counted twice, for start and end. Added as squares (they are independent).
    """
    return sqrt(drift_pressure(pressure, temperature_doubt, temperature) ** 2 + 2 * gauge_doubt**2)


def time_to_tell(volume: Value, rate: Value, least: Value) -> Value:
    """Time after which a leak of that rate has changed the pressure by `least`, s. With a steady drift
    waiting does not help."""
    return volume * least / rate


# equivalent hole


def critical_ratio(kappa: Value = AIR_KAPPA) -> Value:
    """Pressure ratio down/up below which the flow is choked: (2/(κ+1))^(κ/(κ−1)), 0.5283 for air."""
    return (2 / (kappa + 1)) ** (kappa / (kappa - 1))


def flow_function(ratio: Value, kappa: Value = AIR_KAPPA) -> Value:
    """Saint-Venant–Wantzel: mass flow·√(R·T)/(area·upstream pressure), pure, for a pressure ratio down/up of
    0…1.

    The pressure in the throat never falls below the critical ratio, so the choked value holds from there down
    to vacuum: one formula, with no step at the critical ratio. (Heywood, Internal Combustion Engine
    Fundamentals, appendix C, from memory.)
    """
    r = greatest(ratio, critical_ratio(kappa))
    return sqrt(2 * kappa / (kappa - 1) * (r ** (2 / kappa) - r ** ((kappa + 1) / kappa)))


def mass_flow(
    area: Value,
    up_pressure: Value,
    down_pressure: Value,
    temperature: Value,
    discharge: Value = 1.0,
    kappa: Value = AIR_KAPPA,
    gas_constant: Value = AIR_CONSTANT,
) -> Value:
    """Gas through a hole, kg/s. `temperature` upstream; `discharge` coefficient, 1 for the ideal hole. down ≤
    up pressure."""
    return (
        discharge
        * area
        * up_pressure
        * flow_function(down_pressure / up_pressure, kappa)
        / sqrt(gas_constant * temperature)
    )


def hole_area(
    rate: Value,
    up_pressure: Value,
    down_pressure: Value,
    temperature: Value,
    discharge: Value = 1.0,
    kappa: Value = AIR_KAPPA,
    gas_constant: Value = AIR_CONSTANT,
) -> Value:
    """Area of the hole that would leak `rate` (Pa·m³/s at that temperature), m².

    Test under pressure: up is the mean test pressure, down the air outside. Under vacuum: up is the air
    outside, down the mean pressure inside. A real leak is a crack or a scratch: longer and rougher, so larger
    than this. Needs down < up.
    """
    return rate / (
        discharge
        * up_pressure
        * flow_function(down_pressure / up_pressure, kappa)
        * sqrt(gas_constant * temperature)
    )


def hole_diameter(area: Value) -> Value:
    """Diameter of the round hole of that area, m."""
    return sqrt(4 * area / PI)


# two holes in series


def behind_an_orifice(up: Value, middle: Value, down: Value, kappa: Value = AIR_KAPPA) -> Value:
    """Area of the hole that lets out of a volume as much as an orifice lets in, over that of the orifice.

    `up` before the orifice, `middle` in the volume, `down` outside, steady, absolute, up ≥ middle > down.
    Both holes have the same discharge coefficient, and the gas comes to rest in between, as warm as it was:
    neither then counts.
    """
    return up * flow_function(middle / up, kappa) / (middle * flow_function(down / middle, kappa))


def middle_pressure(up: float, down: float, share: float, kappa: float = AIR_KAPPA) -> float:
    """The pressure that stands in such a volume, Pa, for a hole of `share` of the orifice's area; plain.

    Halving: what goes in falls as the pressure rises, what goes out grows.
    """
    up, down, share = float(up), float(down), float(share)
    low, high = down, up
    for _ in range(200):
        middle = (low + high) / 2
        if middle in (low, high):
            break
        lets_in = up * flow_function(middle / up, kappa)
        lets_out = share * middle * flow_function(down / middle, kappa)
        low, high = (middle, high) if lets_in > lets_out else (low, middle)
    return (low + high) / 2
