"""A round cap, the slice off a ball: V = π·h·(3a² + h²)/6, where `a` is the radius of its mouth."""

import math


def cap_depth(volume: float, area: float) -> float:
    """Depth of the cap with that volume, m³, over a mouth of that area, m²; in m."""
    a2 = area / math.pi
    h = 2 * volume / area  # of a flat one; more than the true depth, so that Newton's steps come down to it
    for _ in range(60):
        h -= (math.pi * h * (3 * a2 + h * h) / 6 - volume) / (math.pi * (a2 + h * h) / 2)
    return h
