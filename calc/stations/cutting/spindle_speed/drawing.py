"""The cutting speed over the diameter, at the step that is set, and what is usual."""

from math import pi

from calc.core.drawing import Axis, Plot, Series
from calc.core.result import say
from calc.core.working import Number
from calc.stations.cutting.spindle_speed.asked import CUTTING_SPEED, In
from calc.stations.shared.forms import ROUGH


def speed_over_diameter(i: In, step: Number, cut: Number, low: Number, high: Number) -> Plot:
    here, turns = float(i.diameter), float(step)
    ends = (0.0, 1.5 * here)
    return Plot(
        "Cutting speed at this step, over the diameter",
        say("At {d} it cuts at {v}; {low} to {high} is usual.", d=i.diameter, v=cut, low=low, high=high),
        Axis("Diameter", ROUGH),
        Axis("Cutting speed", CUTTING_SPEED),
        (
            Series("this step", tuple((d, pi * d * turns) for d in ends)),
            Series("usual, most", tuple((d, float(high)) for d in ends), "limit"),
            Series("usual, least", tuple((d, float(low)) for d in ends), "dashed"),
        ),
        ((here, float(cut), "here"),),
    )
