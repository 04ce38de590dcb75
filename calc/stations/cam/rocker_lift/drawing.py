"""The rocker shut and at full lift, to scale, and its ratio along the lift."""

import math

from calc.core.drawing import Axis, Circle, Dimension, Drawing, Line, Plot, Point, Series
from calc.core.result import say
from calc.stations.cam.rocker_lift.arc import Arc, along
from calc.stations.cam.rocker_lift.asked import In
from calc.stations.shared.forms import COARSE, TIMES


def arms(i: In, arc: Arc) -> Drawing:
    valve, rod = float(i.valve_arm), float(i.pushrod_arm)

    def ends(arm: float) -> tuple[Point, Point]:
        cup = arm - float(i.cup)
        return (-valve * math.cos(arm), valve * math.sin(arm)), (rod * math.cos(cup), -rod * math.sin(cup))

    (pad, cup), (low, high) = ends(float(arc.shut)), ends(float(arc.opened))
    foot = -0.6 * valve
    return Drawing(
        "Rocker shut, and dashed at full lift",
        say(
            "The valve arm stands {a} over square when shut and {b} at full lift; the pad goes down {l}.",
            a=arc.shut,
            b=arc.opened,
            l=arc.pad_lift,
        ),
        (
            Line((pad, (0.0, 0.0), cup)),
            Line((low, (0.0, 0.0), high), "hidden"),
            Circle((0.0, 0.0), 0.16 * valve, "a"),
            Circle(pad, 0.04 * valve, "solid"),
            Circle(cup, 0.04 * valve, "solid"),
            Line(((-1.15 * valve, 0.0), (1.15 * rod, 0.0)), "centre"),
            Line((cup, (cup[0], foot))),
            Line((pad, (pad[0], foot))),
            Dimension((-1.1 * valve, low[1]), (-1.1 * valve, pad[1]), arc.pad_lift, 0.1 * valve, "L"),
        ),
    )


def ratio_along(i: In, arc: Arc) -> Plot:
    way = along(i, arc)
    local = tuple(((a[0] + b[0]) / 2, (b[1] - a[1]) / (b[0] - a[0])) for a, b in zip(way, way[1:]))
    return Plot(
        "Ratio along the lift",
        say("{a} over the first tenth, {b} over the last.", a=arc.ratios[1], b=arc.ratios[2]),
        Axis("Lobe lift", COARSE),
        Axis("Ratio", TIMES),
        (Series("", local),),
    )
