"""What is told of a cylinder's compression."""

from calc.core.kinds import VOLUME
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE, TIMES

CC, FINE_CC = form(VOLUME, 1), form(VOLUME, 2)


class Out(Outputs):
    ratio = Output("Compression ratio", "ε", TIMES, main=True, feature="cylinder.compression_ratio")
    left = Output("Volume left over the piston", "V_c", CC, main=True)
    swept = Output("Swept by this piston", "V_h", CC, main=True)
    displacement = Output("Swept by all cylinders", "V_H", form(VOLUME, 0))
    crown = Output("Crown above the plane of its edge, a bowl counts minus", "V_k", FINE_CC)
    deck_volume = Output("Between that plane and the cylinder's face", "V_d", FINE_CC)
    step_volume = Output("In the step that the plate did not cover", "V_s", FINE_CC)
    land = Output("Round the top land, down to the ring", "V_l", FINE_CC)
    ratio_land = Output("Ratio with the space round the top land counted", "ε_l", TIMES)
    chamber_wanted = Output("Chamber that gives the ratio wanted", "V_w", CC)
    deck_wanted = Output("Deck height that gives it", "t_w", COARSE)
    shim = Output("Shims thicker by, for that; thinner where minus", "s", COARSE)
