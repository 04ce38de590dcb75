"""What is told of a ring gear that is shrunk on."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE, CONTACT, DEGREES_C, SHARE, SIZE, TIGHTENING


class Out(Outputs):
    heat = Output("Heat the ring gear to", "T", DEGREES_C, main=True)
    interference = Output("Interference", "δ", COARSE, main=True)
    pressure = Output("Grip at rest", "p", CONTACT)
    hoop = Output("Pull in the ring gear at rest", "σ_0", CONTACT)
    lost = Output("Interference that the highest speed takes", "δ_n", SIZE)
    pressure_left = Output("Grip at the highest speed", "p_n", CONTACT)
    left = Output("Share of the grip left then", "q", SHARE, main=True)
    hoop_left = Output("Pull in the ring gear then", "σ_n", CONTACT)
    torque = Output("It holds a torque, at the highest speed, of", "M", TIGHTENING)
    torque_rest = Output("It holds a torque, at rest, of", "M_0", TIGHTENING)
