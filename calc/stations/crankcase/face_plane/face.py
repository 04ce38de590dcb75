"""The face as a plane with its deviations: how it leans, how flat it is, and what must come off it."""

import math
from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import Number, atan, constant, sqrt, step
from calc.formulas import best_fit
from calc.reference import sources
from calc.stations.crankcase.face_plane.asked import DEPTH, PLACES, ROUND, In
from calc.stations.crankcase.face_plane.told import Out
from calc.stations.shared.forms import DEGREES, ROUGH, SIZE, STRAIN


class Face(NamedTuple):
    """`points` are x, y, height in metres, in the order of the places; `plane` is that of the least largest
    deviation."""

    names: list[str]
    points: list[best_fit.Point3]
    plane: best_fit.Plane
    flatness: Number
    tilt: Number
    cut: Number
    cut_along: Number
    angle: Number
    downhill: Number
    resting_tilt: Number
    resting_deep: Number
    spread: Number  # highest place less the lowest


def face_of(i: In) -> Face:
    names = [n for n, row in zip(PLACES, i.readings) if row is not None]
    points = _points(i)
    try:
        plane = best_fit.best_plane(points)
        middle = _middle(points)
        resting = best_fit.resting_plane(points, middle)
    except ValueError:
        raise impossible(
            f"readings.{names[0]}.2",
            "and the others lie in one line, which makes no face; give places apart both ways",
        ) from None
    heights = [h for _, _, h in points]
    zone = constant(
        "f_0",
        "Width of the narrowest zone of all places, by trial",
        SIZE,
        plane.width,
        sources.LEAST_DEVIATION,
    )
    right, up = (
        constant(f"m_{mark}", f"Slope {words}, of that zone", STRAIN, value)
        for mark, words, value in (("x", "to the right", plane.right), ("y", "upwards", plane.up))
    )
    rest = constant(
        "m_r", "Slope of what rests on the highest places", STRAIN, math.hypot(resting.right, resting.up)
    )
    across = i.across if i.layout == ROUND else constant("D_a", "Width of the places", ROUGH, _width(points))
    steep = step("m", "Slope of the face", STRAIN, sqrt(right**2 + up**2))
    spread = constant("Δr", "Highest place less the lowest", SIZE, max(heights) - min(heights))
    deep = constant("g_0", "Lowest place under what rests, by trial", SIZE, resting.width)
    flatness = Out.flatness(zone)
    return Face(
        names,
        points,
        plane,
        flatness,
        Out.tilt(steep * across),
        Out.cut(spread + i.allowance),
        Out.cut_along(flatness + i.allowance),
        Out.tilt_angle(atan(steep)),
        Out.downhill(constant("ψ_0", "Direction in which it falls", DEGREES, _downhill(plane))),
        Out.resting_tilt(rest * across),
        Out.resting_deep(deep),
        spread,
    )


def _points(i: In) -> list[best_fit.Point3]:
    """Heights over the datum, more upwards, whichever way the gauge counts."""
    sign = -1.0 if i.reads == DEPTH else 1.0
    rows = [row for row in i.readings if row is not None]
    if i.layout != ROUND:
        return [(float(x), float(y), sign * float(r)) for r, x, y in rows]
    turn, radius = 2 * math.pi / len(rows), float(i.across) / 2
    return [
        (radius * math.sin(k * turn), radius * math.cos(k * turn), sign * float(row[0]))
        for k, row in enumerate(rows)
    ]


def _middle(points: list[best_fit.Point3]) -> best_fit.Point2:
    return sum(x for x, _, _ in points) / len(points), sum(y for _, y, _ in points) / len(points)


def _width(points: list[best_fit.Point3]) -> float:
    """The greatest distance between two places, m."""
    return max(math.hypot(a[0] - b[0], a[1] - b[1]) for a in points for b in points)


def _downhill(plane: best_fit.Plane) -> float:
    """Direction of the steepest fall, from upwards with the clock, 0 to 2π; 0 where it is level."""
    if math.hypot(plane.right, plane.up) < 1e-12:
        return 0.0
    return math.atan2(-plane.right, -plane.up) % (2 * math.pi)
