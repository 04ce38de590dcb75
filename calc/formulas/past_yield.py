"""Press fits past first yield: what a ring and its wall bear, what they take up, and what is gone for good.

Each part elastic up to its yield stress and no stronger past it, von Mises, plane stress. In what yields, the
stresses of a disc are known in closed form (Nadai): hoop and radial stress are 2σ/√3·cos(φ ∓ 30°), and from
place to place r² goes with e^(−√3φ)/sin φ. φ is 60° at a free edge; pressure from inside drives it up, to
150° at most, pressure from outside down. Strains go with the stresses there are (Hencky), which differs from
stepping the load by less than a hundredth here.

Sizes, units and what is left out are those of `press_fit`.
"""

import math
from collections.abc import Callable
from functools import lru_cache

from calc.core.working import Value, greatest
from calc.formulas import press_fit as fit

_FREE, _MOST = math.pi / 3, math.pi * 5 / 6


def _place(phi: float) -> float:
    """ln of 1/r² at φ, but for a constant."""
    return math.sqrt(3) * phi + math.log(math.sin(phi))


def _where(rising: Callable[[float], float], low: float, high: float) -> float:
    """Where a rising function passes 0 between two places: chords, the end that stays halved (Illinois)."""
    at_low, at_high = rising(low), rising(high)
    last: float | None = None
    if at_low >= 0 or at_high <= 0:
        return low if at_low >= 0 else high
    for _ in range(100):
        x = (low * at_high - high * at_low) / (at_high - at_low)
        at = rising(x)
        if at == 0 or last is not None and abs(x - last) <= 1e-14 * abs(x):
            break
        if at < 0:
            low, at_low, at_high = x, at, at_high / 2 if last == low else at_high
        else:
            high, at_high, at_low = x, at, at_low / 2 if last == high else at_low
        last = x
    return x


@lru_cache(maxsize=256)
def _outer_through(ratio: float) -> float:
    """φ at the bore of an outer part that yields right through, from outside/joint."""
    far = _place(_FREE) + 2 * math.log(ratio)
    return _MOST if far >= _place(_MOST) else _where(lambda x: _place(x) - far, _FREE, _MOST)


@lru_cache(maxsize=256)
def _inner_through(ratio: float) -> float:
    """φ at the outside of an inner ring that yields right through, from joint/bore."""
    near = _place(_FREE) - 2 * math.log(ratio)
    return _where(lambda x: _place(x) - near, 1e-12, _FREE)


def outer_plastic_pressure(outer_yield: Value, joint: Value, outer_outside: Value) -> float:
    """Pressure at which the outer part yields right through and gives way, Pa, as a plain float.

    Plane stress: up to 7 % under 2/√3·σ·ln(outside/joint), which is that of a long tube in plane strain; at
    most 2/√3·σ.
    """
    return (
        -2
        / math.sqrt(3)
        * float(outer_yield)
        * math.cos(_outer_through(float(outer_outside) / float(joint)) + math.pi / 6)
    )


def inner_plastic_pressure(inner_yield: Value, inner_bore: Value, joint: Value) -> float:
    """Pressure at which the inner ring yields right through, Pa, as a plain float. Needs a bore; the yield
    stress in compression."""
    return (
        2
        / math.sqrt(3)
        * float(inner_yield)
        * math.cos(_inner_through(float(joint) / float(inner_bore)) + math.pi / 6)
    )


def outer_set(
    pressure: Value, joint: Value, outer_outside: Value, outer_yield: Value, outer_modulus: Value
) -> float:
    """What the outer part's bore has grown for good under a pressure, m on the diameter, as a plain float; 0
    below first yield.

    It stays when the pressure goes, since what unloads is elastic. Up to `outer_plastic_pressure`; past it as
    at it.
    """
    p, joint, outside, stress = map(float, (pressure, joint, outer_outside, outer_yield))
    if p <= fit.outer_yield_pressure(stress, joint, outside):
        return 0.0
    p, k2 = min(p, outer_plastic_pressure(stress, joint, outside)), (joint / outside) ** 2
    phi = math.acos(max(-1.0, -math.sqrt(3) / 2 * p / stress)) - math.pi / 6
    # how far out it yields: φ on that edge follows from the elastic ring beyond, q = (edge/outside)²
    q = _where(lambda q: math.log(q / k2) + _place(math.atan2(math.sqrt(3), q)) - _place(phi), k2, 1.0)
    edge = math.atan2(math.sqrt(3), q)
    hoop = 2 / math.sqrt(3) * stress * math.cos(phi - math.pi / 6)
    plastic = stress * (
        math.sin(edge + math.pi / 6) * math.exp(math.sqrt(3) * (phi - edge)) - math.sin(phi + math.pi / 6)
    )
    return joint * (hoop + plastic - p * float(fit.outer_shape(joint, outside))) / float(outer_modulus)


def inner_set(
    pressure: Value, inner_bore: Value, joint: Value, inner_yield: Value, inner_modulus: Value
) -> float:
    """What the inner ring's outside has shrunk for good under a pressure, m on the diameter, positive, as a
    plain float.

    As `outer_set`; the ring yields from its bore outwards. Needs a bore; the yield stress in compression.
    """
    p, bore, joint, stress = map(float, (pressure, inner_bore, joint, inner_yield))
    if p <= fit.inner_yield_pressure(stress, bore, joint):
        return 0.0

    def ring_outside_edge(phi: float) -> tuple[float, float]:
        """Both constants of Lamé's stresses, level and change at the joint, in the elastic ring outside the
        edge where φ is phi."""
        edge2 = bore**2 * math.exp(_place(_FREE) - _place(phi))
        return stress * math.cos(phi), stress / math.sqrt(3) * math.sin(phi) * edge2 / joint**2

    def beyond(phi: float) -> float:
        level, change = ring_outside_edge(phi)
        return p - (level - change)

    p = min(p, inner_plastic_pressure(stress, bore, joint))
    phi = _where(beyond, _inner_through(joint / bore), _FREE)
    level, change = ring_outside_edge(phi)
    return joint * (level + change - p * float(fit.inner_shape(bore, joint))) / float(inner_modulus)


def plastic_pressure(
    inner_bore: Value, joint: Value, outer_outside: Value, inner_yield: Value, outer_yield: Value
) -> float:
    """Pressure at which the weaker of the two yields right through, Pa, as a plain float.

    `inner_yield` in compression. Needs a bore.
    """
    return min(
        inner_plastic_pressure(inner_yield, inner_bore, joint),
        outer_plastic_pressure(outer_yield, joint, outer_outside),
    )


def taken_up(
    pressure: Value,
    inner_bore: Value,
    joint: Value,
    outer_outside: Value,
    compliance: Value,
    inner_yield: Value,
    outer_yield: Value,
    inner_modulus: Value,
    outer_modulus: Value,
) -> float:
    """Interference that a pressure takes up, m, as a plain float: elastically, and by what has yielded.

    Up to `plastic_pressure`. `compliance` comes from `joint_compliance`, `inner_yield` in compression. Needs
    a bore.
    """
    return (
        float(pressure) * float(joint) * float(compliance)
        + inner_set(pressure, inner_bore, joint, inner_yield, inner_modulus)
        + outer_set(pressure, joint, outer_outside, outer_yield, outer_modulus)
    )


def pressure_past_yield(
    interference: Value,
    inner_bore: Value,
    joint: Value,
    outer_outside: Value,
    compliance: Value,
    inner_yield: Value,
    outer_yield: Value,
    inner_modulus: Value,
    outer_modulus: Value,
) -> float:
    """Pressure between two parts of which either may yield, Pa, as a plain float: `contact_pressure` where
    neither does.

    At most that at which the weaker one yields right through. What the interference is more than pressure ×
    joint × compliance is gone for good (`grip_lost`). `compliance` comes from `joint_compliance`;
    `inner_yield` in compression. Needs a bore.
    """
    elastic = float(fit.contact_pressure(float(interference), float(joint), float(compliance)))
    if elastic <= min(
        fit.inner_yield_pressure(*map(float, (inner_yield, inner_bore, joint))),
        fit.outer_yield_pressure(*map(float, (outer_yield, joint, outer_outside))),
    ):
        return elastic
    sizes = inner_bore, joint, outer_outside
    most = plastic_pressure(*sizes, inner_yield, outer_yield)

    def beyond(pressure: float) -> float:
        return taken_up(
            pressure, *sizes, compliance, inner_yield, outer_yield, inner_modulus, outer_modulus
        ) - float(interference)

    return most if beyond(most) <= 0 else _where(beyond, 0.0, min(most, elastic))


def grip_lost(interference: Value, pressure: Value, joint: Value, compliance: Value) -> Value:
    """Interference that is gone for good, m: what of it the pressure (`pressure_past_yield`) does not take up
    elastically; never below 0."""
    return greatest(interference - pressure * joint * compliance, 0.0)
