"""What is told of a shaft's bow."""

from calc.core.kinds import ANGLE
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import SIZE


class Out(Outputs):
    whole = Output("Bow, full reading without the oval", "b", SIZE, main=True, feature="crank.bow")
    bow = Output("Journal's axis off by", "e", SIZE, main=True)
    high = Output("High side at", "φ", form(ANGLE, 1), main=True)
    oval = Output("Out of round by the dial", "Δ_o", SIZE)
    total = Output("Reading in all, largest less smallest", "y_t", SIZE)
