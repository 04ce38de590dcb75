"""Thrust bearing, three shims, float and flywheel in a row along the crank, thicknesses to one scale."""

from calc.core.drawing import Area, Dimension, Drawing, Label, Line, box
from calc.core.result import say
from calc.stations.crankcase.end_float.fitting import Fitting


def in_a_row(found: Fitting) -> Drawing:
    """The crank pushed towards the flywheel's side, so that all float lies before the flywheel."""
    sizes = [float(s) for s in found.three]
    total = sum(sizes)
    gap = max(float(found.float_then), 0.0)
    length = total + gap
    high = 0.55 * length
    side = 0.35 * length
    edges = [0.0, sizes[0], sizes[0] + sizes[1], total]
    return Drawing(
        "The three shims and the float",
        say(
            "Along the crank: thrust bearing, shims of {a}, {b} and {c}, a float of {f}, and the flywheel.",
            a=found.three[0],
            b=found.three[1],
            c=found.three[2],
            f=found.float_then,
        ),
        (
            Area(box(-side, 0, 0, high), "c"),
            *(Area(box(a, 0.1 * high, b, 0.9 * high), h) for a, b, h in zip(edges, edges[1:], "aba")),
            Area(box(length, 0, length + side, 1.15 * high), "b"),
            Line(((-1.2 * side, -0.25 * high), (length + 1.2 * side, -0.25 * high)), "centre"),
            Label((-0.5 * side, -0.55 * high), "bearing"),
            Label((length + 0.5 * side, 1.35 * high), "flywheel"),
            *(
                Dimension((a, 0.9 * high), (b, 0.9 * high), n, (0.5 + 0.45 * k) * high, f"s_{k + 1}")
                for k, (a, b, n) in enumerate(zip(edges, edges[1:], found.three))
            ),
            Dimension((total, 0), (length, 0), found.float_then, -0.7 * high, "f_3"),
        ),
        "thicknesses to scale; heights are not",
    )
