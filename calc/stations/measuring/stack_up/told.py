"""What a chain of sizes tells."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import FINE, FINE_SHARE, SIZE

RUNS = 10_000


class Out(Outputs):
    least_gap = Output("Least gap, worst case", "G_min", SIZE, main=True)
    greatest_gap = Output("Greatest gap, worst case", "G_max", SIZE, main=True)
    within = Output("Share within the limits", "P", FINE_SHARE, main=True)
    gap = Output("Gap with every size at its middle", "G", SIZE)
    root = Output("Root sum of squares of the tolerances, ±", "t_q", SIZE)
    deviation = Output("Standard deviation of the gap", "σ", FINE)
    most = Output("99.73 % of gaps lie within ±", "t_99", SIZE)
    simulated = Output(f"Share within the limits, simulated {RUNS} times", "P_s", FINE_SHARE)
    error = Output("Standard error of the simulated share", "u_s", FINE_SHARE)
