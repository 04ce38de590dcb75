"""What is told of a thread whose limits are wanted."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import SIZE


class Out(Outputs):
    pitch_low = Output("Pitch diameter, least", "p_min", SIZE, main=True)
    pitch_high = Output("Pitch diameter, most", "p_max", SIZE, main=True)
    crest_low = Output("Bolt's outside or hole's bore, least", "c_min", SIZE)
    crest_high = Output("Bolt's outside or hole's bore, most", "c_max", SIZE)
    tightest = Output("Play at the pitch diameter, tightest", "a_min", SIZE)
    loosest = Output("Play at the pitch diameter, loosest", "a_max", SIZE)
