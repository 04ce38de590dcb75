"""What is told of the deck heights of an engine."""

from calc.core.kinds import ANGLE
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE, SIZE


class Out(Outputs):
    shims = Output("Shims under each cylinder, of the head that needs most", "s", COARSE, main=True)
    spread = Output("Decks of one head apart, at most", "Δ", SIZE, main=True)
    least = Output("Least deck height with those shims", "t_a", SIZE)
    most = Output("Greatest deck height with those shims", "t_b", SIZE)
    slope = Output("Steepest slope of a crown along its pin, over 100 mm", "f", SIZE)
    angle = Output("The same, as an angle", "φ", form(ANGLE, 3))
