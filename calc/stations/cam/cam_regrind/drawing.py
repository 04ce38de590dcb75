"""The lobe as it was made and as it is ground, from the end, to scale, with what stands beside it."""

import math

from calc.core.drawing import Area, Circle, Dimension, Drawing, Label, Line, Points, Shape
from calc.core.result import say
from calc.formulas.lobe import lift_at, slope
from calc.stations.cam.cam_regrind.asked import JOURNAL, SAME, In
from calc.stations.cam.cam_regrind.ground import Ground


def outline(radius: float, lift: float, flank: float, law: str, steps: int = 180) -> Points:
    """A lobe under a flat foot, nose up: where the foot's face, h from the axis at an angle t, is touched
    h′ aside. Points that a hollow flank would fold back over are left at the foot's line."""
    points = []
    for n in range(steps):
        t = 2 * math.pi * n / steps - math.pi
        h = radius + float(lift_at(law, lift, flank, t))
        x = 1 - abs(t) / flank
        h1 = -math.copysign(lift * float(slope(law, x)) / flank, t) if x > 0 else 0.0
        points.append((-(h * math.sin(t) + h1 * math.cos(t)), h * math.cos(t) - h1 * math.sin(t)))
    return tuple(points)


def rounded(radius: float, lift: float, nose: float) -> Points:
    """Base circle, nose and the straight flanks that touch both."""
    nose = min(max(nose, 0.05 * radius), 0.95 * radius)
    away = radius + lift - nose
    half = math.acos(min(1.0, (radius - nose) / away))
    up = math.pi / 2

    def bow(y: float, r: float, start: float, end: float, steps: int) -> list[tuple[float, float]]:
        at = [start + (end - start) * n / steps for n in range(steps + 1)]
        return [(r * math.cos(a), y + r * math.sin(a)) for a in at]

    return (
        *bow(0, radius, up + half, up + 2 * math.pi - half, 72),
        *bow(away, nose, up - half, up + half, 24),
    )


def lobes(i: In, found: Ground) -> Drawing:
    made, now = float(i.base_made) / 2, float(found.base) / 2
    h0, h1 = float(i.lift_made), float(found.lift)
    nose = float(i.nose_radius) if i.nose_radius is not None else 0.4 * made
    old = rounded(made, h0, nose)
    folds = found.curve is not None and float(found.curve) <= 0
    if i.law == SAME or folds:
        new = rounded(now, h1, nose - float(found.heel_off))
    else:
        new = outline(now, h1, float(i.flank), i.law)
    top, low = max(made + h0, now + h1), max(made, now)
    shapes: list[Shape] = [Area(new, "a"), Line((*old, old[0]), "hidden"), Circle((0, 0), now, style="thin")]
    for beside in (i.core, i.journal if i.reach == JOURNAL else None):
        if beside is not None:
            shapes.append(Circle((0, 0), float(beside) / 2, style="hidden"))
    shapes += [
        Line(((0, -1.2 * low), (0, top + 0.2 * low)), "centre"),
        Line(((-1.2 * low, 0), (1.2 * low, 0)), "centre"),
        Dimension((-now, 0), (now, 0), found.base, away=-1.35 * low),
        Dimension((0, now), (0, now + h1), found.lift, away=-1.3 * low),
        Label((0, -0.4 * now), say("{d} off", d=found.heel_off), target=(0.71 * now, -0.71 * now)),
    ]
    return Drawing(
        "The lobe as made, dashed, and as ground",
        say(
            "A lobe from its end, its nose up. Dashed, as it was made; hatched, as ground: base circle {d},"
            " lift {h}. {a} are gone from the base circle on each side, {n} from the nose.",
            d=found.base,
            h=found.lift,
            a=found.heel_off,
            n=found.nose_off,
        ),
        tuple(shapes),
    )
