"""The profile that a round-nosed edge leaves when it is fed along: its height and its mean roughness.

Between two passes a distance f apart the metal stands between the arc of the one (on the side to which the
tool is fed) and the arc, or beyond it the straight end edge, of the next. Lengths in m, angles in rad. Plain
geometry of a tool that copies itself: no chatter, no built-up edge, no wear.
"""

import math
from typing import NamedTuple


class Profile(NamedTuple):
    """Peak to valley Rt and arithmetic mean Ra, m, and whether the end edge has a share in it."""

    height: float
    mean: float
    end_edge: bool


def profile(feed: float, nose: float, end_edge: float) -> Profile:
    """Of a feed, 0 to 2·nose, a nose radius, and the angle between the end edge and the finished face, over 0
    to 90°.

    The peak is where both sides meet; the mean line has as much metal above it as below.
    """
    reach = nose * math.sin(end_edge)  # of the arc, on the side of the end edge
    if feed <= 2 * reach:
        x, straight = feed / 2, False
    else:
        x, straight = _meeting(feed, nose, end_edge), True
    area = _under_arc(x, nose) + _under_end(feed - x, nose, end_edge)
    mean = area / feed
    below = mean * _arc_at(mean, nose) - _under_arc(_arc_at(mean, nose), nose)
    u = _end_at(mean, nose, end_edge)
    below += mean * u - _under_end(u, nose, end_edge)
    return Profile(_arc(x, nose), 2 * below / feed, straight)


def feed_for(mean: float, nose: float, end_edge: float) -> float:
    """The largest feed, m, whose profile has at most that mean roughness; 2·nose where all have."""
    low, high = 0.0, 2 * nose * (1 - 1e-12)
    if profile(high, nose, end_edge).mean <= mean:
        return high
    for _ in range(60):
        middle = (low + high) / 2
        low, high = (middle, high) if profile(middle, nose, end_edge).mean <= mean else (low, middle)
    return low


def height_at(u: float, nose: float, end_edge: float | None = None) -> float:
    """Height of the edge, m, at a distance from its deepest point, 0 to nose; on the side of the end edge
    where that is told."""
    reach = nose if end_edge is None else nose * math.sin(end_edge)
    if u <= reach:
        return _arc(u, nose)
    return math.inf if end_edge is None else _arc(reach, nose) + (u - reach) * math.tan(end_edge)


def _meeting(feed: float, nose: float, end_edge: float) -> float:
    """Where the arc of one pass meets the straight end edge of the next, from the deepest point of the
    first."""
    t = math.tan(end_edge)
    rise = nose * (1 - math.cos(end_edge)) + (feed - nose * math.sin(end_edge)) * t - nose
    return (t * rise + math.sqrt(max(0.0, (1 + t * t) * nose * nose - rise * rise))) / (1 + t * t)


def _arc(x: float, nose: float) -> float:
    """Height of the arc at a distance from its deepest point."""
    return x * x / (nose + math.sqrt(max(0.0, nose * nose - x * x)))


def _arc_at(height: float, nose: float) -> float:
    """How far from its deepest point the arc has a height."""
    return math.sqrt(max(0.0, height * (2 * nose - height)))


def _under_arc(x: float, nose: float) -> float:
    """Area between the arc and its tangent, from the deepest point to x."""
    root = math.sqrt(max(0.0, nose * nose - x * x))
    return nose * x - (x * root + nose * nose * math.asin(min(1.0, x / nose))) / 2


def _under_end(u: float, nose: float, end_edge: float) -> float:
    """The same on the side of the end edge, which is straight beyond the arc's reach."""
    reach = nose * math.sin(end_edge)
    if u <= reach:
        return _under_arc(u, nose)
    start, long = _arc(reach, nose), u - reach
    return _under_arc(reach, nose) + start * long + math.tan(end_edge) * long * long / 2


def _end_at(height: float, nose: float, end_edge: float) -> float:
    """How far from the deepest point that side has a height."""
    reach = nose * math.sin(end_edge)
    start = _arc(reach, nose)
    if height <= start:
        return _arc_at(height, nose)
    return reach + (height - start) / math.tan(end_edge)
