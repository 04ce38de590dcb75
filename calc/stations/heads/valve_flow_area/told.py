"""What comes out: the free area, the lift from which the throat decides, and whether the engine outruns the
valve."""

from calc.core.kinds import AREA, SPEED
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE, FRICTION, SHARE, TIMES, TURNS

FACE, METRES = form(AREA, 0), form(SPEED, 1, "m/s", "ft/s")


class Out(Outputs):
    free = Output("Free area at the lift", "A", FACE, main=True)
    crossover = Output("Lift from which the throat decides", "L_x", COARSE, main=True)
    mach = Output("Inlet Mach index", "Z", TIMES, main=True)
    curtain = Output("Curtain area at the lift", "A_c", FACE)
    throat_area = Output("Throat less stem", "A_t", FACE)
    opened = Output("Free area ÷ throat", "a_r", SHARE)
    past = Output("Lift past the crossover", "L_p", COARSE)
    first_stage = Output("Lift at which the curtain leaves the seat's face", "L_1", COARSE)
    lift_ratio = Output("Lift ÷ valve head", "λ", FRICTION)
    throat_ratio = Output("Throat ÷ valve head", "τ", SHARE)
    piston_speed = Output("Mean piston speed", "S_p", METRES)
    speed_limit = Output("Engine speed at the Mach index allowed", "n_Z", TURNS)
