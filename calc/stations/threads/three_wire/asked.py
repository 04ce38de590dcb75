"""What is asked of a thread that is read over three wires."""

from calc.declare.calculator import Inputs, Number, measured
from calc.stations.shared.forms import FINE, SIZE
from calc.stations.shared.thread_sizes import fit_of_pair, thread_of


class In(Inputs):
    reading: Number = measured(
        "Reading over the wires",
        "M",
        SIZE,
        tool="a micrometer, all three wires in place",
        hard="2 to 35 mm",
        usual="3 to 30 mm",
        example="10.228 mm",
    )
    wire: Number = measured(
        "Wire",
        "w",
        FINE,
        tool="a micrometer, or the paper that came with the wires",
        hard="0.2 to 4 mm",
        usual="0.25 to 3.2 mm",
        example="0.8660 mm",
    )
    size: str = thread_of("M10x1.5")
    fit: str = fit_of_pair()
