"""What heat makes of a stud's preload: the stud a spring that is pulled, what it clamps one that is pressed,
each part as warm as it is.

SI units, floats. A part is (length, section, modulus, expansion, warming). Only parts within the clamp count;
with the stud's own ends the load shifts by a little less (VDI 2230's thermal term, without its change of the
modulus).
"""

from collections.abc import Sequence

Part = tuple[float, float, float, float, float]


def give(parts: Sequence[Part]) -> float:
    """Change of length for a unit of force, m/N, of parts one behind the other."""
    return sum(length / (section * modulus) for length, section, modulus, *_ in parts)


def growth(parts: Sequence[Part]) -> float:
    """What the same parts grow by, free, m."""
    return sum(length * expansion * warming for length, _, _, expansion, warming in parts)


def preload(cold: float, stud: Sequence[Part], clamped: Sequence[Part]) -> float:
    """Preload at heat, N; none where the clamped parts have shrunk free of the stud."""
    return max(0.0, cold + (growth(clamped) - growth(stud)) / (give(stud) + give(clamped)))
