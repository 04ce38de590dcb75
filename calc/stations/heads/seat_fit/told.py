"""What comes out: the interference cold, running and stopped hot, what it costs, and which rings would
serve."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import CONTACT, MPA, NEWTON, SHARE, SIZE


class Out(Outputs):
    interference = Output("Interference, cold", "δ", SIZE, main=True)
    interference_hot = Output("Interference left, running", "δ_hot", SIZE, main=True)
    interference_stopped = Output("Interference left, stopped hot", "δ_stop", SIZE, main=True)
    lost = Output("Interference lost for good, by yielding", "δ_lost", SIZE)
    spare = Output("Interference to spare before ring or head gives way", "δ_sp", SIZE)
    pressure = Output("Contact pressure, cold", "p", CONTACT)
    pressure_hot = Output("Contact pressure, running", "p_hot", CONTACT)
    ring_hoop = Output("Hoop stress at the ring's bore, cold", "σ_r", MPA)
    head_hoop = Output("Hoop stress at the pocket, cold", "σ_h", MPA)
    ring_used = Output("Ring: share of its first yield, at worst", "U_r", SHARE)
    head_used = Output("Head: share of its first yield, at worst", "U_h", SHARE)
    hold = Output("Force that holds the ring, cold", "F", NEWTON)
    hold_hot = Output("Force that holds the ring, running", "F_hot", NEWTON)
    ring_wanted = Output("Ring outside that holds in this pocket, least", "D_want", SIZE)
    ring_most = Output("Ring outside before anything yields, most", "D_most", SIZE)
