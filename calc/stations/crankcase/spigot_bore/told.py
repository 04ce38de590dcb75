"""What is told of a case that is opened for other cylinders."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE, ROUGH, SIZE


class Out(Outputs):
    bore_least = Output("Bore the holes to, least", "D_min", SIZE, main=True)
    bore_most = Output("Bore the holes to, most", "D_max", SIZE, main=True)
    wall = Output("Least wall to a stud hole", "w", COARSE, main=True)
    land = Output("Case left between two holes", "l", ROUGH)
    largest = Output("Largest hole that leaves the wall allowed", "D_w", COARSE)
    largest_land = Output("Largest hole that leaves the land allowed", "D_l", COARSE)
    stock = Output("To bore out, a side", "s", COARSE)
    cold_least = Output("Clearance cold, least", "c_min", SIZE)
    cold_most = Output("Clearance cold, most", "c_max", SIZE)
    hot_least = Output("Clearance running, least", "h_min", SIZE)
    hot_most = Output("Clearance running, most", "h_max", SIZE)
    warm_least = Output("Clearance while the case is still cool, least", "v_min", SIZE)
