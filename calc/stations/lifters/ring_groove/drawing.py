"""One side of the body, cut through groove and ring."""

from calc.core.drawing import Area, Dimension, Drawing, box
from calc.core.result import say
from calc.core.working import Number
from calc.stations.lifters.ring_groove.asked import In


def section(i: In, depth: Number) -> Drawing:
    """One side of the body, cut through the axis: the unit pushes the ring against the lip."""
    d, g, o = float(i.bore) / 2, float(i.groove) / 2, float(i.body) / 2
    m, s, n, e = float(i.width), float(i.ring), float(i.lip), float(i.breadth)
    below = max(2.5 * m, n)
    wall = ((d, n + m), (d, n + m + below), (o, n + m + below), (o, 0), (d, 0), (d, n), (g, n), (g, n + m))
    inner = max(g - e, g - 0.9 * g)
    return Drawing(
        "Groove, ring and lip",
        say(
            "Section of one wall: groove {m} wide and {t} deep, {n} from the end; ring {s} thick and {e}"
            " broad.",
            m=i.width,
            t=depth,
            n=i.lip,
            s=i.ring,
            e=i.breadth,
        ),
        (
            Area(tuple((x, -y) for x, y in wall), "a"),
            Area(box(inner, -n - s, g, -n), "b"),
            Area(box(d - 1.6 * (g - inner), -n - m - 0.8 * below, d, -n - s), "c"),
            Dimension((o, -n), (o, 0), i.lip, -0.5 * m - 0.1 * n, "n"),
            Dimension((o, -n - m), (o, -n), i.width, -2.2 * m - 0.4 * n, "m"),
            Dimension((d, 0), (g, 0), depth, 0.8 * m, "t"),
        ),
    )
