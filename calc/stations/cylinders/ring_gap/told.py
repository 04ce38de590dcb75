"""What is told of a piston's rings."""

from calc.core.kinds import RATIO
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE


class Out(Outputs):
    hot = Output("Least gap left when hot", "s_1", COARSE, main=True)
    gap = Output("Least gap, cold, where the bore is smallest", "s_k", COARSE, main=True)
    top = Output("Largest gap, cold, where the bore is most worn", "s_g", COARSE)
    closes = Output("Gap, cold, that just closes when hot", "s_0", COARSE)
    wanted = Output("Gap, cold, that leaves what is to be left", "s_w", COARSE)
    share = Output("That, in thousandths of the bore", "s_w/D", form(RATIO, 2, "‰", "‰"))
