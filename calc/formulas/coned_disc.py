"""Force of a coned disc spring between its edges, as a clutch's diaphragm is taken to be.

Almen and László's formula, as DIN EN 16984 has it (from memory). Diameters, thickness and heights in m,
modulus in
Pa, force in N. Past the top of its hump the force falls as the disc is pressed flatter.
"""

from calc.core.working import PI, Value, log


def force(
    outside: Value, inside: Value, thick: Value, cone: Value, flattened: Value, modulus: Value, poisson: Value
) -> Value:
    """`cone` is the free height of the cone within its thickness, `flattened` by how much it is pressed
    flat.
    0 < inside < outside."""
    ratio = outside / inside
    k = ((ratio - 1) / ratio) ** 2 / ((ratio + 1) / (ratio - 1) - 2 / log(ratio)) / PI
    stiff = 4 * modulus / (1 - poisson**2) * thick**3 / (k * outside**2)
    return stiff * flattened * ((cone - flattened) * (cone - flattened / 2) / thick**2 + 1)
