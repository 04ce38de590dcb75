"""What is told of a part that was read with a trial mass."""

from calc.declare.calculator import Output, Outputs
from calc.stations.flywheel.balance_trial.asked import VIBRATION
from calc.stations.flywheel.grade import GRAMS, MOMENT
from calc.stations.shared.forms import TENTHS_OF_DEGREE


class Out(Outputs):
    correction = Output("Mass to add", "m", GRAMS, main=True)
    place = Output("Mass to add at", "α", TENTHS_OF_DEGREE, main=True)
    unbalance = Output("Unbalance found", "U", MOMENT, main=True)
    heavy = Output("Heavy spot at", "φ", TENTHS_OF_DEGREE)
    permitted = Output("Unbalance permitted", "U_per", MOMENT)
    vibration = Output("After it, a check run may read at most", "V_per", VIBRATION)
    answer = Output("Machine answers to the trial mass by", "V_t", VIBRATION)
