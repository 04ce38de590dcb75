"""The area over the lift, and the valve over its seat at that lift."""

import math

from calc.core.drawing import Area, Axis, Dimension, Drawing, Line, Plot, Points, Series
from calc.core.result import say
from calc.formulas.valve_curtain import curtain
from calc.stations.heads.valve_flow_area.asked import In
from calc.stations.heads.valve_flow_area.flow import Flow
from calc.stations.heads.valve_flow_area.told import FACE
from calc.stations.shared.forms import COARSE


def area_plot(i: In, found: Flow) -> Plot:
    """The curtain over the lift, and the throat, which decides from the crossover on."""
    x, top, throat_area = float(found.crossover), float(i.lift), float(found.throat_area)
    cone = float(i.valve_head), float(found.width), float(i.seat_angle)
    end = 1.15 * max(x, top)
    points = tuple((end * n / 60, float(curtain(end * n / 60, *cone))) for n in range(61))
    return Plot(
        "Area over the lift",
        say(
            "The curtain grows until it is as large as the throat at {x}; at {l} the free area is {a}.",
            x=found.crossover,
            l=i.lift,
            a=found.free,
        ),
        Axis("Lift", COARSE),
        Axis("Area", FACE),
        (Series("curtain", points), Series("throat", ((0.0, throat_area), (end, throat_area)), "dashed")),
        (
            (x, throat_area, "crossover"),
            (top, float(curtain(top, *cone)), "full lift" if abs(top - x) > 0.06 * end else ""),
        ),
    )


def section(i: In, width: float) -> Drawing:
    """Valve at its lift over the seat; the narrowest line of the curtain on both sides."""
    up, outer, inner, bowl = float(i.lift), *(float(x) / 2 for x in (i.valve_head, i.seat_inner, i.throat))
    angle = float(i.seat_angle)
    rise, edge, deep = width * math.tan(angle), min(0.05 * outer, 2e-3), -0.75 * outer
    top = up + rise + edge
    seat = (
        (outer, rise),
        (outer * 1.35, rise),
        (outer * 1.35, deep),
        (bowl, deep),
        (bowl, -min(inner - bowl, 0.2 * outer) - 0.03 * outer),
        (inner, 0.0),
    )
    valve = (
        (0, top),
        (outer, top),
        (outer, up + rise),
        (inner, up),
        *_neck_and_stem(inner, float(i.stem) / 2, up, deep),
    )
    run = min(up * math.sin(angle) * math.cos(angle), width)
    gap = ((inner, up), (inner + run, run * math.tan(angle)))
    return Drawing(
        "Valve at full lift",
        say(
            "Section through seat and valve: valve {v} across, lifted by {l}, throat {t}.",
            v=i.valve_head,
            l=i.lift,
            t=i.throat,
        ),
        (
            Area(seat, "a"),
            Area(_left(seat), "a"),
            Area((*valve, *_left(valve)[::-1]), ""),
            Line(gap, "band"),
            Line(_left(gap), "band"),
            Line(((0, top + 0.15 * outer), (0, deep - 0.1 * outer)), "centre"),
            Dimension((-outer, top), (outer, top), i.valve_head, 0.22 * outer, "D"),
            Dimension((-bowl, deep), (bowl, deep), i.throat, -0.2 * outer, "D_t"),
            *((Dimension((outer, rise), (outer, up + rise), i.lift, -0.5 * outer, "L"),) if up > 0 else ()),
        ),
        "to scale; the shape of neck and throat is drawn only roughly",
    )


def _neck_and_stem(inner: float, rod: float, up: float, deep: float) -> Points:
    """Right half of the valve's outline under its face, `up` high; `rod` is the stem's radius, which ends
    `deep` down."""
    neck = min(1.6 * rod, 0.8 * inner)
    under = up - 0.25 * (inner - neck)
    return (neck, under), (rod, under - 1.5 * (neck - rod)), (rod, deep), (0, deep)


def _left(points: Points) -> Points:
    """The same left of the axis."""
    return tuple((-x, y) for x, y in points)
