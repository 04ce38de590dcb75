"""Vectors across a shaft: what has a size and an angle, added, turned, and read back.

Numbers keep their working and their dimensions, which complex numbers would not.
"""

from __future__ import annotations

import math
from typing import NamedTuple

from calc.core.kinds import ANGLE
from calc.core.working import Form, Number, atan, constant, cos, form, sin, sqrt, step


class Vector(NamedTuple):
    """`x` towards the mark from which angles count, `y` a quarter of a turn on."""

    x: Number
    y: Number

    def plus(self, other: Vector) -> Vector:
        return Vector(self.x + other.x, self.y + other.y)

    def less(self, other: Vector) -> Vector:
        return Vector(self.x - other.x, self.y - other.y)

    def scaled(self, by: Number | float) -> Vector:
        return Vector(self.x * by, self.y * by)

    def times(self, other: Vector) -> Vector:
        """Sizes multiplied, angles added."""
        return Vector(self.x * other.x - self.y * other.y, self.x * other.y + self.y * other.x)

    def over(self, other: Vector) -> Vector:
        """Sizes divided, angles subtracted. ZeroDivisionError where `other` has no size."""
        square = other.x**2 + other.y**2
        return Vector(
            (self.x * other.x + self.y * other.y) / square, (self.y * other.x - self.x * other.y) / square
        )

    def size(self) -> Number:
        return sqrt(self.x**2 + self.y**2)

    def direction(self) -> Number:
        """Angle from the mark, 0 to 2π; 0 where it has no size."""
        x, y = float(self.x), float(self.y)
        if not x and not y:
            return constant("φ", "Angle", form(ANGLE, 0), 0.0)
        turn = constant("τ", "Whole turn", form(ANGLE, 0), 2 * math.pi)
        if abs(x) >= abs(y):
            angle, behind = atan(self.y / self.x), x < 0
        else:
            angle, behind = turn / 4 - atan(self.x / self.y), y < 0
        if behind:
            angle = angle + turn / 2
        return angle + turn if float(angle) < 0 else angle

    def named(self, symbol: str, label: str, shape: Form) -> Vector:
        """Both parts as lines of the working."""
        return Vector(
            step(f"{symbol}_x", f"{label}, towards the mark", shape, self.x),
            step(f"{symbol}_y", f"{label}, a quarter of a turn on", shape, self.y),
        )


def polar(size: Number, angle: Number) -> Vector:
    return Vector(size * cos(angle), size * sin(angle))
