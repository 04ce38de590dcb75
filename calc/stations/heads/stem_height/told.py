"""What is told of the stems."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE


class Out(Outputs):
    spread = Output("Highest less lowest", "Δ", COARSE, main=True)
    tip = Output("Most to take off a tip", "t_max", COARSE, main=True)
    sink = Output("Most to sink a seat", "z_max", COARSE, main=True)
    highest = Output("Highest stem, above the height wanted", "h_+", COARSE)
    lowest = Output("Lowest stem, above the height wanted", "h_−", COARSE)
    bottom = Output("All stems to stand from", "a", COARSE)
    top = Output("All stems to stand up to", "b", COARSE)
    spread_after = Output("Highest less lowest, then", "Δ_1", COARSE)
    fitted_most = Output("Tallest fitted height, then, without shims", "f_max", COARSE)
    shim = Output("Thickest shim under a spring", "u_max", COARSE)
