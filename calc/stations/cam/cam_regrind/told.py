"""What is told of a lobe that is ground, and of all that follows."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE, SIZE


class Out(Outputs):
    base = Output("Base circle after grinding", "D_n", COARSE, main=True)
    lift = Output("Lobe lift after grinding", "h_n", COARSE, main=True)
    make_up = Output("Length to make up at the lifter", "Δ", COARSE, main=True)
    lash = Output("Lash that it opens at the valve, before it is set", "Δ_s", COARSE)
    read = Output("Lobe lift as read", "h_r", SIZE)
    heel_off = Output("Off the base circle since new, one side", "a_b", COARSE)
    flank_off = Output("Off the flank at half lift since new", "a_f", COARSE)
    nose_off = Output("Off the nose since new", "a_n", COARSE)
    valve_lift = Output("Valve opens then, lash off", "L_v", COARSE)
    more = Output("Valve opens farther by", "ΔL_v", COARSE)
    half = Output("Rocker's half lift moves by", "ΔL_h", COARSE)
