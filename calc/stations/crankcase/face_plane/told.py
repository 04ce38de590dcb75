"""What is told of a face that was read at several places."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import DEGREES, FINE_DEGREES, SIZE


class Out(Outputs):
    flatness = Output("Out of flat", "f", SIZE, main=True)
    tilt = Output("Tilt over the face's width", "t", SIZE, main=True)
    cut = Output("Least cut that cleans it up, parallel to the datum", "c", SIZE, main=True)
    cut_along = Output("Least cut that only makes it flat, along the face", "c_f", SIZE)
    tilt_angle = Output("Tilt, as an angle", "φ", FINE_DEGREES)
    downhill = Output("It falls towards, from the first place with the clock", "ψ", DEGREES)
    resting_tilt = Output("Tilt of what rests on its highest places", "t_r", SIZE)
    resting_deep = Output("Lowest place under what rests on the highest", "g", SIZE)
