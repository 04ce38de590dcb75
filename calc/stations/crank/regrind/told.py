"""What is told of a worn crank."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE, SIZE


class Out(Outputs):
    main_clean = Output("Mains all clean up at", "D_m", SIZE, main=True)
    pin_clean = Output("Rod journals all clean up at", "D_p", SIZE, main=True)
    main_undersize = Output("Mains, undersize", "U_main", COARSE)
    main_low = Output("Mains, finished, least", "M_low", SIZE)
    main_high = Output("Mains, finished, most", "M_high", SIZE)
    main_aim = Output("Mains, grind to", "M_g", SIZE)
    main_stock = Output("Mains, least stock, one side", "s_m", SIZE)
    main_most = Output("Mains, most stock, one side", "S_m", SIZE)
    main_shell = Output("Main shells to order, wall thicker by", "W_m", SIZE)
    pin_undersize = Output("Rod journals, undersize", "U_pin", COARSE)
    pin_low = Output("Rod journals, finished, least", "P_low", SIZE)
    pin_high = Output("Rod journals, finished, most", "P_high", SIZE)
    pin_aim = Output("Rod journals, grind to", "P_g", SIZE)
    pin_stock = Output("Rod journals, least stock, one side", "s_p", SIZE)
    pin_most = Output("Rod journals, most stock, one side", "S_p", SIZE)
    pin_shell = Output("Rod shells to order, wall thicker by", "W_p", SIZE)
    round = Output("Out of round, at most", "Δ_o", SIZE)
    taper = Output("Taper, at most", "Δ_k", SIZE)
    depth = Output("Off one side since new, at most", "h_g", SIZE)
