"""Where the holes of a pitch circle stand."""

import math
from typing import NamedTuple

from calc.formulas import trigonometry as trig
from calc.stations.measuring.bolt_circle.asked import AGAINST, In


class Place(NamedTuple):
    """A hole: its angle (rad, 0 up to a turn) and where that puts it (m)."""

    angle: float
    x: float
    y: float


def places_of(i: In) -> list[Place]:
    """Where each hole stands, the first one first."""
    turn, radius = 2 * math.pi, float(i.pitch_circle) / 2
    pitch = float(trig.hole_pitch(round(float(i.holes)))) * (1 if i.sense == AGAINST else -1)
    angles = [(float(i.first) + n * pitch) % turn for n in range(round(float(i.holes)))]
    angles = [0.0 if turn - a < 1e-9 else a for a in angles]
    x, y = float(i.centre_x), float(i.centre_y)
    return [Place(a, x + radius * math.cos(a), y + radius * math.sin(a)) for a in angles]
