"""What comes out: how hot the head must be, how near to its limit that is, and what may be lost before the
ring sticks."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import DEGREES_C, SIZE, WHOLE_KELVINS


class Out(Outputs):
    head_temperature = Output("Head temperature needed", "T_h", DEGREES_C, main=True)
    margin = Output("Left below the limit of the head", "ΔT_m", WHOLE_KELVINS, main=True)
    head_may_cool = Output("Head may cool before the ring sticks", "ΔT_h", WHOLE_KELVINS, main=True)
    ring_may_warm = Output("Ring may warm before it sticks", "ΔT_r", WHOLE_KELVINS)
    clearance_in = Output("Clearance as the ring goes in", "c_in", SIZE)
    clearance_limit = Output("Clearance with the head at its limit", "c_max", SIZE)
    interference = Output("Interference, cold", "δ", SIZE)
