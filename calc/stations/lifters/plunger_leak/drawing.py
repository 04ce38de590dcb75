"""The plunger on its oil, and its time against the clearance."""

from calc.core.drawing import Area, Axis, Dimension, Drawing, Label, Line, Plot, Series, box
from calc.core.result import say
from calc.core.working import Number
from calc.formulas import annular_gap
from calc.stations.lifters.plunger_leak.asked import In
from calc.stations.lifters.plunger_leak.leak import Leak
from calc.stations.shared.forms import FINE, SECONDS


def section(i: In, pressure: Number) -> Drawing:
    """Plunger in its bore over the oil that bears it; the gap is drawn wide."""
    r, L = float(i.plunger) / 2, float(i.length)
    c = 0.06 * r
    wall, under = 0.3 * r, max(0.5 * L, 0.6 * r)
    side = box(r + c, -under, r + c + wall, 1.1 * L)
    return Drawing(
        "Plunger on its oil",
        say(
            "Section of a plunger of {p} in a bore of {b}; its {L} of length seal {q} of pressure in the oil"
            " below, under {F}.",
            p=i.plunger,
            b=i.bore,
            L=i.length,
            q=pressure,
            F=i.load,
        ),
        (
            Area(box(-r, 0, r, L), "b"),
            Area(tuple((-x, y) for x, y in side), "a"),
            Area(side, "a"),
            Area(box(-r - c - wall, -under - wall, r + c + wall, -under), "a"),
            Line(((0, -under - 1.6 * wall), (0, 1.25 * L)), "centre"),
            Label((0, 1.32 * L), say("{F}", F=i.load)),
            Label((0, -0.55 * under), say("{q}", q=pressure)),
            Dimension((r + c + wall, 0), (r + c + wall, L), i.length, -0.35 * r, "L"),
            Dimension((-r, L), (r, L), i.plunger, 0.45 * r + 0.32 * L, "D_p"),
            Dimension((-r - c, -under), (r + c, -under), i.bore, -0.45 * r - wall, "D_b"),
        ),
        "gap drawn wider than it is",
    )


def time_over_clearance(i: In, leak: Leak) -> Plot:
    """Leak-down time against clearance, in the middle, as typed, and touching."""
    here, centred, off = float(leak.clearance), float(leak.centred), float(i.eccentricity)
    clearances = [here * (0.72 + n / 24) for n in range(24)]
    ends = clearances[0], clearances[-1]

    def curve(eccentricity: float) -> tuple:
        return tuple((c, centred / annular_gap.eccentric(eccentricity) * (here / c) ** 3) for c in clearances)

    return Plot(
        "Leak-down time against clearance",
        say(
            "{t} at the clearance measured; shorter than {a} is too fast, longer than {b} too slow.",
            t=leak.time,
            a=i.least_time,
            b=i.most_time,
        ),
        Axis("Clearance, diametral", FINE),
        Axis("Time", SECONDS),
        (
            Series("", curve(off)),
            *((Series("middle", curve(0), "dashed"),) if off > 0.2 else ()),
            *((Series("touching", curve(1), "dashed"),) if off < 0.9 else ()),
            Series("shortest", tuple((c, float(i.least_time)) for c in ends), "limit"),
            Series("longest", tuple((c, float(i.most_time)) for c in ends), "limit"),
        ),
        ((here, float(leak.time), "this one"),),
    )
