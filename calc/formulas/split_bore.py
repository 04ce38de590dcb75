"""A bore that is parted by a joint, as of a rod's big end: what cutting the joint's faces makes of it, and
what then cleans it up.

Angles in radians from the direction along the rod (the small end's side), positive to the right. After the
cut, places are told from the middle of the new joint: x to the right, y towards the small end. The old bore
is taken as an oval with a centre, which is what three two-point readings 60° apart can show: diameter = mean
+ stretch·cos 2φ + lean·sin 2φ. Odd lobes stay unseen.

Cutting a off the rod's face brings the rod's half down by a, cutting b off the cap's face brings the cap's
half up by b. Of a round bore of radius R two arcs are left, with their centres a below and b above the joint:
2R − a − b high, and √(R² − a²) and √(R² − b²) wide to each side at the joint. So a cut narrows the bore along
the rod and leaves its width at the joint, but for a²/2R, as it was.

Lengths in any one unit. 0 ≤ a, b < R; the oval small against R.
"""

import math
from functools import cache
from typing import TypeVar

from calc.core.working import Number

# Directions tried in half a turn: the farthest place is found to within 4 parts in 10⁵ of the oval.
STEPS = 360
PARTING = math.pi / 2

N = TypeVar("N", float, Number)  # plain or traced, all alike
Oval = tuple[float, float, float]  # mean diameter, stretch along the rod, lean to the right
Half = tuple[tuple[float, float], ...]  # places of half a bore
Direction = tuple[float, float, float, float, float]  # angle φ, sin φ, cos φ, cos 2φ, sin 2φ


def oval(along: N, right: N, left: N) -> tuple[N, N, N]:
    """Mean diameter, stretch along the rod, and lean to the right, of readings at 0°, +60° and −60°. Exact
    for such an oval."""
    return (along + right + left) / 3, (2 * along - right - left) / 3, (right - left) / 3**0.5


def across(along: N, right: N, left: N) -> N:
    """Diameter of that oval at the joint, 90° from the rod: mean − stretch."""
    return (2 * (right + left) - along) / 3


def radius_at(bore: Oval, angle: float) -> float:
    """Old radius in a direction; `bore` is what `oval` gives."""
    return _radius(bore, math.cos(2 * angle), math.sin(2 * angle))


def _radius(bore: Oval, cos2: float, sin2: float) -> float:
    mean, stretch, lean = bore
    return (mean + stretch * cos2 + lean * sin2) / 2


def surface(bore: Oval, rod_cut: float, cap_cut: float, steps: int = STEPS) -> tuple[Half, Half]:
    """The bore as it stands after the cut, bolted up: the rod's half from right to left and the cap's from
    left to right, each as (x, y) points, its edges at the joint included."""
    halves: list[Half] = []
    for side, cut in ((1, rod_cut), (-1, cap_cut)):
        right, left = (_edge(bore, cut, end) for end in (PARTING, -PARTING))
        directions = (
            _direction(right),
            *(d for d in _directions(steps) if left < d[0] < right),
            _direction(left),
        )
        # the same on the opposite side: an oval has a centre
        radii = (_radius(bore, cos2, sin2) for _, _, _, cos2, sin2 in directions)
        halves.append(
            tuple(
                [
                    (side * radius * sin, side * (radius * cos - cut))
                    for radius, (_, sin, cos, _, _) in zip(radii, directions)
                ]
            )
        )
    rod_half, cap_half = halves
    return rod_half, cap_half


def _direction(angle: float) -> Direction:
    return angle, math.sin(angle), math.cos(angle), math.cos(2 * angle), math.sin(2 * angle)


@cache  # tried anew for each rod and key
def _directions(steps: int) -> tuple[Direction, ...]:
    """Directions of half a turn, from right to left."""
    return tuple(_direction(PARTING - math.pi * i / steps) for i in range(steps + 1))


def _edge(bore: Oval, cut: float, end: float) -> float:
    """Direction, from the half's own middle, in which the old bore meets the new face: radius·cos = cut, by
    halving."""
    if not cut:
        return end
    middle, out = 0.0, end
    for _ in range(60):
        half = (middle + out) / 2
        if radius_at(bore, half) * math.cos(half) > cut:
            middle = half
        else:
            out = half
    return middle


def farthest(bore: Oval, rod_cut: float, cap_cut: float, centre: float = 0.0) -> tuple[float, float]:
    """Distance of the bore's farthest place from a centre that lies `centre` above the joint, and its
    direction there: a circle of that radius is the smallest that cleans the bore up all round."""
    distance, x, y = max(
        [
            (math.hypot(x, y - centre), x, y - centre)
            for half in surface(bore, rod_cut, cap_cut)
            for x, y in half
        ]
    )
    return distance, math.atan2(x, y)


def more_cut(
    bore: Oval,
    rod_cut: float,
    cap_cut: float,
    radius: float,
    most: float,
    centre: float = 0.0,
    rod: float = 1,
    cap: float = 1,
) -> float | None:
    """What must further come off each face so that a circle of that radius cleans up; None where `most` is
    not enough, as where the bore is too wide at the joint. Equal cuts leave the centre where it was; rod or
    cap 0: off the other face only, the centre kept.
    """

    def clean(more: float) -> bool:
        return farthest(bore, rod_cut + rod * more, cap_cut + cap * more, centre)[0] <= radius

    if clean(0.0):
        return 0.0
    if not clean(most):
        return None
    low, high = 0.0, most
    for _ in range(30):
        middle = (low + high) / 2
        low, high = (low, middle) if clean(middle) else (middle, high)
    return high
