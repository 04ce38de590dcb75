"""What is told of a crank's throws."""

from calc.core.kinds import ANGLE
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import SIZE

DEGREES = form(ANGLE, 3)


class Out(Outputs):
    index = Output("Pin farthest out of its angle", "δ", DEGREES, main=True, feature="crank.index_error")
    spread = Output("Longest less shortest throw", "Δ", SIZE, main=True)
    longest = Output("Longest stroke", "S_max", SIZE)
    shortest = Output("Shortest stroke", "S_min", SIZE)
    shift = Output("To put the worst pin right, its axis moves by", "v", SIZE)
    diameter = Output("That takes of its diameter", "u", SIZE)
