"""The plunger on its oil, and its time against the clearance."""

from calc.core.drawing import Area, Axis, Dimension, Drawing, Label, Line, Plot, Series, box
from calc.core.result import say
from calc.formulas import annular_gap as gap
from calc.stations.shared.forms import FINE, SECONDS


def section(bore, plunger, length, load, travel, pressure) -> Drawing:
    """Plunger in its bore over the oil that bears it; the gap is drawn wide."""
    r, L, s = float(plunger) / 2, float(length), float(travel)
    c = 0.06 * r
    wall, under = 0.3 * r, max(0.5 * L, 0.6 * r)
    shapes = [Area(box(-r, 0, r, L), "b")]
    for side in (-1, 1):
        shapes.append(Area(tuple((side * x, y) for x, y in box(r + c, -under, r + c + wall, 1.1 * L)), "a"))
    shapes.append(Area(box(-r - c - wall, -under - wall, r + c + wall, -under), "a"))
    return Drawing(
        "Plunger on its oil",
        say(
            "Section of a plunger of {p} in a bore of {b}; its {L} of length seal {q} of pressure in the oil"
            " below, under {F}.",
            p=plunger,
            b=bore,
            L=length,
            q=pressure,
            F=load,
        ),
        (
            *shapes,
            Line(((0, -under - 1.6 * wall), (0, 1.25 * L)), "centre"),
            Label((0, 1.32 * L), say("{F}", F=load)),
            Label((0, -0.55 * under), say("{q}", q=pressure)),
            Dimension((r + c + wall, 0), (r + c + wall, L), length, -0.35 * r, "L"),
            Dimension((-r, L), (r, L), plunger, 0.45 * r + 0.32 * L, "D_p"),
            Dimension((-r - c, -under), (r + c, -under), bore, -0.45 * r - wall, "D_b"),
        ),
        "gap drawn wider than it is",
    )


def time_plot(clearance, centred, eccentricity, least_time, most_time, time) -> Plot:
    """Leak-down time against clearance, in the middle, as typed, and touching."""

    def curve(off):
        return tuple(
            (C, centred / gap.eccentric(off) * (clearance / C) ** 3)
            for C in (clearance * (0.72 + i / 24) for i in range(24))
        )

    ends = (curve(0)[0][0], curve(0)[-1][0])
    limits = tuple(
        Series(words, tuple((C, float(t)) for C in ends), "limit")
        for words, t in (("shortest", least_time), ("longest", most_time))
    )
    return Plot(
        "Leak-down time against clearance",
        say(
            "{t} at the clearance measured; shorter than {a} is too fast, longer than {b} too slow.",
            t=time,
            a=least_time,
            b=most_time,
        ),
        Axis("Clearance, diametral", FINE),
        Axis("Time", SECONDS),
        (
            Series("", curve(eccentricity)),
            *((Series("middle", curve(0), "dashed"),) if eccentricity > 0.2 else ()),
            *((Series("touching", curve(1), "dashed"),) if eccentricity < 0.9 else ()),
            *limits,
        ),
        ((clearance, float(time), "this one"),),
    )
