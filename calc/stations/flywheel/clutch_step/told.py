"""What is told of a clutch's two faces."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE, FINE_SHARE, NEWTON, ROUGH, TIGHTENING


class Out(Outputs):
    step = Output("Step, mean of the three", "h_m", COARSE, main=True)
    cut_cover = Output("Cut off the cover's face", "a_c", COARSE, main=True)
    cut_face = Output("Cut off the friction face", "a_f", COARSE)
    apart = Output("The three differ by", "Δ", COARSE)
    left = Output("Behind the friction face then", "t_2", COARSE)
    before = Output("Clamp load with the step as new", "F_0", NEWTON)
    after = Output("Clamp load with the step as it is", "F", NEWTON)
    change = Output("Clamp load changes by", "q", FINE_SHARE, main=True)
    radius = Output("Mean radius of the lining, worn in", "r_m", ROUGH)
    torque = Output("Torque that it holds as it is", "M", TIGHTENING)
