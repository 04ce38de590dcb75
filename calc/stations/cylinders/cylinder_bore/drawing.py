"""The worst bore along its axis, its wear many times too large, with the bore that takes it away."""

from calc.core.drawing import Area, Dimension, Drawing, Label, Line
from calc.core.result import say
from calc.stations.cylinders.cylinder_bore.asked import CYLINDERS, HEIGHTS, In
from calc.stations.cylinders.cylinder_bore.lot import Lot


def worn_bore(i: In, lot: Lot) -> Drawing:
    """Radii at three heights, the bottom at 0; the finished bore dashed."""
    n = CYLINDERS.index(lot.worst.name) * len(HEIGHTS)
    rows = [row for row in i.bores[n : n + len(HEIGHTS)] if row is not None]
    base, high = float(lot.worst.smallest), 1.1 * float(lot.worst.smallest)
    over = max([float(d) - base for row in rows for d in row] + [abs(float(lot.aim) - base), 1e-6])
    r, scale = base / 2, 0.12 * base / over
    ys = [high, 0.6 * high, 0.1 * high]

    def wall(way: int, side: int) -> tuple:
        points = [(side * (r + (float(row[way]) - base) * scale), y) for row, y in zip(rows, ys)]
        return (points[0], *points[1:], (side * (r + (float(rows[-1][way]) - base) * scale), 0.0))

    out = r + 0.3 * base
    new = r + (float(lot.aim) - base) * scale
    solids = [Area((*wall(0, side), (side * out, 0.0), (side * out, high)), "a") for side in (-1, 1)]
    lines = [Line(((side * new, 0.0), (side * new, high)), "hidden") for side in (-1, 1)]
    along = [Line(wall(1, side), "thin") for side in (-1, 1)]
    sizes = [
        Dimension((-r, y), (r, y), row[0]) for row, y in zip(rows, (0.92 * high, 0.6 * high, 0.1 * high))
    ]
    return Drawing(
        "The worst bore",
        say(
            "Cylinder {n} cut through: across the pin hatched, along the pin the thin line, {f} dashed.",
            n=lot.worst.name,
            f=lot.aim,
        ),
        (
            *solids,
            *along,
            *lines,
            Line(((0, -0.05 * high), (0, 1.05 * high)), "centre"),
            *sizes,
            Label((0, -0.12 * high), say("cylinder {n}, across the pin", n=lot.worst.name)),
        ),
        f"wear drawn about {float(f'{scale:.1g}'):.0f} times too large",
    )
