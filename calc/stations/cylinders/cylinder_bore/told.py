"""What is told of a set of cylinders."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE, DEGREES_C, FINE, SIZE


class Out(Outputs):
    oversize = Output("Oversize, all alike", "u", COARSE, main=True)
    finish_low = Output("Finished bore, least", "D_1", SIZE, main=True)
    finish_high = Output("Finished bore, most", "D_2", SIZE, main=True)
    aim = Output("Middle of that", "D_m", SIZE)
    clean = Output("The worst cleans up at", "D_c", SIZE)
    stock = Output("To hone off the worst once it is clean, up to the middle", "a", SIZE)
    most_off = Output("Most to come off anywhere, on the diameter", "a_max", SIZE)
    largest = Output("Largest bore, at 20 °C", "D_g", SIZE)
    smallest = Output("Smallest bore, at 20 °C", "D_k", SIZE)
    warm = Output("Read too large by, for the warmth", "Δ_t", FINE)
    wear = Output("Wear of the worst, largest less smallest", "w", SIZE)
    oval = Output("Out of round, the worst", "o", SIZE)
    taper = Output("Taper, the worst", "k", SIZE)
    clearance = Output("Piston clearance cold, least", "c_k", SIZE)
    clearance_most = Output("Piston clearance cold, most", "c_g", SIZE)
    hot = Output("Clearance by plain expansion, running; not judged", "c_hot", SIZE)
    closes = Output("Piston heat at which plain expansion closes it; not judged", "t_0", DEGREES_C)
