"""Torque and what it makes of a bolt: ISO 16047 for the torque, VDI 2230 for the stress in the shank that is
pulled and twisted.

SI or any consistent units; coefficients of friction are ratios. Flanks of 60°, small lead angles: within 2 %
of the exact wedge.
"""

from calc.core.working import PI, Value, sqrt

HALF_FLANK = 1.154 / 2  # ½ ÷ cos 30°, as ISO 16047 rounds it: friction acts on flanks that lean


def thread_lever(pitch: Value, pitch_diameter: Value, thread_friction: Value) -> Value:
    """Torque in the thread for each unit of preload: what the slope takes and what rubs on the flanks."""
    return pitch / (2 * PI) + HALF_FLANK * pitch_diameter * thread_friction


def lever(
    pitch: Value, pitch_diameter: Value, bearing: Value, thread_friction: Value, head_friction: Value
) -> Value:
    """Torque on the nut for each unit of preload; `bearing` is the mean diameter on which nut or head
    rubs."""
    return thread_lever(pitch, pitch_diameter, thread_friction) + bearing / 2 * head_friction


def friction_of(
    nut_factor: Value, diameter: Value, pitch: Value, pitch_diameter: Value, bearing: Value
) -> Value:
    """Friction, the same in thread and under the head, that a nut factor K = torque ÷ (preload × diameter)
    stands for."""
    return (nut_factor * diameter - pitch / (2 * PI)) / (HALF_FLANK * pitch_diameter + bearing / 2)


def twist(stress_diameter: Value, thread_lever: Value) -> Value:
    """Shear over tension in the stressed section. Once it yields, the shear is even over the section (W =
    πd³/12, VDI 2230)."""
    return 3 * thread_lever / stress_diameter


def together(tension: Value, twist: Value) -> Value:
    """Stress by von Mises of tension and the shear that goes with it."""
    return tension * sqrt(1 + 3 * twist * twist)


def running(tension: Value, twist: Value, tightened: Value) -> Value:
    """Stress by von Mises once the wrench is off and half of the twist is left (VDI 2230): `tightened` is the
    tension at the end of tightening, that the shear of `twist` went with."""
    return sqrt(tension**2 + 3 * (twist / 2 * tightened) ** 2)
