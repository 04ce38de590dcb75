"""What comes out: the clearance cold, running, and what the shells' grip has to do with it."""

from calc.core.kinds import RATIO
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import CONTACT, FINE, SIZE

PER_MILLE = form(RATIO, 2, "‰", "‰")


class Out(Outputs):
    tight = Output("Clearance by the sizes, tightest", "c_t", SIZE, main=True)
    loose = Output("Clearance by the sizes, loosest", "c_l", SIZE, main=True)
    running = Output("Clearance running, tightest", "c_run,t", SIZE, main=True)
    running_loose = Output("Clearance running, loosest", "c_run,l", SIZE)
    opened = Output("Shells' grip opens the housing by", "u", FINE)
    fitted = Output("Clearance as a gauge finds it in the fitted shells, tightest", "c_f", SIZE)
    grip = Output("Pressure of the shells in their housing, cold", "p", CONTACT)
    grip_hot = Output("The same, running", "p_hot", CONTACT)
    left_hot = Output("Interference of the shells left, running", "δ_hot", SIZE)
    share = Output("Tightest clearance over the journal", "ψ", PER_MILLE)
