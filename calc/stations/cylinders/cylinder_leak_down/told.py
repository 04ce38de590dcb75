"""What is told of a cylinder's leak-down test."""

from calc.core.kinds import FLOW, FORCE, PRESSURE, TORQUE
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import SHARE, SIZE, TIMES

KPA = form(PRESSURE, 0)
LITRES = form(FLOW, 1, "L/min", "ft³/min")


class Out(Outputs):
    standard = Output(
        "Pressure left, as the sheet's tester shows it", "p_s", KPA, main=True, feature="cylinder.leak_down"
    )
    hole = Output("Round hole that leaks as much", "d", SIZE, main=True)
    flow = Output("Leak, as air at 0 °C and 1 atm", "q", LITRES, main=True)
    loss = Output("Lost of the supply", "v", SHARE)
    hole_worn = Output("Hole that the limit allows", "d_w", SIZE)
    choking = Output("Pressure outside ÷ pressure in the cylinder, absolute", "r", TIMES)
    force = Output("Air pushes on the piston with", "F", form(FORCE, 0))
    torque = Output("and turns the crank, 10° off the top, with", "M", form(TORQUE, 0))
