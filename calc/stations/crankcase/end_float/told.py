"""What comes out: how thick the three are in all, which they are, and the float that they leave."""

from calc.core.kinds import RATIO
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import SIZE

COUNT = form(RATIO, 0)


class Out(Outputs):
    float_then = Output("Float with the best three", "f_3", SIZE, main=True)
    in_all = Output("Shims wanted, in all", "s_w", SIZE, main=True)
    warm = Output("That float, warm", "f_h", SIZE, main=True)
    first = Output("Thinnest of the three", "s_1", SIZE)
    second = Output("Middle of the three", "s_2", SIZE)
    third = Output("Thickest of the three", "s_3", SIZE)
    sets = Output("Sets of three within the limits", "n", COUNT)
    least = Output("Least float that three of these leave", "f_low", SIZE)
    most = Output("Most float that three of these leave", "f_high", SIZE)
    change = Output("Float changes when warm by", "Δf", SIZE)
