"""What is told of a cam's place in its gears."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import TENTHS_OF_DEGREE


class Out(Outputs):
    centre = Output("Centre from top dead centre", "C", TENTHS_OF_DEGREE, main=True)
    late = Output("Cam late by, at the crank", "ε", TENTHS_OF_DEGREE, main=True)
    turn = Output("Turn the cam on by, at the cam", "τ", TENTHS_OF_DEGREE, main=True)
    top = Output("True top dead centre, on the wheel", "θ_t", TENTHS_OF_DEGREE)
    room = Output("Left to the nearer limit, at the crank", "r", TENTHS_OF_DEGREE)
