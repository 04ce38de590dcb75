"""What comes out: how hot the head must be, how near to its limit that is, and what may be lost before the
ring sticks."""

from calc.core.kinds import TEMPERATURE_DIFFERENCE
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import DEGREES_C, SIZE

KELVINS = form(TEMPERATURE_DIFFERENCE, 0)


class Out(Outputs):
    head_temperature = Output("Head temperature needed", "T_h", DEGREES_C, main=True)
    margin = Output("Left below the limit of the head", "ΔT_m", KELVINS, main=True)
    head_may_cool = Output("Head may cool before the ring sticks", "ΔT_h", KELVINS, main=True)
    ring_may_warm = Output("Ring may warm before it sticks", "ΔT_r", KELVINS)
    clearance_in = Output("Clearance as the ring goes in", "c_in", SIZE)
    clearance_limit = Output("Clearance with the head at its limit", "c_max", SIZE)
    interference = Output("Interference, cold", "δ", SIZE)
