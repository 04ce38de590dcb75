"""Backlash of a pair of involute gears whose axes move apart or together. Angles rad, lengths m.

Base circles stay what they are: with another distance a' between axes that stood a apart the working
pressure angle α' follows from a'·cos α' =
a·cos α, and on the working circle the teeth have 2a'·(inv α' − inv α) more room, which is nearly
2·(a' − a)·tan α. Exact for any involute, whatever its profile shift, that meshed at a with the angle α.
"""

from calc.core.working import Value, acos, atan, cos, tan


def transverse_angle(normal_angle: Value, helix: Value) -> Value:
    """Pressure angle across the axis, of the one square to the tooth (ISO 21771): tan α_t = tan α_n/cos β."""
    return atan(tan(normal_angle) / cos(helix))


def involute(angle: Value) -> Value:
    """inv α = tan α − α."""
    return tan(angle) - angle


def working_angle(before: Value, after: Value, angle: Value) -> Value:
    """Pressure angle at the distance `after`, of one that is `angle` at the distance `before`."""
    return acos(before * cos(angle) / after)


def backlash_gained(after: Value, angle: Value, working: Value) -> Value:
    """Backlash more than before, along the working circle, square to the axis; less where negative."""
    return 2 * after * (involute(working) - involute(angle))


def per_radius(larger: Value, angle: Value) -> Value:
    """Backlash that a gear larger by that in pitch radius takes, as axes that move together do:
    2·Δr·tan α."""
    return 2 * larger * tan(angle)
