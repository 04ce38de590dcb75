"""What is told of a rocker between shut and full lift."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE, TENTHS_OF_DEGREE, TIMES


class Out(Outputs):
    lift = Output("Valve lift", "L_0", COARSE, main=True, feature="valve.lift")
    sweep = Output("Sweep across the stem's tip", "w", COARSE, main=True, feature="rocker.sweep")
    ratio = Output("Ratio over the whole lift", "i_m", TIMES, main=True)
    ratio_first = Output("Ratio over the first tenth", "i_1", TIMES)
    ratio_last = Output("Ratio over the last tenth", "i_2", TIMES)
    shut = Output("Valve arm over square, shut", "α_0", TENTHS_OF_DEGREE)
    opened = Output("Valve arm over square, open", "α_1", TENTHS_OF_DEGREE)
    pushrod = Output("Pushrod, middle to middle of its ends", "L_r", COARSE)
    up = Output("Shaft higher for square at half lift, by", "t", COARSE)
