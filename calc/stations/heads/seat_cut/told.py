"""What is told of the three cuts, and of the valve on its new seat."""

from calc.core.kinds import ANGLE
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE, SIZE

DEGREES = form(ANGLE, 1)


class Out(Outputs):
    outer = Output("Outer edge of the band, cut to", "D_o", COARSE, main=True)
    inner = Output("Inner edge of the band, cut to", "D_i", COARSE, main=True)
    rise = Output("Stem tip rises by", "s", SIZE, main=True)
    seat_feed = Output("Feed of the seat cutter", "a_s", SIZE)
    upper_feed = Output("Feed of the upper cutter", "a_u", SIZE)
    throat_feed = Output("Feed of the throat cutter", "a_t", SIZE)
    present_width = Output("Present band, width", "w_0", COARSE)
    room_inside = Output("Valve face left inside the band", "e_i", COARSE)
    upper_top = Output("Upper cut breaks out in the ring's face at", "D_u", COARSE)
    land = Output("Ring left outside the upper cut", "l", COARSE)
    below = Output("Bore of the ring left below the throat cut", "h_b", COARSE)
    valve_depth = Output("Valve's edge below the ring's face", "z", COARSE)
    touch = Output("Valve touches first at", "D_c", COARSE)
    gap = Output("Gap at the other edge of the band", "g", SIZE)
    margin_left = Output("Edge of the valve left", "m_left", COARSE)
    rise_total = Output("Stem tip risen since new, then", "s_all", COARSE)
