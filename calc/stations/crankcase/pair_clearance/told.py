"""What comes out: the room between shaft and bore, cold and running."""

from calc.core.kinds import RATIO
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import SIZE

PER_MILLE = form(RATIO, 2, "‰", "‰")


class Out(Outputs):
    tight = Output("Clearance at 20 °C, tightest", "c_t", SIZE, main=True)
    loose = Output("Clearance at 20 °C, loosest", "c_l", SIZE)
    running = Output("Clearance running, tightest", "c_run", SIZE, main=True)
    running_loose = Output("Clearance running, loosest", "c_run,l", SIZE)
    change = Output("Heat makes it wider by", "Δc", SIZE)
    share = Output("Tightest clearance over the bore", "ψ", PER_MILLE)
