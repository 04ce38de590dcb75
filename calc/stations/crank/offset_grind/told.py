"""What is told of a crank ground for a longer stroke."""

from calc.core.kinds import ANGLE
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE, ROUGH, SIZE, TIMES


class Out(Outputs):
    gain = Output("Throw gained", "Δr", SIZE, main=True)
    largest = Output("Largest stroke possible", "S_max", COARSE, main=True)
    offset = Output("Grind off the old axis by", "e", SIZE, main=True)
    largest_offset = Output("Most off the old axis", "e_max", SIZE)
    inner_stock = Output("Stock on the inner side", "s_i", SIZE)
    outer_stock = Output("Stock on the outer side", "s_o", SIZE)
    index = Output("Pin out of its angle", "δ", form(ANGLE, 3))
    overlap = Output("Overlap of main and rod journal", "u_1", ROUGH)
    overlap_then = Output("Overlap then", "u_2", ROUGH)
    deck_then = Output("Deck height then, without a shim", "t_2", COARSE)
    shim = Output("Shim that keeps the deck height", "z", COARSE)
    ratio = Output("Compression as it is", "ε_1", TIMES)
    ratio_then = Output("Compression then, deck height kept", "ε_2", TIMES)
