"""What comes out: the size to hone to, the clearances, the grip and what it costs."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import CONTACT, FINE, NEWTON, SHARE, SIZE


class Out(Outputs):
    hone = Output("Hone the bush to", "D_H", SIZE, main=True)
    clearance = Output("Pin clearance, cold", "c", SIZE, main=True)
    clearance_hot = Output("Pin clearance, running", "c_hot", SIZE, main=True)
    interference = Output("Interference of the bush", "δ", SIZE)
    interference_hot = Output("Interference left, running", "δ_hot", SIZE)
    grip_lost = Output("Interference gone for good once it has run", "δ_lost", FINE)
    grip_left = Output("Interference left after that, least", "δ_left", SIZE)
    pressure = Output("Contact pressure, cold", "p", CONTACT)
    closing = Output("Bore closes when pressed in by", "ΔD", SIZE)
    bore_pressed = Output("Bore once pressed in", "D_1", SIZE)
    to_hone = Output("To hone off, on the diameter", "a", SIZE)
    wall = Output("Wall of the bush once honed", "t", SIZE)
    bush_used = Output("Bush: share of its yield used", "U_b", SHARE)
    rod_used = Output("Rod: share of its yield used", "U_r", SHARE)
    force = Output("Force that presses the bush in", "F", NEWTON)
    bush_wanted = Output("Bush outside that holds in this rod, least", "D_want", SIZE)
    bush_most = Output("Bush outside that this rod bears, most", "D_most", SIZE)
