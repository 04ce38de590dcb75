"""What heat makes of a stud's preload: the stud a spring that is pulled, what it clamps one that is pressed,
each part as warm as it is.

SI units, plain or traced numbers. A part is (length, section, modulus, expansion, warming). Only parts within
the clamp count; with the stud's own ends the load shifts by a little less (VDI 2230's thermal term, without
its change of the modulus).
"""

from collections.abc import Iterable, Sequence

from calc.core.working import Value, greatest

Part = tuple[Value, Value, Value, Value, Value]


def give(springs: Iterable[tuple[Value, Value, Value]]) -> Value:
    """Change of length for a unit of force, m/N, of springs one behind the other: (length, section,
    modulus)."""
    return sum(length / (section * modulus) for length, section, modulus in springs)


def growth(parts: Sequence[Part]) -> Value:
    """What the same parts grow by, free, m."""
    return sum(length * expansion * warming for length, _, _, expansion, warming in parts)


def change(apart: Value, give: Value) -> Value:
    """Preload gained, N, where the clamped parts would outgrow the stud by `apart`, m, and `give` is that of
    stud and clamped parts together, m/N."""
    return apart / give


def preload(cold: Value, stud: Sequence[Part], clamped: Sequence[Part]) -> Value:
    """Preload at heat, N; none where the clamped parts have shrunk free of the stud."""
    springs = give(part[:3] for part in (*stud, *clamped))
    return greatest(cold + change(growth(clamped) - growth(stud), springs), 0.0)
