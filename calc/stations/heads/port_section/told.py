"""What is told of a port and the manifold on it."""

from calc.core.kinds import AREA, RATIO, SPEED, VOLUME
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE, ROUGH, TURNS

FACE, METRES = form(AREA, 0), form(SPEED, 1, "m/s", "ft/s")


class Out(Outputs):
    area = Output("Area of the port", "A", FACE, main=True)
    speed = Output("Gas speed, mean over the stroke", "u", METRES, main=True)
    facing = Output("Largest step that faces the flow", "f", COARSE, main=True)
    drop = Output("Largest step that falls away from the flow", "o", COARSE)
    perimeter = Output("Way round the port's edge", "U", ROUGH)
    hydraulic = Output("Hydraulic diameter", "d_h", COARSE)
    equal_round = Output("Round port of the same area", "d_e", COARSE)
    manifold_area = Output("Area of the manifold", "A_m", FACE)
    ratio = Output("Manifold's area ÷ port's", "φ", form(RATIO, 3))
    piston_speed = Output("Mean piston speed", "S_p", METRES)
    swept = Output("Swept by one cylinder", "V_h", form(VOLUME, 1))
    speed_limit = Output("Engine speed at which the gas comes to its limit", "n_u", TURNS)
