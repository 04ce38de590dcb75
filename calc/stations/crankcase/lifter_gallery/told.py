"""What comes out: the clearance at the gallery, the leak, and its share of what the pump gives."""

from calc.core.kinds import DYNAMIC_VISCOSITY, FLOW
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import FINE, FINE_SHARE, SIZE, TIMES

LEAKS = form(FLOW, 1)


class Out(Outputs):
    clearance = Output("Lifter's clearance at the gallery", "C", SIZE, main=True)
    leak = Output("Leak of this bore", "Q", LEAKS, main=True)
    share = Output("Share of the pump's flow that such bores leak", "S", FINE_SHARE, main=True)
    to_cam = Output("Leak to the cam's side", "Q_i", LEAKS)
    to_tube = Output("Leak to the pushrod's side", "Q_o", LEAKS)
    alike_cam = Output("Even clearance that leaks alike, cam's side", "C_i,even", FINE)
    alike_tube = Output("Even clearance that leaks alike, pushrod's side", "C_o,even", FINE)
    every = Output("Leak of all bores, if they are as this one", "Q_all", LEAKS)
    aside = Output("Times as much, because the lifter lies aside", "k_ε", TIMES)
    viscosity = Output("Viscosity of the oil", "µ", form(DYNAMIC_VISCOSITY, 2))
