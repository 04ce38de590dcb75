"""Cylindrical helical compression springs of round wire: rate, stress, coil bind, surge, endurance.

After EN 13906-1 and Shigley's chapter on springs, from memory. `mean_diameter` is that of the coil's middle
line: outside less one wire. Turns are counted as *active* (those that move) and *total* (those that stand in
the way); closed and ground ends take two.

Holds for a constant pitch and a load along the axis. A spring whose coils touch one after the other gets
stiffer as it closes. Lengths in m, forces in N, stresses and moduli in Pa, frequencies in Hz.
"""

from calc.core.working import PI, Value, sqrt

# Zimmerli's endurance strength of spring wire under 10 mm: amplitude about a mean, Pa, for endless life
UNPEENED = (241e6, 379e6)
PEENED = (398e6, 534e6)
UNGROUND = (
    1.5  # turns that ends which are not ground stand in the way more: EN 13906-1, cold wound, from memory
)
SHEAR_STRENGTH = 0.67  # ultimate shear over tensile strength of spring wire (Shigley)


# load and length


def index(wire: Value, mean_diameter: Value) -> Value:
    """C = D/d; 4 to 12 in most springs."""
    return mean_diameter / wire


def rate(shear_modulus: Value, wire: Value, mean_diameter: Value, active: Value) -> Value:
    """k = G·d⁴/(8·D³·n), N/m."""
    return shear_modulus * wire**4 / (8 * mean_diameter**3 * active)


def rate_of(load: Value, other_load: Value, height: Value, other_height: Value) -> Value:
    """Rate between two readings, N/m: the load grows as the height falls."""
    return (other_load - load) / (height - other_height)


def load_at(height: Value, load: Value, height_of_load: Value, rate: Value) -> Value:
    """Load at a height, N, from the load at another."""
    return load + rate * (height_of_load - height)


def free_length(load: Value, height: Value, rate: Value) -> Value:
    """Length without load, m, by the straight line."""
    return height + load / rate


def solid_length(wire: Value, total: Value, ground: Value = True) -> Value:
    """Length with all coils together, m: n_t·d with both ends ground flat, (n_t + 1.5)·d with closed ends as
    they were wound."""
    return (total if ground else total + UNGROUND) * wire


# stress


def wahl(index: Value) -> Value:
    """Wahl's factor for curvature and direct shear. Needs C > 1."""
    return (4 * index - 1) / (4 * index - 4) + 0.615 / index


def shear_stress(load: Value, wire: Value, mean_diameter: Value, factor: Value) -> Value:
    """Greatest shear stress, at the inside of the coil, Pa: K·8·F·D/(π·d³)."""
    return factor * 8 * load * mean_diameter / (PI * wire**3)


def endurance_share(
    amplitude: Value, mean: Value, amplitude_borne: Value, mean_borne: Value, shear_strength: Value
) -> Value:
    """Share of an endless life's stress that is used: Goodman's line through the point that is borne and the
    shear strength.

    amplitude/S_e + mean/S_u with S_e = amplitude_borne/(1 − mean_borne/S_u). Needs mean_borne <
    shear_strength.
    """
    borne = amplitude_borne / (1 - mean_borne / shear_strength)
    return amplitude / borne + mean / shear_strength


# surge


def active_mass(wire: Value, mean_diameter: Value, active: Value, density: Value) -> Value:
    """Mass of the turns that move, kg: ρ·(π·d²/4)·(π·D·n)."""
    return density * (PI * wire**2 / 4) * (PI * mean_diameter * active)


def surge_frequency(rate: Value, active_mass: Value) -> Value:
    """Lowest natural frequency of a spring held at both ends, Hz: ½·√(k/m). With one end free it is half of
    that."""
    return sqrt(rate / active_mass) / 2
