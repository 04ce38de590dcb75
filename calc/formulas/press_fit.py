"""Press and shrink fits: one ring in another, as for seat rings, guides, bushes, lifter bodies and ring
gears.

Two thick-walled cylinders after Lamé, in plane stress, each of its own material (Timoshenko, Strength of
Materials II; DIN 7190-1). `inner` is the part that goes in, `outer` the part that takes it. Every size is a
diameter, the interference too.

Holds for round parts, elastic, as long as the shorter of the two. What it leaves out:
- A head is not a ring. Taking for `outer_outside` the joint plus twice the *thinnest* wall gives the weakest
  section, so the pressure comes out low and the stress in that wall about right.
- A joint that reaches past one part's end is stiffer there, and the pressure peaks at the edge.
- Past first yield the true pressure is below the elastic one, which is then an upper bound, and part of the
  interference is gone for good: how much, the functions under "past first yield" tell.

Lengths in m, stresses and moduli in Pa, temperatures in K, strains and friction pure.
"""

import math
from collections.abc import Callable
from functools import lru_cache

from calc.core.working import PI, Value, greatest, sqrt

# pressure in the joint


def inner_shape(inner_bore: Value, joint: Value) -> Value:
    """(D² + d²)/(D² − d²) of the inner part: 1 when solid, growing without bound as it gets thin."""
    return (joint**2 + inner_bore**2) / (joint**2 - inner_bore**2)


def outer_shape(joint: Value, outer_outside: Value) -> Value:
    """The same of the outer part: 1 in an endless wall."""
    return (outer_outside**2 + joint**2) / (outer_outside**2 - joint**2)


def compliance(
    inner_shape: Value,
    outer_shape: Value,
    inner_modulus: Value,
    inner_poisson: Value,
    outer_modulus: Value,
    outer_poisson: Value,
) -> Value:
    """Interference per diameter that a unit of pressure takes up, 1/Pa, from the two shapes."""
    return (inner_shape - inner_poisson) / inner_modulus + (outer_shape + outer_poisson) / outer_modulus


def joint_compliance(
    inner_bore: Value,
    joint: Value,
    outer_outside: Value,
    inner_modulus: Value,
    inner_poisson: Value,
    outer_modulus: Value,
    outer_poisson: Value,
) -> Value:
    """Interference per diameter that a unit of pressure takes up, 1/Pa.

    0 ≤ inner_bore < joint < outer_outside; equal sizes divide by zero. A solid inner part has bore 0.
    """
    return compliance(
        inner_shape(inner_bore, joint),
        outer_shape(joint, outer_outside),
        inner_modulus,
        inner_poisson,
        outer_modulus,
        outer_poisson,
    )


def contact_pressure(interference: Value, joint: Value, compliance: Value) -> Value:
    """Pressure between the two parts, Pa: δ/(D·K). Nothing where the parts have come loose (δ ≤ 0): a joint
    does not pull.

    `interference` is diametral (not radial), `compliance` comes from `joint_compliance`.
    """
    return greatest(interference, 0.0) / (joint * compliance)


def interference_for(pressure: Value, joint: Value, compliance: Value) -> Value:
    """Diametral interference that gives a pressure: the reverse of `contact_pressure`, m."""
    return pressure * joint * compliance


# what roughness and heat leave of the interference


def roughness_loss(inner_rz: Value, outer_rz: Value) -> Value:
    """Diametral interference lost to peaks pressed flat, m: 0.8(Rz₁ + Rz₂), rule of the older DIN 7190, from
    memory."""
    return 0.8 * (inner_rz + outer_rz)


def free_strain(alpha: Value, temperature: Value, reference: Value) -> Value:
    """Free thermal strain from the reference temperature, with one mean coefficient: α(T − T₀)."""
    return alpha * (temperature - reference)


def interference_at(interference: Value, joint: Value, inner_strain: Value, outer_strain: Value) -> Value:
    """Diametral interference when each part has its own thermal strain, m: δ + D(ε_i − ε_o).

    First order: leaves out δ·ε, which is less than half a per cent of the interference in any engine.
    Negative means loose.
    """
    return interference + joint * (inner_strain - outer_strain)


def outer_strain_for_clearance(
    interference: Value, clearance: Value, joint: Value, inner_strain: Value
) -> Value:
    """Thermal strain that the heated outer part needs so that the inner one drops in with `clearance`
    (diametral, m)."""
    return (interference + clearance) / joint + inner_strain


def temperature_for(strain: Value, alpha: Value, reference: Value) -> Value:
    """Temperature at which one mean coefficient gives that strain, K: the reverse of `free_strain`."""
    return reference + strain / alpha


def loosening_rise(interference: Value, joint: Value, inner_alpha: Value, outer_alpha: Value) -> Value:
    """Rise above the reference, common to both parts, at which the grip is gone, K. Needs outer_alpha >
    inner_alpha."""
    return interference / (joint * (outer_alpha - inner_alpha))


# stress


def inner_bore_hoop(pressure: Value, inner_bore: Value, joint: Value) -> Value:
    """Hoop stress at the bore of the inner part, Pa, negative: pressed together. The most stressed place of a
    ring.

    Needs a bore: a solid plug has −p everywhere, not the −2p to which this tends for a pinhole.
    """
    return -2 * pressure * joint**2 / (joint**2 - inner_bore**2)


def inner_joint_hoop(pressure: Value, inner_bore: Value, joint: Value) -> Value:
    """Hoop stress at the outside of the inner part, Pa, negative."""
    return -pressure * (joint**2 + inner_bore**2) / (joint**2 - inner_bore**2)


def outer_joint_hoop(pressure: Value, joint: Value, outer_outside: Value) -> Value:
    """Hoop stress at the bore of the outer part, Pa, positive: pulled apart."""
    return pressure * (outer_outside**2 + joint**2) / (outer_outside**2 - joint**2)


def outer_outside_hoop(pressure: Value, joint: Value, outer_outside: Value) -> Value:
    """Hoop stress at the outside of the outer part, Pa."""
    return 2 * pressure * joint**2 / (outer_outside**2 - joint**2)


def inner_stress(at: Value, pressure: Value, inner_bore: Value, joint: Value) -> tuple[Value, Value]:
    """Hoop and radial stress in the inner part at diameter `at`, Pa (Lamé). inner_bore ≤ at ≤ joint, at >
    0."""
    level = -pressure * joint**2 / (joint**2 - inner_bore**2)
    change = (inner_bore / at) ** 2
    return level * (1 + change), level * (1 - change)


def outer_stress(at: Value, pressure: Value, joint: Value, outer_outside: Value) -> tuple[Value, Value]:
    """Hoop and radial stress in the outer part at diameter `at`, Pa (Lamé). joint ≤ at ≤ outer_outside."""
    level = pressure * joint**2 / (outer_outside**2 - joint**2)
    change = (outer_outside / at) ** 2
    return level * (1 + change), level * (1 - change)


def von_mises(hoop: Value, radial: Value) -> Value:
    """Equivalent stress of two principal stresses, nothing along the axis, Pa."""
    return sqrt(hoop**2 - hoop * radial + radial**2)


def inner_yield_pressure(inner_yield: Value, inner_bore: Value, joint: Value) -> Value:
    """Pressure at which the inner ring begins to yield, Pa: at its bore, where hoop alone acts.

    `inner_yield` in compression. Needs a bore; a solid plug yields at p = its yield stress.
    """
    return inner_yield * (joint**2 - inner_bore**2) / (2 * joint**2)


def outer_yield_pressure(outer_yield: Value, joint: Value, outer_outside: Value) -> Value:
    """Pressure at which the outer part begins to yield, Pa: at its bore, by von Mises (hoop and radial act
    with unlike sign).

    p = σ(1 − k²)/√(3 + k⁴), k = joint/outside. Judged by hoop alone it would come out too high.
    """
    k = joint / outer_outside
    return outer_yield * (1 - k**2) / sqrt(3 + k**4)


# past first yield

# Each part elastic up to its yield stress and no stronger past it, von Mises, plane stress. In what yields,
# the stresses of a disc are known in closed form (Nadai): hoop and radial stress are 2σ/√3·cos(φ ∓ 30°), and
# from place to place r² goes with e^(−√3φ)/sin φ. φ is 60° at a free edge; pressure from inside drives it up,
# to 150° at most, pressure from outside down. Strains go with the stresses there are (Hencky), which differs
# from stepping the load by less than a hundredth here.

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
    if p <= outer_yield_pressure(stress, joint, outside):
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
    return joint * (hoop + plastic - p * float(outer_shape(joint, outside))) / float(outer_modulus)


def inner_set(
    pressure: Value, inner_bore: Value, joint: Value, inner_yield: Value, inner_modulus: Value
) -> float:
    """What the inner ring's outside has shrunk for good under a pressure, m on the diameter, positive, as a
    plain float.

    As `outer_set`; the ring yields from its bore outwards. Needs a bore; the yield stress in compression.
    """
    p, bore, joint, stress = map(float, (pressure, inner_bore, joint, inner_yield))
    if p <= inner_yield_pressure(stress, bore, joint):
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
    return joint * (level + change - p * float(inner_shape(bore, joint))) / float(inner_modulus)


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
    elastic = float(contact_pressure(float(interference), float(joint), float(compliance)))
    if elastic <= min(
        inner_yield_pressure(*map(float, (inner_yield, inner_bore, joint))),
        outer_yield_pressure(*map(float, (outer_yield, joint, outer_outside))),
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


# how far the parts move


def inner_bore_change(pressure: Value, inner_bore: Value, joint: Value, inner_modulus: Value) -> Value:
    """Change of the inner part's bore when pressed in, m, negative: it closes. What a guide or bush is honed
    for afterwards."""
    return inner_bore * inner_bore_hoop(pressure, inner_bore, joint) / inner_modulus


def inner_joint_change(
    pressure: Value, inner_bore: Value, joint: Value, inner_modulus: Value, inner_poisson: Value
) -> Value:
    """Change of the inner part's outside diameter, m, negative."""
    return joint * (inner_joint_hoop(pressure, inner_bore, joint) + inner_poisson * pressure) / inner_modulus


def outer_joint_change(
    pressure: Value, joint: Value, outer_outside: Value, outer_modulus: Value, outer_poisson: Value
) -> Value:
    """Change of the outer part's bore, m, positive. With the inner part's it makes up the interference."""
    return (
        joint * (outer_joint_hoop(pressure, joint, outer_outside) + outer_poisson * pressure) / outer_modulus
    )


def outer_outside_change(pressure: Value, joint: Value, outer_outside: Value, outer_modulus: Value) -> Value:
    """Growth of the outer part's outside diameter, m."""
    return outer_outside * outer_outside_hoop(pressure, joint, outer_outside) / outer_modulus


# what the joint holds


def holding_force(pressure: Value, friction: Value, joint: Value, length: Value) -> Value:
    """Axial force that the joint holds before it slides, or that presses it in, N: µ·p·π·D·L."""
    return friction * pressure * PI * joint * length


def holding_torque(pressure: Value, friction: Value, joint: Value, length: Value) -> Value:
    """Torque that the joint holds before it turns, N·m."""
    return holding_force(pressure, friction, joint, length) * joint / 2
