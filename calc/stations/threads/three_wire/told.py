"""What is told of a thread that was read over three wires."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import FINE, SIZE, TIMES


class Out(Outputs):
    pitch_diameter = Output("Pitch diameter", "d_2", SIZE, main=True)
    best = Output("Best wire", "w_best", FINE, main=True)
    low = Output("Reading for the least pitch diameter", "M_min", SIZE)
    high = Output("Reading for the most pitch diameter", "M_max", SIZE)
    lead = Output("Taken off for the lead of the thread", "c_λ", FINE)
    play = Output("Wire: its error counts in the pitch diameter by", "k_w", TIMES)
