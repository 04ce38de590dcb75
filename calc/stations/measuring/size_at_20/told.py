"""What is told of a size that was read warm."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import FINE, SIZE


class Out(Outputs):
    size = Output("Size at 20 °C", "L_20", SIZE, main=True)
    correction = Output("Correction", "c", SIZE, main=True)
    doubt = Output("Doubt of warmth, ±", "U", FINE, main=True)
    from_temperature = Output("Of it from the temperatures, ±", "U_t", FINE)
    from_expansion = Output("Of it from the part's expansion, ±", "U_α", FINE)
    per_kelvin = Output("One kelvin of the part is worth", "c_1", FINE)
