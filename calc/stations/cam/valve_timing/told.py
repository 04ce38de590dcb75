"""What is told of a cam's timing."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import TENTHS_OF_DEGREE


class Out(Outputs):
    overlap = Output("Both valves open for", "Δ", TENTHS_OF_DEGREE, main=True)
    separation = Output("Lobe separation, at the cam", "σ", TENTHS_OF_DEGREE, main=True)
    advance = Output("Cam ahead by, at the crank", "δ", TENTHS_OF_DEGREE, main=True)
    in_opens = Output("Intake opens before top dead centre", "α_io", TENTHS_OF_DEGREE)
    in_closes = Output("Intake closes after bottom dead centre", "α_ic", TENTHS_OF_DEGREE)
    ex_opens = Output("Exhaust opens before bottom dead centre", "α_eo", TENTHS_OF_DEGREE)
    ex_closes = Output("Exhaust closes after top dead centre", "α_ec", TENTHS_OF_DEGREE)
    in_duration = Output("Intake open for", "φ_i", TENTHS_OF_DEGREE)
    ex_duration = Output("Exhaust open for", "φ_e", TENTHS_OF_DEGREE)
    in_centre = Output("Intake centre after top dead centre", "γ_i", TENTHS_OF_DEGREE)
    ex_centre = Output("Exhaust centre before top dead centre", "γ_e", TENTHS_OF_DEGREE)
