"""What is told of the chambers."""

from calc.core.kinds import AREA, VOLUME
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE

CC, CC_FINE, FACE = form(VOLUME, 1), form(VOLUME, 2), form(AREA, 0)


class Out(Outputs):
    smallest = Output("Smallest, after the cut", "V_min", CC, main=True)
    largest = Output("Largest, after the cut", "V_max", CC, main=True)
    spread = Output("Largest less smallest", "ΔV", CC, main=True)
    mean = Output("Mean of the chambers, after the cut", "V_m", CC)
    taken = Output("Volume that the cut takes", "V_t", CC_FINE)
    tenth = Output("Volume that 0.1 mm of cut takes", "V_0.1", CC_FINE)
    grind = Output("Most to grind out of a chamber", "G", CC_FINE)
    cut_wanted = Output("Cut at which the largest chamber has the volume wanted", "t_w", COARSE)
    cut_most = Output("Cut at which the smallest chamber comes to its limit", "t_l", COARSE)
    kelvin = Output("Error from 1 K of warming in the liquid", "V_K", CC_FINE)
    film = Output("Error from 0.05 mm of grease under the plate", "V_f", CC_FINE)
