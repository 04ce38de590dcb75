"""What is told of a rod that was read for bend and twist."""

from calc.core.kinds import ANGLE
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import SIZE

DEGREES = form(ANGLE, 3)


class Out(Outputs):
    bend = Output("Bend over 100 mm", "f", SIZE, main=True, feature="rod.bend")
    twist = Output("Twist over 100 mm", "g", SIZE, main=True, feature="rod.twist")
    bend_angle = Output("Bend, as an angle", "φ_f", DEGREES)
    twist_angle = Output("Twist, as an angle", "φ_g", DEGREES)
    skew = Output("Angle between the two bores", "φ", DEGREES)
    lean = Output("Piston leans over its height by", "s", SIZE)
    gauge_bend = Output("Gauge's own bend over the span", "o_f", SIZE)
    gauge_twist = Output("Gauge's own twist over the span", "o_g", SIZE)
