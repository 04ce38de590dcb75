"""What is told of a part's unbalance and of the holes that take it out."""

from calc.declare.calculator import Output, Outputs
from calc.stations.flywheel.grade import GRAMS, MOMENT
from calc.stations.shared.forms import COARSE, SIZE, TENTHS_OF_DEGREE


class Out(Outputs):
    left = Output("Unbalance of the part", "U", MOMENT, main=True)
    heavy = Output("Heavy spot at", "φ", TENTHS_OF_DEGREE, main=True)
    permitted = Output("Unbalance permitted", "U_per", MOMENT, main=True)
    arbor = Output("Unbalance of arbor and machine", "U_a", MOMENT)
    offset = Output("Centre of mass off the axis by", "e", SIZE)
    mass_one = Output("Drilled out, first hole", "m_1", GRAMS)
    mass_two = Output("Drilled out, second hole", "m_2", GRAMS)
    shoulder = Output("Depth of the full diameter, first hole", "h_1", COARSE)
    tip = Output("Depth to the tip, first hole", "z_1", COARSE)
    shoulder_two = Output("Depth of the full diameter, second hole", "h_2", COARSE)
    tip_two = Output("Depth to the tip, second hole", "z_2", COARSE)
    through = Output("Instead of the first, right through the wall from the face: diameter", "D_t", COARSE)
