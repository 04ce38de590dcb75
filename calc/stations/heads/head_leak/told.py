"""What comes out: the leak with its doubt, what temperature and gauge may fake, the hole, the leak
allowed."""

from calc.core.kinds import FLOW, LEAK, PRESSURE, TIME
from calc.core.working import Number, constant, form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import SIZE, TIMES

KPA, FLOWS, THROUGHPUT = form(PRESSURE, 2), form(FLOW, 1), form(LEAK, 5)
WHOLE_SECONDS = form(TIME, 0)


class Out(Outputs):
    leak = Output("Leak at the start, as air at 0 °C and 1 atm", "q", FLOWS, main=True)
    doubt = Output("Doubt of that, from temperature and gauge", "u", FLOWS, main=True)
    mean = Output("Mean leak, as air at 0 °C and 1 atm", "q_0", FLOWS)
    mean_20 = Output("Mean leak, as air at 20 °C and 1 atm", "q_20", FLOWS)
    rate = Output("Mean leak, as throughput", "Q", THROUGHPUT)
    loss = Output("Change of pressure that is leak", "Δp_L", KPA)
    least_loss = Output("Change that may be temperature and gauge alone", "Δp_u", KPA)
    kelvin_pressure = Output("Change from 1 K alone", "Δp_1", KPA)
    kelvin_leak = Output("Leak that 1 K looks like in this test", "q_1", FLOWS)
    hole = Output("Round hole that would leak as much", "d", SIZE)
    ratio = Output("Pressure behind the hole ÷ before it", "r", TIMES)
    allowed = Output("Leak allowed here, as air at 0 °C and 1 atm", "q_max", FLOWS)
    time_to_tell = Output("Time in which a leak at the limit shows", "t_u", WHOLE_SECONDS)


def kpa(pressure: Number | float) -> Number:
    """A pressure in a sentence."""
    return constant("", "", KPA, float(pressure))
