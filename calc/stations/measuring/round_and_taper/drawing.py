"""The part along its axis, its deviations many times too large."""

from calc.core.drawing import Area, Dimension, Drawing, Label, Line
from calc.core.result import say
from calc.core.working import Number
from calc.stations.measuring.round_and_taper.shape import Shape


def profile(shape: Shape, low: Number | None, high: Number | None) -> Drawing:
    """The part along its axis, with what it differs from its mean drawn many times too large."""
    stations, middle = shape.stations, float(shape.mean)
    deviations = [[float(d) - middle for d in station.diameters] for station in stations]
    limits = [
        (float(limit) - middle, words)
        for limit, words in ((low, "L"), (high, "H"))
        if limit is not None and abs(float(limit) - middle) < middle / 20
    ]
    reach = max(map(abs, [d for here in deviations for d in here] + [x for x, _ in limits]))
    radius, pitch = middle / 2, middle * 0.45
    scale = 0.25 * radius / reach if reach else 1.0  # the worst deviation shows as a quarter of the radius
    xs = [(station.number - 1) * pitch for station in stations]
    first, last = xs[0] - pitch * 0.4, xs[-1] + pitch * 0.4
    big, small = [max(here) for here in deviations], [min(here) for here in deviations]

    def outline(values: list[float], side: int) -> tuple:
        points = [(x, side * (radius + v * scale)) for x, v in zip(xs, values)]
        return ((first, points[0][1]), *points, (last, points[-1][1]))

    def along(side: int) -> list:
        """Both outlines on one side of the axis, with the limits there."""
        levels = (side * (radius + x * scale) for x, _ in limits)
        return [
            Line(outline(big, side)),
            Line(outline(small, side), "hidden"),
            *(Line(((first, y), (last, y)), "band") for y in levels),
        ]

    shapes = [
        Area((*outline(big, 1), *reversed(outline(big, -1))), "a"),
        Line(((first - pitch * 0.2, 0), (last + pitch * 0.2, 0)), "centre"),
        *along(1),
        *along(-1),
        *(Label((last + pitch * 0.1, radius + x * scale), words, "start") for x, words in limits),
    ]
    for station, x, top in zip(stations, xs, big):
        shapes += [
            Dimension(
                (x, -(radius + top * scale)), (x, radius + top * scale), max(station.diameters, key=float)
            ),
            Label((x, -(radius + reach * scale) - radius * 0.3), str(station.number)),
        ]
    times = f"{float(f'{scale:.1g}'):.0f}"
    return Drawing(
        "Largest (full line) and smallest (dashed) diameters, station by station",
        say("Outline of the part along its axis; mean {d}.", d=shape.mean),
        tuple(shapes),
        f"deviations drawn about {times} times too large" if reach else "",
    )
