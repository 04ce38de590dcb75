"""Spring's force and inertia along the second half of the flank, at the highest speed."""

import math

from calc.core.drawing import Axis, Plot, Series
from calc.core.result import say
from calc.formulas.lobe import bend, rise
from calc.stations.cam.valve_float.asked import In
from calc.stations.cam.valve_float.leaving import HALF_WAY, Leaving, spring_at
from calc.stations.shared.forms import COARSE, NEWTON


def forces(i: In, found: Leaving) -> Plot:
    lift = float(i.lobe_lift) * float(i.ratio)
    whole = float(found.mass) * lift * (math.pi * float(i.top_speed) / float(i.flank)) ** 2
    way = [HALF_WAY + (1 - HALF_WAY) * n / 60 for n in range(61)]
    share = [float(rise(i.law, x)) for x in way]
    return Plot(
        "Force along the lift",
        say(
            "The spring bears {a} where inertia is {b} at {n}.",
            a=found.spring,
            b=found.inertia,
            n=i.top_speed,
        ),
        Axis("Valve lift", COARSE),
        Axis("Force at the valve", NEWTON),
        (
            Series(
                "spring",
                tuple((lift * s, float(spring_at(s, float(i.seat_load), float(i.open_load)))) for s in share),
            ),
            Series(
                "inertia at the highest speed",
                tuple((lift * s, -whole * float(bend(i.law, x))) for s, x in zip(share, way)),
                "dashed",
            ),
        ),
        ((float(found.lift), float(found.spring), "leaves first"),),
    )
