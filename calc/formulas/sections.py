"""Flat sections of ports: area and way round of a slot and of a D. Of plain or traced lengths, m.

A slot has straight sides and half-round ends. A D has a half-round roof over its whole width, straight sides
and a flat floor with rounded corners; it is half as high as wide at least. Plane geometry.
"""

from calc.core.working import PI, Value, greatest, least


def oval_area(width: Value, height: Value) -> Value:
    """Slot with half-round ends, of that width and height over all, m²."""
    short, long = least(width, height), greatest(width, height)
    return PI / 4 * short**2 + short * (long - short)


def oval_perimeter(width: Value, height: Value) -> Value:
    """Way round that slot, m."""
    short, long = least(width, height), greatest(width, height)
    return PI * short + 2 * (long - short)


def d_area(width: Value, height: Value, radius: Value) -> Value:
    """Half circle on a rectangle whose two lower corners are rounded, m². `height` ≥ half of `width`."""
    return PI / 8 * width**2 + width * (height - width / 2) - (2 - PI / 2) * radius**2


def d_perimeter(width: Value, height: Value, radius: Value) -> Value:
    """Way round that D, m."""
    return (1 + PI / 2) * width + 2 * (height - width / 2) - (4 - PI) * radius
