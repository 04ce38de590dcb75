"""What is asked of a thread whose limits are wanted."""

from calc.declare.calculator import Inputs, Number, choice, measured
from calc.stations.shared.forms import SIZE
from calc.stations.shared.thread_sizes import fit_of_pair, thread_of

BOLT, HOLE = "bolt", "hole"
PARTS = {BOLT: "Bolt, stud or screw", HOLE: "Tapped hole or nut"}


class In(Inputs):
    size: str = thread_of("M8x1.25")
    part: str = choice("Bolt or hole", PARTS, must=True, example=BOLT)
    crest_read: Number | None = measured(
        "Your bolt's outside, or hole's bore",
        "c",
        SIZE,
        tool="a micrometer; in a hole, pin gauges",
        hard="2 to 26 mm",
    )
    pitch_read: Number | None = measured(
        "Your pitch diameter", "p", SIZE, tool="three wires or a thread micrometer", hard="2 to 26 mm"
    )
    fit: str = fit_of_pair()
