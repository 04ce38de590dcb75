"""What is told of a lobe."""

from calc.core.kinds import ACCELERATION, LIFT_VELOCITY, SPEED
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import SIZE, TENTHS_OF_DEGREE

PER_DEGREE, METRES, RATE = form(LIFT_VELOCITY, 4), form(SPEED, 2), form(ACCELERATION, 0)


class Out(Outputs):
    lift = Output("Lobe lift", "L", SIZE, main=True, feature="cam.lobe_lift")
    duration = Output(
        "Duration at the checking lift, at the crank",
        "D",
        TENTHS_OF_DEGREE,
        main=True,
        feature="cam.duration",
    )
    centre = Output("Centre, on the wheel, from equal lifts", "C", TENTHS_OF_DEGREE, main=True)
    peak = Output("Nose, on the wheel", "θ_n", TENTHS_OF_DEGREE)
    opening = Output("Steepest opening, per degree of the cam", "s_o", PER_DEGREE)
    closing = Output("Steepest closing, per degree of the cam", "s_c", PER_DEGREE)
    velocity = Output("Lifter's largest velocity", "v", METRES)
    acceleration = Output("Lifter's largest acceleration, rising", "a", RATE)
    deceleration = Output("Lifter's largest acceleration over the nose", "a_n", RATE)
    ends = Output("Heel, last reading less the first", "Δ_h", SIZE)
