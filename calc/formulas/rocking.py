"""How far a stem rocks in its guide."""

from calc.core.working import Value


def rocking_factor(height: Value, length: Value) -> Value:
    """Dial reading over clearance, from one side to the other: 1 + 2a/L.

    A stem that leans touches at both ends of the guide, so over the length L its axis crosses by the
    clearance c. At a height a beyond the end it stands c/2 + a·c/L off the middle, and as much on the other
    side when it leans back. Lean is small: second order left out. Lengths m, L > 0.
    """
    return 1 + 2 * height / length
