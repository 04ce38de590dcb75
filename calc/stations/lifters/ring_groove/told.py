"""What a snap ring and its groove tell."""

from calc.declare.calculator import Output, Outputs
from calc.stations.lifters.ring_groove.asked import TENTHS
from calc.stations.shared.forms import COARSE, NEWTON, SHARE


class Out(Outputs):
    capacity = Output("Thrust that it bears", "F_b", NEWTON, main=True)
    used = Output("Share of that used", "U", SHARE, main=True)
    depth = Output("Depth of the groove", "t", COARSE, main=True)
    ring_capacity = Output("Thrust that the ring bears, sheared", "F_r", NEWTON)
    groove_capacity = Output("Thrust that the groove's wall bears, pressed", "F_g", NEWTON)
    lip_capacity = Output("Thrust that the lip bears, sheared", "F_l", NEWTON)
    lip_ratio = Output("Lip over depth of the groove", "q", TENTHS)
    wall = Output("Wall behind the groove", "w", COARSE)
    overhang = Output("Ring stands out of its groove by", "o", COARSE)
    play = Output("Play of the ring in its groove", "c", COARSE)
