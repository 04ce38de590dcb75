"""What is asked of a bolt that is tightened."""

from calc.declare.calculator import Inputs, Number, choice, given
from calc.stations.shared import bolts
from calc.stations.shared.clamped import clamps, hot_over_cold, known_hot
from calc.stations.shared.forms import FRICTION, KILONEWTON, MPA, TIGHTENING
from calc.stations.shared.thread_sizes import SIZES

TORQUE, PRELOAD = "torque", "preload"


class In(Inputs):
    known: str = choice("Start from", {TORQUE: "The torque", PRELOAD: "The preload wanted"}, default=TORQUE)
    torque: Number = given(
        "Torque",
        "T_g",
        TIGHTENING,
        hard="0.1 to 2000 N·m",
        usual="1 to 400 N·m",
        when=("known", TORQUE),
        hint="Used where the torque is given.",
        example="22 N·m",
    )
    wanted: Number = given(
        "Preload wanted",
        "F_g",
        KILONEWTON,
        hard="0.05 to 1000 kN",
        usual="0.5 to 300 kN",
        when=("known", PRELOAD),
        hint="Used where the preload is given.",
        example="13 kN",
    )
    thread: str = choice("Thread", SIZES, must=True, example="M10x1.5")
    strength: str = choice("Class of the bolt or stud", bolts.NAMES, must=True, example="8.8")
    clamped: str = clamps()
    thread_friction: Number = bolts.thread_friction("Oiled about 0.12, dry 0.14 to 0.24.")
    head_friction: Number = bolts.head_friction()
    hot: Number = hot_over_cold()
    hot_force: Number | None = known_hot()
    needed: Number | None = given(
        "Preload that the joint needs, least", "F_n", KILONEWTON, hard="0.05 to 1000 kN", fold=True
    )
    nut_factor: Number | None = given(
        "Nut factor, instead of friction",
        "K",
        FRICTION,
        hard="0.08 to 0.35",
        usual="0.1 to 0.3",
        fold=True,
        hint=(
            "Torque over preload times nominal diameter; taken as the same friction in thread and under the"
            " nut."
        ),
    )
    bearing: Number | None = bolts.bearing_diameter("2 to 80 mm")
    yields: Number | None = given(
        "Yield stress, instead of the class",
        "R_g",
        MPA,
        hard="50 to 2500 MPa",
        usual="200 to 1400 MPa",
        fold=True,
    )
    spread: Number = bolts.friction_spread()
