"""What is told of a case whose cylinder seats are cut."""

from calc.core.kinds import RATIO
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE, SIZE, TIMES

FINE_TIMES = form(RATIO, 3)


class Out(Outputs):
    deck_then = Output("Deck height, then", "t'", COARSE, main=True)
    ratio_then = Output("Compression ratio, then", "ε'", TIMES, main=True)
    restores = Output("Shim that restores the deck height", "s_r", COARSE, main=True)
    ratio = Output("Compression ratio before", "ε", TIMES)
    tenth = Output("Ratio gained by 0.10 mm more", "Δε", FINE_TIMES)
    nearer = Output("Cylinder heads nearer to the crank by", "n", COARSE)
    pushrods = Output("Pushrods shorter by", "p", COARSE)
    heads = Output("Heads of both sides nearer together by", "h", COARSE)
    seat_then = Output("Crank centre to seat, then", "H'", COARSE, feature="crankcase.seat_height")
    cut_wanted = Output("Cut that raises the ratio by the amount wanted", "c_w", SIZE)
    deck_wanted = Output("Deck height that this leaves", "t_w", SIZE)
    most_cut = Output("Most that may come off with these shims", "c_max", SIZE)
