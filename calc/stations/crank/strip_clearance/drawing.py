"""The packet's scale, clearance over width, and where this strip lies on it."""

from collections.abc import Sequence

from calc.core.drawing import Axis, Plot, Series
from calc.core.result import say
from calc.core.working import Number
from calc.formulas.crushed_strip import gap
from calc.stations.shared.forms import COARSE, SIZE

PLACES = 40


def curve(marks: Sequence[tuple[Number, Number]], width: Number, read: Number) -> Plot:
    plain = [(float(c), float(w)) for c, w in marks]
    wide, narrow = plain[0][1], plain[-1][1]
    widths = [max(narrow, wide + (narrow - wide) * n / PLACES) for n in range(PLACES + 1)]
    return Plot(
        "Scale of the strip",
        say("Clearance over the strip's width; {w} of width is {c} of clearance.", w=width, c=read),
        Axis("Width", COARSE),
        Axis("Clearance", SIZE),
        (
            Series("between the marks", tuple((w, gap(w, plain)) for w in widths)),
            Series("printed marks", tuple((w, c) for c, w in plain), "points"),
        ),
        ((float(width), float(read), say("{c}", c=read)),),
    )
