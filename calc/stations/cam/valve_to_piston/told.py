"""What is told of a valve that comes near the piston."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE


class Out(Outputs):
    running = Output("Least room when running", "m", COARSE, main=True, feature="valve.room_{valve}")
    least = Output("Least way left, as assembled", "w_min", COARSE, main=True)
    taken = Output("Lash, float and stretch take", "Δ_run", COARSE)
