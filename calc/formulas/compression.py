"""How far a cylinder squeezes its gas: volumes over a piston at the top of its stroke, and the ratio.

Lengths in m, volumes in m³. The ratio is the geometric one, (swept + left) ÷ left; no valve timing in it.
"""

from calc.core.working import PI, Value


def disc(diameter: Value, height: Value) -> Value:
    """Volume of a round, flat space; less than nothing where the height is."""
    return PI * diameter**2 / 4 * height


def crown_from_fill(bore: Value, lowered: Value, filled: Value) -> Value:
    """Volume of a piston's crown above the plane of its edge, a bowl less than nothing.

    The edge lies `lowered` below the cylinder's face, under a flat plate; `filled` is what goes in there.
    """
    return disc(bore, lowered) - filled


def ratio(swept: Value, left: Value) -> Value:
    """Compression ratio of a stroke that sweeps `swept` and leaves `left` (more than 0)."""
    return 1 + swept / left


def left_for(swept: Value, wanted: Value) -> Value:
    """Volume that must be left for a ratio (more than 1)."""
    return swept / (wanted - 1)
