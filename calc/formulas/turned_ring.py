"""Mass and moment of inertia of what is turned about one axis: rings of even thickness, rings whose
thickness falls or rises in a straight line, and rows of holes.

Radii a < b, diameters and thicknesses in m, density kg/m³, mass kg, moment of inertia kg·m². Shells of the
radius r integrated over the ring (mechanics; any handbook).
"""

from calc.core.working import PI, Value


def ring_mass(a: Value, b: Value, at_inner: Value, at_outer: Value, density: Value) -> Value:
    """Of a ring between the radii a and b, whose thickness goes in a straight line from that at the inner to
    that at the outer."""
    return PI / 3 * density * (b - a) * (at_inner * (2 * a + b) + at_outer * (a + 2 * b))


def flat_mass(a: Value, b: Value, thickness: Value, density: Value) -> Value:
    """The same where it is of one thickness."""
    return PI * density * thickness * (b**2 - a**2)


def weights(a: Value, b: Value) -> tuple[Value, Value]:
    """By how much the thickness at the inner and at the outer radius counts in its moment of inertia, m³."""
    return 4 * a**3 + 3 * a**2 * b + 2 * a * b**2 + b**3, a**3 + 2 * a**2 * b + 3 * a * b**2 + 4 * b**3


def ring_inertia(
    a: Value, b: Value, at_inner: Value, at_outer: Value, of_inner: Value, of_outer: Value, density: Value
) -> Value:
    """Of such a ring about its axis; `of_inner` and `of_outer` are its `weights`."""
    return PI / 10 * density * (b - a) * (at_inner * of_inner + at_outer * of_outer)


def flat_inertia(a: Value, b: Value, thickness: Value, density: Value) -> Value:
    """The same where it is of one thickness."""
    return PI / 2 * density * thickness * (b**4 - a**4)


def depth_for_inertia(inertia: Value, inner: Value, outer: Value, density: Value) -> Value:
    """Thickness of a flat ring that has this moment of inertia, m."""
    return inertia / (PI / 2 * density * ((outer / 2) ** 4 - (inner / 2) ** 4))


def holes_mass(count: Value, diameter: Value, thickness: Value, density: Value) -> Value:
    """What straight holes through a wall take out of it."""
    return count * density * PI / 4 * diameter**2 * thickness


def holes_inertia(mass: Value, circle: Value, diameter: Value) -> Value:
    """The same about the axis of their pitch circle (Steiner): m·(R² + d²/8), whatever their number."""
    return mass * ((circle / 2) ** 2 + diameter**2 / 8)
