"""What is told of a flywheel that spins."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import CONTACT, FINE, ROUGH, TIMES, TURNS


class Out(Outputs):
    peak = Output("Greatest hoop stress", "σ_max", CONTACT, main=True)
    peak_at = Output("It stands at a diameter of", "D_max", ROUGH)
    hole = Output("At the edge of a hole", "σ_h", CONTACT)
    bore = Output("Hoop stress at the bore", "σ_b", CONTACT)
    rim = Output("Hoop stress at the outside", "σ_o", CONTACT)
    mean = Output("Mean hoop stress over the section", "σ_m", CONTACT)
    factor = Output("Strength over the greatest stress, holes counted", "k_2", TIMES, main=True)
    burst = Output("Bursts at, by the mean stress, sound and new", "n_b", TURNS)
    margin = Output("Bursting over highest speed", "k_1", TIMES, main=True)
    flat = Output("A flat disc of that bore and outside would have", "σ_f", CONTACT)
    growth = Output("Its outside grows, on the diameter, by", "Δd", FINE)
