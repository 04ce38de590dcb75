"""The face seen from the side along its slope, the heights of its places drawn larger."""

import math

from calc.core.drawing import Area, Circle, Drawing, Label, Line
from calc.core.result import say
from calc.stations.crankcase.face_plane.face import Face


def side(face: Face) -> Drawing:
    """Looking across the steepest fall: what falls lies to the right."""
    plane = face.plane
    steep = math.hypot(plane.right, plane.up)
    way = (-plane.right / steep, -plane.up / steep) if steep > 1e-12 else (1.0, 0.0)
    base = min(h for _, _, h in face.points)
    seen = [(x * way[0] + y * way[1], h - base, name) for name, (x, y, h) in zip(face.names, face.points)]
    left, right = min(u for u, _, _ in seen), max(u for u, _, _ in seen)
    long = right - left
    most = max(max(h for _, h, _ in seen), 1e-6)
    times = max(1, min(int(0.25 * long / most), 100_000))
    middle = plane.start - base

    def at(u: float, off: float) -> tuple[float, float]:
        return u, (middle - steep * u + off) * times

    half = plane.width / 2
    ends = (left - 0.05 * long, right + 0.05 * long)
    return Drawing(
        "The face seen along itself",
        say(
            "Heights of {n} places over the lowest, seen so that the face falls to the right. The two lines"
            " are the narrowest zone that holds them, {f} wide.",
            n=str(len(seen)),
            f=face.flatness,
        ),
        (
            Area(
                (
                    (ends[0], -0.25 * long),
                    (ends[1], -0.25 * long),
                    (ends[1], -0.02 * long),
                    (ends[0], -0.02 * long),
                ),
                "a",
            ),
            *(Line((at(ends[0], off), at(ends[1], off)), "band") for off in (half, -half)),
            Line((at(ends[0], 0), at(ends[1], 0)), "centre"),
            *(Circle((u, h * times), 0.012 * long, "solid") for u, h, _ in seen),
            *(Label((u, h * times + 0.035 * long), name) for u, h, name in seen),
        ),
        say("heights drawn {n} times as large", n=str(times)),
    )
