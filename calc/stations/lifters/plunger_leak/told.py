"""What a leak-down test tells."""

from calc.core.kinds import DYNAMIC_VISCOSITY, FLOW, STRESS
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import FINE, SECONDS, SIZE, TIMES

LEAKS = form(FLOW, 3)


class Out(Outputs):
    time = Output("Leak-down time", "t", SECONDS, main=True)
    clearance = Output("Clearance, diametral", "C", FINE, main=True)
    leakage = Output("Leak past the plunger under the load", "Q", LEAKS)
    pressure = Output("Pressure under the plunger", "Δp", form(STRESS, 2))
    viscosity = Output("Viscosity of the oil", "µ", form(DYNAMIC_VISCOSITY, 2))
    time_centred = Output("Leak-down time, plunger in the middle", "t_0", SECONDS)
    time_touching = Output("Leak-down time, plunger touching one side", "t_1", SECONDS)
    clearance_least = Output("Clearance that would take the longest time accepted", "C_min", FINE)
    clearance_most = Output("Clearance that would take the shortest time accepted", "C_max", FINE)
    sink = Output("Plunger sinks in one opening of the valve, engine running", "z", SIZE)
    reynolds = Output("Reynolds number in the gap", "Re", TIMES)
