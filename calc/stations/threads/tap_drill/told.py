"""What is told of a hole that is to be tapped."""

from calc.core.kinds import RATIO
from calc.core.working import form
from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import SIZE

THREAD_SHARE = form(RATIO, 1, "%", "%")


class Out(Outputs):
    drill = Output("Drill", "D_d", SIZE, main=True)
    share = Output("Thread that it leaves (full at 1.299·P)", "q", THREAD_SHARE, main=True)
    share_of_height = Output(
        "The same, of the height to the basic bore (full at 1.0825·P)", "q_1", THREAD_SHARE
    )
    bore = Output("Bore of the finished thread", "D_1", SIZE)
    bore_low = Output("Bore allowed, least", "D_1,min", SIZE)
    bore_high = Output("Bore allowed, most", "D_1,max", SIZE)
