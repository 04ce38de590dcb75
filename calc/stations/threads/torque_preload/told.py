"""What is told of a bolt that is tightened."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import FRICTION, KILONEWTON, MPA, SHARE, TIGHTENING


class Out(Outputs):
    preload = Output("Preload", "F", KILONEWTON, main=True)
    torque = Output("Torque", "T", TIGHTENING, main=True)
    low = Output("Preload, rough thread", "F_low", KILONEWTON)
    high = Output("Preload, slippery thread", "F_high", KILONEWTON)
    hot = Output("Preload hot, slippery thread", "F_hot", KILONEWTON)
    stress = Output("Stress, pull and twist together", "σ_v", MPA)
    used = Output("Share of yield used", "U", SHARE)
    used_high = Output("Share of yield used, slippery thread and hot", "U_high", SHARE, main=True)
    most = Output("Preload at 90 % of yield", "F_90", KILONEWTON)
    torque_most = Output("Torque at 90 % of yield", "T_90", TIGHTENING)
    nut_factor = Output("Nut factor that this friction makes", "K_n", FRICTION)
    lost = Output("Share of the torque lost in friction", "R", SHARE)
