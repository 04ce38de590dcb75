"""What is told of a bolt in a tapped hole."""

from calc.core.kinds import AREA
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import KILONEWTON, ROUGH, TIMES

SURFACE = form(AREA, 1)


class Out(Outputs):
    hole_strips = Output("Force that strips the hole's thread", "F_n", KILONEWTON, main=True)
    bolt_breaks = Output("Force that breaks the bolt", "F_b", KILONEWTON, main=True)
    wanted = Output("Length for the bolt to break first, least", "L_w", ROUGH, main=True)
    bolt_strips = Output("Force that strips the bolt's thread", "F_s", KILONEWTON)
    hole_area = Output("Shear area of the hole's thread", "A_n", SURFACE)
    bolt_area = Output("Shear area of the bolt's thread", "A_s", SURFACE)
    stress_area = Output("Bolt's tensile stress area", "A_t", SURFACE)
    used = Output("Stripping force over breaking force", "k", TIMES)
    strong = Output("Force that breaks the strongest bolt of its class", "F_b,max", KILONEWTON)
