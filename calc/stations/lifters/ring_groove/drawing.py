"""One side of the body, cut through groove and ring."""

from calc.core.drawing import Area, Dimension, Drawing, box
from calc.core.result import say


def section(bore, groove, width, ring, lip, body, breadth, depth) -> Drawing:
    """One side of the body, cut through the axis: the unit pushes the ring against the lip."""
    d, g, m, s, n, o, e = (
        float(bore) / 2,
        float(groove) / 2,
        float(width),
        float(ring),
        float(lip),
        float(body) / 2,
        float(breadth),
    )
    below = max(2.5 * m, n)
    wall = ((d, n + m), (d, n + m + below), (o, n + m + below), (o, 0), (d, 0), (d, n), (g, n), (g, n + m))
    wall = tuple((x, -y) for x, y in wall)
    inner = max(g - e, g - 0.9 * g)
    shapes = [
        Area(wall, "a"),
        Area(box(inner, -n - s, g, -n), "b"),
        Area(box(d - 1.6 * (g - inner), -n - m - 0.8 * below, d, -n - s), "c"),
    ]
    return Drawing(
        "Groove, ring and lip",
        say(
            "Section of one wall: groove {m} wide and {t} deep, {n} from the end; ring {s} thick and {e}"
            " broad.",
            m=width,
            t=depth,
            n=lip,
            s=ring,
            e=breadth,
        ),
        (
            *shapes,
            Dimension((o, -n), (o, 0), lip, -0.5 * m - 0.1 * n, "n"),
            Dimension((o, -n - m), (o, -n), width, -2.2 * m - 0.4 * n, "m"),
            Dimension((d, 0), (g, 0), depth, 0.8 * m, "t"),
        ),
    )
