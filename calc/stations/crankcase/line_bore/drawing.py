"""The line of the saddles from the side and from above: their centres, much enlarged, and the bar."""

from calc.core.drawing import Area, Circle, Drawing, Label, Line, box
from calc.core.result import say
from calc.formulas.best_fit import Line as Fitted
from calc.stations.crankcase.line_bore.saddles import Saddle, Saddles


def lines(saddles: Saddles) -> Drawing:
    """Above, in the plane of the split; below, across it."""
    each = saddles.each
    long = float(each[-1].place - each[0].place)
    most = max((abs(v) for s in each for v in (float(s.x), float(s.y))), default=0.0)
    for fitted in saddles.bar:
        most = max(most, *(abs(fitted.at(float(s.place))) for s in each))
    times = max(1, min(int(0.1 * long / max(most, 1e-7)), 100_000))
    apart = 0.42 * long
    return Drawing(
        "The line of the saddles",
        say(
            "Centres of {n} saddles along the crank. Above along the split, the cam's side down; below"
            " across it, right up. The bar is the line through them; the farthest saddle is {e} off the"
            " best one.",
            n=str(len(each)),
            e=saddles.farthest,
        ),
        (
            *_plane(each, saddles.bar.x, 0.0, -times, long),
            *_plane(each, saddles.bar.y, -apart, times, long),
            Label((long / 2, 0.17 * long), "along the split, the cam below"),
            Label((long / 2, 0.17 * long - apart), "across the split, right above"),
        ),
        say("deviations drawn {n} times as large", n=str(times)),
    )


def _plane(each: list[Saddle], bar: Fitted, level: float, times: int, long: float) -> tuple:
    """One plane: the reading's zero, webs with their centres, and the bar."""
    start = float(each[0].place)
    shapes: list = [Line(((-0.06 * long, level), (1.06 * long, level)), "centre")]
    for s in each:
        z = float(s.place) - start
        off = float(s.x if times < 0 else s.y) * times
        shapes.append(
            Area(box(z - 0.03 * long, level - 0.15 * long, z + 0.03 * long, level + 0.15 * long), "a")
        )
        shapes.append(Circle((z, level + off), 0.016 * long, "solid"))
        shapes.append(Label((z, level - 0.2 * long), s.name))
    ends = [(float(s.place) - start, level + bar.at(float(s.place)) * times) for s in (each[0], each[-1])]
    shapes.append(Line(tuple(ends), "band"))
    return tuple(shapes)
