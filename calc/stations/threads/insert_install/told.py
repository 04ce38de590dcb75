"""What is told of a hole that gets a thread insert."""

from calc.core.kinds import AREA
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE, KILONEWTON, SIZE, TIMES


class Out(Outputs):
    drill = Output("Drill", "D_d", COARSE, main=True)
    pull = Output("Pull that the parent's thread bears", "F_p", KILONEWTON, main=True)
    safety = Output("That over the preload", "S", TIMES, main=True)
    force = Output("Preload at the most: slippery and hot", "F_max", KILONEWTON)
    minor = Output("Hole to be tapped, basic minor diameter", "D_1", SIZE)
    pitch_diameter = Output("Tap, basic pitch diameter", "D_2", SIZE)
    major = Output("Tap, basic major diameter", "D_t", SIZE)
    countersink = Output("Countersink, across", "D_c", COARSE)
    setting = Output("Insert's top under the face", "s", COARSE)
    tapped = Output("Full threads down to", "t_t", COARSE)
    drilled = Output("Drilled down to, without the point", "t_d", COARSE)
    left = Output("Metal left under the point, or under the insert", "f", COARSE)
    edge_least = Output("Centre to edge, least", "e_min", COARSE)
    area = Output("Area that would shear", "A", form(AREA, 0))
