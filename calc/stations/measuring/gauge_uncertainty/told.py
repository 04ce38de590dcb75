"""What is told of a reading's doubt."""

from calc.core.kinds import LENGTH, RATIO
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import FINE, SHARE, SIZE, TIMES

MICRO = form(LENGTH, 2, "µm", "µin")


class Out(Outputs):
    mean = Output("Mean of readings", "x", SIZE, main=True)
    expanded = Output("Doubt at 95 %, ±", "U", FINE, main=True)
    of_tolerance = Output("Takes of the tolerance", "U_T", SHARE, main=True)
    standard = Output("Standard uncertainty, all together", "u_c", MICRO)
    spread = Output("Spread of single readings (standard deviation)", "s", MICRO)
    freedom = Output("Effective degrees of freedom, a million at most", "ν_eff", form(RATIO, 1))
    factor = Output("Coverage factor for 95 %", "k", TIMES)
