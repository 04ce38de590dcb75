"""Lift of a lobe by the smooth laws that cams are designed with, cycloid and polynomials; and the harmonic.

A flank goes from the base circle, x = 0, to the nose, x = 1; `rise` is the share of the lift that is reached
there, `bend` its second derivative by x, which times lift·ω²/β² is the follower's acceleration (β the flank's
angle at the cam in radians); `slope` is the first. Both flanks are taken alike. Laws as in Norton's Cam
Design and Manufacturing Handbook, from memory; a lobe of a real cam has ramps besides.
"""

import math
from collections.abc import Callable

from calc.core.working import PI, Value, cos, sin

CYCLOID, POLY_345, POLY_4567 = "cycloid", "345", "4567"
HARMONIC = (
    "harmonic"  # old lobes, of arcs or nearly; its acceleration steps at both ends, so it is none of LAWS
)
LAWS = {POLY_4567: "polynomial 4-5-6-7, soft ends", POLY_345: "polynomial 3-4-5, fuller", CYCLOID: "cycloid"}


def rise(law: str, x: Value) -> Value:
    """Share of the lift, 0 to 1, at x from 0 to 1. ValueError for a law that is none."""
    if law == CYCLOID:
        return x - sin(2 * PI * x) / (2 * PI)
    if law == POLY_345:
        return 10 * x**3 - 15 * x**4 + 6 * x**5
    if law == POLY_4567:
        return 35 * x**4 - 84 * x**5 + 70 * x**6 - 20 * x**7
    if law == HARMONIC:
        return (1 - cos(PI * x)) / 2
    raise ValueError(f"there is no law {law!r}; there are {', '.join(LAWS)}")


def slope(law: str, x: Value) -> Value:
    """First derivative of `rise`; times lift/β it is how far a flat foot is touched off the lifter's axis."""
    if law == CYCLOID:
        return 1 - cos(2 * PI * x)
    if law == POLY_345:
        return 30 * x**2 - 60 * x**3 + 30 * x**4
    if law == POLY_4567:
        return 140 * x**3 - 420 * x**4 + 420 * x**5 - 140 * x**6
    if law == HARMONIC:
        return PI * sin(PI * x) / 2
    raise ValueError(f"there is no law {law!r}; there are {', '.join(LAWS)}")


def bend(law: str, x: Value) -> Value:
    """Second derivative of `rise`; negative near the nose, where the spring has to hold the follower."""
    if law == CYCLOID:
        return 2 * PI * sin(2 * PI * x)
    if law == POLY_345:
        return 60 * x - 180 * x**2 + 120 * x**3
    if law == POLY_4567:
        return 420 * x**2 - 1680 * x**3 + 2100 * x**4 - 840 * x**5
    if law == HARMONIC:
        return PI**2 * cos(PI * x) / 2
    raise ValueError(f"there is no law {law!r}; there are {', '.join(LAWS)}")


def lift_at(law: str, lift: Value, flank: Value, off: Value) -> Value:
    """Lift of the lobe, m, where its nose is `off` away, both angles at the cam in radians; 0 on the base
    circle."""
    x = 1 - (off if off > 0 else -off) / flank
    return lift * rise(law, x) if x > 0 else 0 * lift


def least_between(worked: Callable[[float], float], low: float, high: float, steps: int = 720) -> float:
    """Where a smooth function of a float is least between two ends: the best of even steps, then golden
    section beside it, to 1e-10 of the width."""
    width = (high - low) / steps
    best = min((low + n * width for n in range(steps + 1)), key=worked)
    a, b = max(low, best - width), min(high, best + width)
    golden = (math.sqrt(5) - 1) / 2
    while b - a > 1e-10 * (high - low):
        c, d = b - golden * (b - a), a + golden * (b - a)
        a, b = (a, d) if worked(c) <= worked(d) else (c, b)
    return (a + b) / 2
