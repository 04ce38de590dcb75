"""A lobe under a lifter with a flat foot: how sharp it is, and how far off the axis the foot is touched.

Radius of curvature R + s + s″ and contact off the axis s′, s the lift over the cam's angle (Norton, Cam
Design and Manufacturing Handbook, from memory). Lengths in m, angles at the cam in radians; `x` runs from 0
on the base circle to 1 at the nose, as in calc.formulas.lobe.
"""

from calc.core.working import Value
from calc.formulas.lobe import bend, least_between, rise, slope


def radius_at(law: str, radius: Value, lift: Value, flank: Value, x: Value) -> Value:
    """Radius of curvature of a lobe on a base circle of `radius`; negative where it would have to be hollow,
    and then no flat foot follows it."""
    return radius + lift * rise(law, x) + lift * bend(law, x) / flank**2


def off_axis(law: str, lift: Value, flank: Value, x: Value) -> Value:
    """How far off the lifter's axis its foot is touched; the base circle's size is not in it."""
    return lift * slope(law, x) / flank


def sharpest(law: str, flank: float) -> float:
    """Where the radius of curvature is least; it hangs on neither lift nor base circle."""
    return least_between(lambda x: float(radius_at(law, 0.0, 1.0, flank, x)), 0.0, 1.0)


def steepest(law: str) -> float:
    """Where the foot is touched farthest off."""
    return least_between(lambda x: -float(slope(law, x)), 0.0, 1.0)
