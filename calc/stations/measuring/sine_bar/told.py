"""What is told of a sine bar and its blocks."""

from calc.core.kinds import LENGTH
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.measuring.sine_bar.asked import ARC_SECONDS
from calc.stations.shared.forms import FINE, FINE_DEGREES


class Out(Outputs):
    height = Output("Blocks for the angle", "h", FINE, main=True)
    angle_set = Output("Angle that the blocks set", "α_set", FINE_DEGREES, main=True)
    off = Output("Off the angle wanted", "Δα", ARC_SECONDS)
    per_second = Output("Height for one second of arc", "h_1", form(LENGTH, 3, "µm", "µin"))
