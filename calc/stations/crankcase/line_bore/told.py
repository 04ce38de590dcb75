"""What is told of the saddles of a case."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE, FINE, FINE_DEGREES, SIZE


class Out(Outputs):
    clean = Output("All saddles clean up at", "D_c", SIZE, main=True)
    farthest = Output(
        "Farthest saddle off the best line", "e", SIZE, main=True, feature="crankcase.saddle_line"
    )
    oversize = Output("Shells' outside, over standard", "O", COARSE, main=True)
    low = Output("Finished saddle, least", "D_min'", SIZE)
    high = Output("Finished saddle, most", "D_max'", SIZE)
    aim = Output("Finish to", "D_w", SIZE)
    stock_worst = Output("Stock a side, saddle that cleans up last", "s_w", SIZE)
    stock_best = Output("Stock a side, saddle that cleans up first", "s_b", SIZE)
    off_along = Output("Best line along the split: largest deviation", "e_x", SIZE)
    off_across = Output("Best line across the split: largest deviation", "e_y", SIZE)
    first_along = Output("Bar at the first saddle, from the reading's zero, to the cam", "B_x", SIZE)
    first_across = Output("Bar at the first saddle, from zero, to the right", "B_y", SIZE)
    last_along = Output("Bar at the last saddle, from zero, to the cam", "B_x'", SIZE)
    last_across = Output("Bar at the last saddle, from zero, to the right", "B_y'", SIZE)
    ends_off = Output("Bar through the end saddles: farthest saddle", "e_E", SIZE)
    gained = Output("Least cut: smaller than about the ends' line by", "g", SIZE)
    narrow = Output("Across the split once cut, narrowest", "D_k", SIZE)
    moved = Output("Crank moves away from the cam, at the gears", "Δa", SIZE)
    distance = Output("Crank to cam, then", "a'", SIZE, feature="crankcase.cam_distance")
    angle = Output("Working pressure angle, then", "α'", FINE_DEGREES)
    backlash_more = Output("Backlash grows by, on the working circle", "Δj", FINE)
    backlash_rule = Output("The same by the rule 2·Δa·tan α", "Δj_r", FINE)
    backlash_normal = Output("The same square to the tooth, as a feeler finds it", "Δj_n", FINE)
