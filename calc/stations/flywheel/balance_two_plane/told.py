"""What is told of a set that was read in two planes."""

from calc.core.kinds import RATIO
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.flywheel.grade import GRAMS, MOMENT
from calc.stations.shared.forms import TENTHS_OF_DEGREE


class Out(Outputs):
    mass_a = Output("Mass to add in plane A", "m_A", GRAMS, main=True)
    place_a = Output("In plane A, at", "α_A", TENTHS_OF_DEGREE)
    mass_b = Output("Mass to add in plane B", "m_B", GRAMS, main=True)
    place_b = Output("In plane B, at", "α_B", TENTHS_OF_DEGREE)
    unbalance_a = Output("Unbalance found in A", "U_A", MOMENT)
    unbalance_b = Output("Unbalance found in B", "U_B", MOMENT)
    permitted_a = Output("Permitted in A", "P_A", MOMENT)
    permitted_b = Output("Permitted in B", "P_B", MOMENT)
    condition = Output("Planes told apart: condition, 1 at best", "κ", form(RATIO, 1))
