"""What is told of rod bolts."""

from calc.core.kinds import ACCELERATION
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import KILONEWTON, ROUGH_TIMES, SHARE, SIZE, TIGHTENING, TURNS

M_S2 = form(ACCELERATION, 0)


class Out(Outputs):
    preload = Output("Preload of a bolt", "F", KILONEWTON, main=True)
    margin = Output("Clamp over what opens the joint", "S", ROUGH_TIMES, main=True)
    used = Output("Share of yield used, at most", "U", SHARE, main=True)
    torque = Output("Torque", "T", TIGHTENING)
    stretch = Output("Stretch of the bolt", "ΔL", SIZE)
    low = Output("Preload, low end of the band", "F_low", KILONEWTON)
    high = Output("Preload, high end of the band", "F_high", KILONEWTON)
    acceleration = Output("Acceleration of the piston at top dead centre", "a_p", M_S2)
    load = Output("Pull on the cap's joint", "F_A", KILONEWTON)
    load_bolt = Output("Pull for each bolt", "F_1", KILONEWTON)
    clamp = Output("Clamp left for each bolt, at least", "F_K", KILONEWTON)
    speed_open = Output("Speed at which the cap lifts", "n_o", TURNS)
