"""What comes out: the interference that the crush makes, the grip cold and running, and what it costs."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import CONTACT, FINE, SHARE, SIZE


class Out(Outputs):
    interference = Output("Interference of the closed pair", "δ", SIZE, main=True)
    left_hot = Output("Interference left, running", "δ_hot", SIZE, main=True)
    grip = Output("Pressure of the shells in their housing, cold", "p", CONTACT)
    grip_hot = Output("The same, running", "p_hot", CONTACT)
    opened = Output("Housing opens by", "u", FINE)
    hoop = Output("Mean stress round the shell", "σ_s", CONTACT)
    rigid = Output("The same, if the housing did not give", "σ_r", CONTACT)
    housing_hoop = Output("Stress round the housing's bore", "σ_h", CONTACT)
    shell_used = Output("Shell: share of its yield used", "U_s", SHARE)
    housing_used = Output("Housing: share of its yield used", "U_h", SHARE)
