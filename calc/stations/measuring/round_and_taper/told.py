"""What the diameters tell."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import SIZE


class Out(Outputs):
    out_of_round = Output("Out of round, at the worst station", "Δ_r", SIZE, main=True)
    taper = Output("Taper, in the worst direction", "Δ_t", SIZE, main=True)
    taper_100 = Output("Taper for each 100 mm", "Δ_100", SIZE)
    mean = Output("Mean of all readings", "d", SIZE)
    largest = Output("Largest", "d_max", SIZE)
    smallest = Output("Smallest", "d_min", SIZE)
