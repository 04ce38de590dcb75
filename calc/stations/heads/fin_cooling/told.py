"""What comes out, of this casting, of the other, and of the two beside each other."""

from typing import NamedTuple

from calc.core.kinds import AREA, CONDUCTANCE, HEAT, HEAT_TRANSFER, RATIO, SPEED
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import WHOLE_KELVINS

AIR, FACE, WATTS, PERK = (
    form(HEAT_TRANSFER, 1),
    form(AREA, 0, "cm²", "in²"),
    form(HEAT, 0),
    form(CONDUCTANCE, 2),
)
PERCENT = form(RATIO, 1, "%", "%")


class Out(Outputs):
    change = Output("Heat shed by the other, more than this one", "Δ", PERCENT, main=True)
    change_least = Output("The same with a fan that gives no more pressure", "Δ_f", PERCENT, main=True)
    heat_this = Output("This one sheds", "Q_1", WATTS)
    heat_other = Output("The other sheds", "Q_2", WATTS, main=True)
    warmer_this = Output("Air leaves this one warmer by", "ΔT_1", WHOLE_KELVINS)
    warmer_other = Output("Air leaves the other warmer by", "ΔT_2", WHOLE_KELVINS)
    speed_other = Output("Air between the other's fins then, fan as before", "v_f", form(SPEED, 1))
    efficiency_this = Output("Efficiency of a fin, this one", "η_1", PERCENT)
    efficiency_other = Output("Efficiency of a fin, the other", "η_2", PERCENT)
    overall_this = Output("Efficiency of fins and bare wall, this one", "η_o1", PERCENT)
    overall_other = Output("Efficiency of fins and bare wall, the other", "η_o2", PERCENT)
    area_this = Output("Area, this one", "A_1", FACE)
    area_other = Output("Area, the other", "A_2", FACE)
    effective_this = Output("Area at work, this one", "A_e1", FACE)
    effective_other = Output("Area at work, the other", "A_e2", FACE)
    even = Output("Coefficient at which the other sheds no more than this one", "h_e", AIR)
    may_fall = Output("Its coefficient may be less than this one's by", "h_f", PERCENT)


class OfOne(NamedTuple):
    """The results that both castings have."""

    efficiency: Output
    overall: Output
    area: Output
    effective: Output
    heat: Output
    warmer: Output


THIS = OfOne(
    Out.efficiency_this, Out.overall_this, Out.area_this, Out.effective_this, Out.heat_this, Out.warmer_this
)
OTHER = OfOne(
    Out.efficiency_other,
    Out.overall_other,
    Out.area_other,
    Out.effective_other,
    Out.heat_other,
    Out.warmer_other,
)
