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
  interference is gone for good: how much, `past_yield` tells.

Lengths in m, stresses and moduli in Pa, temperatures in K, strains and friction pure.
"""

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
