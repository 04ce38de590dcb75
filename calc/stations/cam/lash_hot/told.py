"""What is told of a valve's lash once the engine is hot, or in frost."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE


class Out(Outputs):
    running = Output("Lash, running", "s_h", COARSE, main=True, feature="lifter.lash_hot")
    frost = Output("Lash at the coldest start", "s_f", COARSE, main=True)
    cold = Output("Cold lash, least that serves", "s_c", COARSE, main=True)
    train = Output("Shaft goes from the lifter more than the pushrod follows, by", "Δ_t", COARSE)
    stem = Output("Stem's tip rises over the shaft by", "Δ_v", COARSE)
