"""What is told of a thread in thin sheet."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE, NEWTON, ROUGH_TIMES, TIGHTENING


class Out(Outputs):
    hole = Output("Hole", "D_h", COARSE, main=True)
    pull = Output("Pull that it bears", "F_p", NEWTON, main=True)
    turn = Output("Torque at which it turns or strips", "T_t", TIGHTENING, main=True)
    edge_least = Output("Centre to edge, least", "e_min", COARSE)
    across = Output("Outside of nut, collar or screw in the sheet", "D_a", COARSE)
    turns = Output("Turns of thread that hold", "n", ROUGH_TIMES)
    pull_share = Output("Pull borne over pull asked", "S_F", ROUGH_TIMES)
    turn_share = Output("Torque borne over torque asked", "S_T", ROUGH_TIMES)
