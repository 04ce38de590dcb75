"""Angles, circles and tapers at the bench: sine bar, holes on a pitch circle, cones and how they are gauged
over rollers.

Plane geometry; the only source is the right triangle. Lengths in m, angles in rad, written for floats and
traced numbers alike.
"""

import math

from calc.core.working import PI, Value, asin, atan, cos, sin, tan

# sine bar


def sine_height(length: Value, angle: Value) -> Value:
    """Blocks under one roll of a sine bar that set an angle, m: L·sin α."""
    return length * sin(angle)


def sine_angle(length: Value, height: Value) -> Value:
    """Angle that blocks of that height set, rad. Needs a height below the bar's length."""
    return asin(height / length)


def sine_sensitivity(length: Value, angle: Value) -> Value:
    """Height for a radian of angle, m: L·cos α. Goes to nothing at 90°, which is why steep angles are not set
    so."""
    return length * cos(angle)


# holes on a pitch circle


def hole_pitch(holes: Value) -> Value:
    """Angle from hole to hole, rad: a full turn shared out."""
    return 2 * (PI / holes)


def chord(pitch_circle: Value, holes: Value) -> Value:
    """Distance between the centres of neighbouring holes, m: D·sin(π/N)."""
    return pitch_circle * sin(PI / holes)


# cones


def cone_ratio(large: Value, small: Value, length: Value) -> Value:
    """Diameter per length: 1:x has 1/x. The slope of both sides together."""
    return (large - small) / length


def side_angle(ratio: Value) -> Value:
    """Angle of one side to the axis, rad: half of the angle between the sides."""
    return atan(ratio / 2)


def ratio_of_angle(side: Value) -> Value:
    """Diameter per length of a cone whose side stands at that angle to its axis."""
    return 2 * tan(side)


def small_end(large: Value, ratio: Value, length: Value) -> Value:
    """Diameter after that length, m."""
    return large - ratio * length


def over_rollers(small: Value, side: Value, roller: Value) -> Value:
    """Reading over two rollers that lie on the plate against a cone standing on its small end, m.

    Each roller touches plate and flank, which leans over it: d + w·(1 + 1/cos α + tan α), w the roller's
    diameter.
    """
    return small + roller * (1 + 1 / cos(side) + tan(side))


def over_raised_rollers(reading: Value, side: Value, blocks: Value) -> Value:
    """The same with both rollers on blocks, m: larger by 2·H·tan α."""
    return reading + 2 * blocks * tan(side)


def side_angle_over_rollers(low: Value, high: Value, blocks: Value) -> Value:
    """Angle of a side, rad, from the readings over rollers on the plate and on blocks."""
    return atan((high - low) / (2 * blocks))


def roller_contact(side: Value, roller: Value, blocks: Value) -> Value:
    """How high above the plate a raised roller touches the flank, m: H + (w/2)·(1 + sin α)."""
    return blocks + roller / 2 * (1 + sin(side))


# writing


def degrees_minutes_seconds(angle: Value) -> str:
    """An angle (rad) as 5° 30′ 15.2″, to a tenth of a second."""
    tenths = round(abs(math.degrees(float(angle))) * 36000)
    degrees, rest = divmod(tenths, 36000)
    minutes, tenths = divmod(rest, 600)
    sign = "−" if float(angle) < 0 and (degrees or minutes or tenths) else ""
    return f"{sign}{degrees}°\u00a0{minutes}′\u00a0{tenths / 10:.1f}″"
