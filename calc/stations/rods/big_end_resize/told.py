"""What is told of big ends whose faces were cut."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import SIZE


class Out(Outputs):
    clean = Output("Cleans up all round at", "D_c", SIZE, main=True)
    least_stock = Output("Least to hone off, one side", "s_min", SIZE, main=True)
    spread = Output("Longest less shortest centre distance", "Δ", SIZE, main=True)
    stock_rod = Output("To hone off in the rod, along it", "s_r", SIZE)
    stock_cap = Output("To hone off in the cap, along it", "s_c", SIZE)
    stock_side = Output("To hone off at the parting line, each side", "s_p", SIZE)
    most_stock = Output("Most to hone off, one side", "s_max", SIZE)
    round_before = Output("Out of round before, at most", "e", SIZE)
    cut_along = Output("Bore along the rod once cut, shortest", "D_k", SIZE)
    offset = Output("New centre off the parting line, at most", "c_max", SIZE)
    lost = Output("Centre distance lost, at most", "q", SIZE)
    shortest = Output("Shortest centre distance, then", "L_min", SIZE)
    longest = Output("Longest centre distance, then", "L_max", SIZE)
