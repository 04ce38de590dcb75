"""What is told of a guide and its stem."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import CONTACT, FINE, NEWTON, SHARE, SIZE


class Out(Outputs):
    clearance = Output("Clearance, cold", "c", SIZE, main=True)
    clearance_hot = Output("Clearance, running", "c_hot", SIZE, main=True)
    interference = Output("Interference", "δ", SIZE, main=True)
    clearance_first = Output("Clearance while the stem alone is hot", "c_1", SIZE)
    rocking = Output("Rocking that this clearance gives", "r", SIZE)
    clearance_rocking = Output("Clearance that the rocking shows", "c_r", SIZE)
    rocking_worn = Output("Rocking at the worn clearance", "r_max", SIZE)
    closing = Output("Bore closes when pressed in by", "ΔD", SIZE)
    bore_pressed = Output("Bore once pressed in", "D_1", SIZE)
    ream = Output("Bore for the clearance wanted: ream to", "D_R", SIZE)
    to_ream = Output("To come off by reaming", "a", SIZE)
    interference_hot = Output("Interference left, running", "δ_hot", SIZE)
    interference_oven = Output("Interference left in the oven", "δ_oven", SIZE)
    grip_lost = Output("Interference gone for good once it has run", "δ_lost", FINE)
    grip_left = Output("Interference left after that, least", "δ_left", SIZE)
    pressure = Output("Contact pressure, cold", "p", CONTACT)
    guide_used = Output("Guide: share of its yield used", "U_g", SHARE)
    head_used = Output("Head: share of its yield used", "U_h", SHARE)
    force = Output("Force that presses the guide in", "F", NEWTON)
    guide_wanted = Output("Guide outside that holds in this hole, least", "D_want", SIZE)
    guide_most = Output("Guide outside that this hole bears, most", "D_most", SIZE)
