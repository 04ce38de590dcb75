"""Stress in a disc that spins: flat ones in closed form, stepped ones ring by ring.

Plane stress, elastic, even about its middle plane (Timoshenko, Strength of Materials II, rotating
discs). In a
ring of even thickness the radius r moves out by

    u = A·r + B/r − c·r³,  c = (1 − ν²)·ρ·ω²/(8·E),

and where two rings meet, u and the force σ_r·h over a unit of edge are the same on both sides. Corners
where
thickness jumps raise the stress beyond this, and holes off the middle do: `at_a_hole`.

Radii and thicknesses in m, density kg/m³, turns in 1/s, stresses and moduli in Pa. Poisson's ratio 0 to
0.5.
"""

from collections.abc import Sequence
from typing import NamedTuple

from calc.core.working import PI, Value

Steps = Sequence[tuple[float, float, float]]
"""Rings from the inside outwards, each from a radius to a radius with a thickness; each begins where the
one
before it ends. The first may begin at 0: a disc without a bore."""


class Stress(NamedTuple):
    """At a radius: hoop and radial stress, Pa, and how far the radius moves out, m."""

    radius: float
    hoop: float
    radial: float
    growth: float


class Disc(NamedTuple):
    """A stepped disc at one speed: its constants A and B ring by ring."""

    steps: Steps
    constants: tuple[tuple[float, float], ...]
    load: float  # ρ·ω²
    modulus: float
    poisson: float

    def at(self, radius: float, ring: int | None = None) -> Stress:
        """In that ring, or in the first that holds the radius."""
        n = self._ring(radius) if ring is None else ring
        return _stress(self, radius, *self.constants[n])

    def _ring(self, radius: float) -> int:
        return next(n for n, (_, outer, _) in enumerate(self.steps) if radius <= outer * (1 + 1e-12))

    def greatest_hoop(self) -> Stress:
        """Where the hoop stress is greatest: at an edge of a ring, or where it has a turn inside one."""
        found = []
        for n, (inner, outer, _) in enumerate(self.steps):
            found += [self.at(inner, n), self.at(outer, n)]
            b, nu = self.constants[n][1], self.poisson
            turn = -8 * self.modulus * b / ((1 + nu) * (1 + 3 * nu) * self.load)
            if inner**4 < turn < outer**4:
                found.append(self.at(turn**0.25, n))
        return max(found, key=lambda s: s.hoop)


def spinning(steps: Steps, density: float, turns: float, modulus: float, poisson: float) -> Disc:
    """The disc at that speed, its edges free. Shot through the rings once from a bore that does not move
    and once
    from one that moves by a unit without spin: the two are added so that nothing pulls at the outside."""
    load = density * (2 * PI * turns) ** 2
    zero, unit = (
        _through(steps, start, load * spins, modulus, poisson) for start, spins in ((0.0, 1), (1.0, 0))
    )
    share = -zero[1] / unit[1]
    constants = tuple((a0 + share * a1, b0 + share * b1) for (a0, b0), (a1, b1) in zip(zero[0], unit[0]))
    return Disc(steps, constants, load, modulus, poisson)


def _through(
    steps: Steps, start: float, load: float, modulus: float, poisson: float
) -> tuple[list[tuple[float, float]], float]:
    """The constants of all rings, and the force at the outside, for one start: how far the bore moves,
    or A where
    there is none."""
    found: list[tuple[float, float]] = []
    moved = pull = 0.0
    for n, (inner, outer, thick) in enumerate(steps):
        if n == 0 and inner == 0:
            a, b = start, 0.0
        else:
            a, b = _from_edge(inner, start if n == 0 else moved, pull / thick, load, modulus, poisson)
        found.append((a, b))
        edge = _stress(Disc(steps, (), load, modulus, poisson), outer, a, b)
        moved, pull = edge.growth, edge.radial * thick
    return found, pull


def _from_edge(
    radius: float, moved: float, radial: float, load: float, modulus: float, nu: float
) -> tuple[float, float]:
    """A and B from how far an edge moves and what pulls at it."""
    c = (1 - nu**2) * load / (8 * modulus)
    straight = moved / radius + c * radius**2  # A + B/r²
    pulled = radial * (1 - nu**2) / modulus + (3 + nu) * c * radius**2  # (1 + ν)·A − (1 − ν)·B/r²
    a = (pulled + (1 - nu) * straight) / 2
    return a, (straight - a) * radius**2


def _stress(disc: Disc, r: float, a: float, b: float) -> Stress:
    nu, E = disc.poisson, disc.modulus
    c = (1 - nu**2) * disc.load / (8 * E)
    over = b / r**2 if r else 0.0
    scale = E / (1 - nu**2)
    return Stress(
        r,
        scale * ((1 + nu) * a + (1 - nu) * over - (1 + 3 * nu) * c * r**2),
        scale * ((1 + nu) * a - (1 - nu) * over - (3 + nu) * c * r**2),
        a * r + over * r - c * r**3,
    )


# closed forms


def flat_bore_hoop(inner: Value, outer: Value, density: Value, turns: Value, poisson: Value) -> Value:
    """Hoop stress at the bore of a flat disc, the greatest in it; with the smallest of bores it is twice
    that in
    the middle of a disc without one. Radii; 0 < inner < outer."""
    return density * (2 * PI * turns) ** 2 / 4 * ((3 + poisson) * outer**2 + (1 - poisson) * inner**2)


def flat_rim_hoop(inner: Value, outer: Value, density: Value, turns: Value, poisson: Value) -> Value:
    """Hoop stress at the outside of the same."""
    return density * (2 * PI * turns) ** 2 / 4 * ((1 - poisson) * outer**2 + (3 + poisson) * inner**2)


def solid_middle(outer: Value, density: Value, turns: Value, poisson: Value) -> Value:
    """Hoop and radial stress in the middle of a flat disc without a bore."""
    return (3 + poisson) / 8 * density * (2 * PI * turns) ** 2 * outer**2


def mean_hoop(steps: Sequence[tuple[Value, Value, Value]], density: Value, turns: Value) -> Value:
    """What pulls the two halves apart over the section that holds them, whatever the stress is in between:
    ρ·ω²·∫h·r²dr ÷ ∫h·dr."""
    moment = sum((h * (b**3 - a**3) / 3 for a, b, h in steps), 0)
    section = sum((h * (b - a) for a, b, h in steps), 0)
    return density * (2 * PI * turns) ** 2 * moment / section


def at_a_hole(first: Value, second: Value) -> Value:
    """Greatest stress at the edge of a small round hole in a plate that is pulled in two directions, the
    first the
    harder: 3·σ₁ − σ₂ (Kirsch)."""
    return 3 * first - second


def dead_weight(inner: Value, outer: Value, filled: Value, density: Value, turns: Value) -> Value:
    """Pull on a unit of the cylinder at the inner radius from what hangs on it up to the outer one and
    carries
    nothing, as teeth do; `filled` is the share of that ring that is metal. ∫ρω²r²dr ÷ inner radius."""
    return filled * density * (2 * PI * turns) ** 2 * (outer**3 - inner**3) / (3 * inner)
