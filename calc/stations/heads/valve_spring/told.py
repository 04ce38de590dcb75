"""What is told of a set of valve springs."""

from calc.core.kinds import FREQUENCY, RATIO, STIFFNESS
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE, MPA, NEWTON, SHARE, TURNS

RATE = form(STIFFNESS, 2)


class Out(Outputs):
    seat_load = Output("Seat load, weakest", "F_s", NEWTON, main=True)
    open_load = Output("Load at full lift, weakest", "F_o", NEWTON, main=True)
    bind_margin = Output("Room to coil bind", "m", COARSE, main=True)
    spread = Output("Seat loads, highest less lowest", "ΔF", NEWTON)
    rate = Output("Rate, weakest spring", "k", RATE)
    rate_by_sizes = Output("Rate that wire and turns give", "k_d", RATE)
    free_length = Output("Free length, weakest spring, by its line", "L_0", COARSE)
    solid_length = Output("Length with all coils together", "L_c", COARSE)
    stress = Output("Shear stress at full lift, strongest spring, Wahl", "τ_o", MPA)
    stress_solid = Output("Shear stress pressed solid, strongest spring, Wahl", "τ_c", MPA)
    endurance = Output("Share of an endless life's stress used", "U", SHARE)
    frequency = Output("Natural frequency", "f", form(FREQUENCY, 0))
    order = Output("Harmonic of the camshaft that meets it at top speed", "j", form(RATIO, 1))
    surge_speed = Output("Engine speed at which the harmonic wanted meets it", "n_j", TURNS)
    shim_wanted = Output("Shims more, for the seat load wanted", "t_w", COARSE)
    shim_most = Output("Shims more, that coil bind leaves room for", "t_m", COARSE)
