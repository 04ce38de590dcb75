"""What is told of the play between the cam's gears, and of the gear to take."""

from calc.declare.calculator import Output, Outputs
from calc.stations.cam.mesh_backlash.asked import CODE
from calc.stations.shared.forms import SIZE


class Out(Outputs):
    least = Output("Backlash, least round the gear", "j_1", SIZE, main=True, feature="cam.gear_backlash")
    most = Output("Backlash, most round the gear", "j_2", SIZE, main=True)
    take = Output("Size code to take", "n_w", CODE, main=True)
    mean = Output("Backlash, mean", "j_m", SIZE)
    differs = Output("It differs round the gear by", "v", SIZE)
    each = Output("One step of the code changes it by", "Δ_s", SIZE)
    least_then = Output("Backlash with that gear, least", "j_3", SIZE)
    most_then = Output("Backlash with that gear, most", "j_4", SIZE)
