"""What is asked of a hole that is to be tapped."""

from calc.declare.calculator import Inputs, Number, choice, given, measured
from calc.stations.shared.forms import SHARE, SIZE
from calc.stations.shared.thread_sizes import fit_of_pair, thread_of

CUT, FORMED = "cutting", "forming"
TAPS = {CUT: "Cutting tap", FORMED: "Forming tap, no chips"}
LISTS = {"metric": "Metric, by 0.1 mm", "inch": "Numbers, letters, 64ths"}


class In(Inputs):
    size: str = thread_of("M8x1.25")
    wanted: Number = given(
        "Thread wanted",
        "q_w",
        SHARE,
        hard="30 to 95 %",
        usual="55 to 85 %",
        assumed=("75 %", "common practice, no source"),
        hint=(
            "75 % is usual, 60 to 65 % in steel, long holes and with a forming tap; common practice, no"
            " source."
        ),
    )
    own: Number | None = measured(
        "Your drill or hole, if you have one",
        "D_own",
        SIZE,
        tool="a micrometer, or pin gauges",
        hard="1.5 to 26 mm",
    )
    drills: str = choice("Drills at hand", LISTS, default="metric")
    tap: str = choice("Kind of tap", TAPS, must=True, example=CUT)
    fit: str = fit_of_pair()
