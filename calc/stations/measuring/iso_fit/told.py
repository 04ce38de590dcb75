"""What a fit tells."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import SIZE


class Out(Outputs):
    tightest = Output("Clearance at the tightest (− is grip)", "c_min", SIZE, main=True)
    loosest = Output("Clearance at the loosest (− is grip)", "c_max", SIZE, main=True)
    hole_low = Output("Hole, smallest", "D_min", SIZE)
    hole_high = Output("Hole, largest", "D_max", SIZE)
    shaft_low = Output("Shaft, smallest", "d_min", SIZE)
    shaft_high = Output("Shaft, largest", "d_max", SIZE)
