"""What is told of a cone."""

from calc.core.kinds import RATIO, SLOPE
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import FINE_DEGREES, SIZE


class Out(Outputs):
    small = Output("Small end", "d", SIZE, main=True)
    side = Output("Angle of a side to the axis", "α", FINE_DEGREES, main=True)
    one_in = Output("Ratio 1 : x, this is x", "x", form(RATIO, 3))
    per_foot = Output("Taper on the diameter", "C", form(SLOPE, 3, "mm/100 mm", "in/ft"))
    over_low = Output("Over rollers on the plate", "M_1", SIZE)
    over_high = Output("Over rollers on the blocks", "M_2", SIZE)
