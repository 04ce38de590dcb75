"""What is told of the scratches that a hone leaves."""

from calc.core.kinds import SPEED
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import ROUGH, TENTHS_OF_DEGREE, TURNS

STONE_SPEED = form(SPEED, 1, "m/min", "ft/min")


class Out(Outputs):
    judged = Output("Cross-hatch in the middle of the bore", "β", TENTHS_OF_DEGREE, main=True)
    spindle = Output("Spindle for the angle wanted", "n_w", TURNS, main=True)
    mean = Output("Angle by the mean speed of the stroke", "β_m", TENTHS_OF_DEGREE)
    near_end = Output("Angle near the end of the stroke", "β_e", TENTHS_OF_DEGREE)
    strokes = Output("Or single strokes a minute for it, at this spindle", "n_1", TURNS)
    stroke = Output("Stroke", "L_1", ROUGH)
    axial = Output("Stones along the bore, in its middle", "v_a", STONE_SPEED)
    round = Output("Stones round the bore", "v_u", STONE_SPEED)
