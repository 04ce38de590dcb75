"""What a reading tells of its size."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import FINE, FINE_SHARE, SIZE, TIMES


class Out(Outputs):
    probability = Output("Probability that it is within", "P", FINE_SHARE, main=True)
    margin = Output("Inside the nearer limit by", "m", SIZE, main=True)
    in_doubts = Output("The same, counted in doubts U", "m_U", TIMES)
    guard = Output("A proven reading stays inside a single limit by", "g", FINE)
    deciding = Output("Doubt that would prove it, at most", "U_d", FINE)
