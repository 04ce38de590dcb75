"""What comes out: what to hone to, the wall that is left, and what pressing the unit in would do."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE, CONTACT, FINE, MPA, SHARE, SIZE


class Out(Outputs):
    target = Output("Hone the body's bore to", "D_w", SIZE, main=True)
    stock = Output("To come off", "a", SIZE, main=True)
    wall = Output("Wall left, thinnest", "w", COARSE, main=True)
    clearance_now = Output("Unit in the bore as it is: clearance, minus for grip", "C_now", SIZE)
    pressure = Output("Contact pressure, pressed in", "p", CONTACT)
    hoop = Output("Hoop stress at the body's bore", "σ_h", MPA)
    body_used = Output("Body: share of its yield used", "U_b", SHARE)
    unit_used = Output("Unit: share of its yield used", "U_u", SHARE)
    growth = Output("Body's outside grows by", "ΔD_o", FINE)
    closing = Output("Plunger's bore closes by", "ΔD_i", FINE)
    plunger_left = Output("Plunger clearance left", "C_p", FINE)
    case_left = Output("Clearance of the body in the case", "C_c", SIZE)
