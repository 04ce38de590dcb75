"""What an oil hole tells."""

from calc.core.kinds import DYNAMIC_VISCOSITY, FLOW, RATIO, TIME
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import SECONDS

FLOWS = form(FLOW, 2, "cm³/s", "in³/s")
TENTH_SHARE = form(RATIO, 1, "%", "%")
MILLIS = form(TIME, 2, "ms", "ms")


class Out(Outputs):
    fill_time = Output("Time to make up what has leaked", "t_f", MILLIS, main=True)
    window = Output("Time that hole and gallery meet, each cycle", "t_m", MILLIS, main=True)
    share = Output("Share of that time used", "U", TENTH_SHARE)
    running_time = Output("Running until an empty lifter is full", "t_r", SECONDS, main=True)
    flow = Output("Flow through the hole", "Q", FLOWS)
    reynolds = Output("Reynolds number in the hole", "Re", form(RATIO, 1))
    wall_share = Output("Share of the pressure that wall friction takes", "φ", TENTH_SHARE)
    viscosity = Output("Viscosity of the oil", "µ", form(DYNAMIC_VISCOSITY, 2))
