"""A rocker between a pushrod and a valve, in the plane of its arms. Angles rad, lengths m.

The shaft's middle is the origin, the valve moves upright. `arm` is the valve arm's angle above the line
square to the valve: positive while the pad's middle stands higher than the shaft. `cup` is how far the
pushrod's cup lies above the line from the pad's middle through the shaft. The lifter's cup moves upright,
`offset` from the shaft on the pushrod's side and `depth` below it. Lash is not in here.
"""

from calc.core.working import Value, acos, asin, atan, cos, sin, sqrt


def arm_for(tip: Value, valve_arm: Value) -> Value:
    """Angle of the valve arm where the pad's middle stands `tip` above the shaft. |tip| < valve_arm."""
    return asin(tip / valve_arm)


def pushrod_for(arm: Value, cup: Value, pushrod_arm: Value, offset: Value, depth: Value) -> Value:
    """Length of the pushrod, middle to middle of its ends, that reaches from the lifter to the rocker."""
    across = offset - pushrod_arm * cos(arm - cup)
    up = depth - pushrod_arm * sin(arm - cup)
    return sqrt(across**2 + up**2)


def arm_at(pushrod: Value, cup: Value, pushrod_arm: Value, offset: Value, depth: Value) -> Value:
    """Angle of the valve arm with that pushrod: the triangle of shaft, cup and lifter. ValueError where the
    pushrod does not reach."""
    reach = sqrt(offset**2 + depth**2)
    corner = acos((pushrod_arm**2 + reach**2 - pushrod**2) / (2 * pushrod_arm * reach))
    return cup + atan(depth / offset) - corner


def valve_lift(shut: Value, opened: Value, valve_arm: Value) -> Value:
    """How far the pad goes down between two angles of the arm."""
    return valve_arm * (sin(shut) - sin(opened))


def sweep(shut: Value, opened: Value, valve_arm: Value) -> Value:
    """How far the pad wanders across the stem's tip: out and back where the arm passes square, else one
    way."""
    if float(shut) * float(opened) < 0:
        larger = shut if abs(float(shut)) >= abs(float(opened)) else opened
        return valve_arm * (1 - cos(larger))
    way: Value = valve_arm * (cos(shut) - cos(opened))
    return way if float(way) >= 0 else -way


def off_square(run: Value, lift: Value) -> Value:
    """Mean of the arm's angles shut and open, from how far the contact stands nearer to the shaft when shut
    than when open (`run`) and the valve's lift: exact, whatever the arm."""
    return atan(run / lift)


def shaft_up(mean: Value, lift: Value, valve_arm: Value) -> Value:
    """How far the shaft is to be raised so that the arm is square at half lift, lowered where negative."""
    half = asin(lift / (2 * valve_arm * cos(mean)))
    return valve_arm * sin(mean) * cos(half)
