"""What is asked of a thread in thin sheet."""

from calc.core.result import impossible
from calc.declare.calculator import Inputs, Number, choice, given, measured
from calc.reference.standards.threads import THREADS
from calc.stations.shared.forms import COARSE, MPA, NEWTON, TIGHTENING, TIMES
from calc.stations.threads.sheet_insert.sold import MACHINE, SCREWS, SHEETS

RIVET, CLINCH, COLLAR, SCREW = "rivet-nut", "clinch-nut", "collar", "screw"
WAYS = {
    RIVET: "Rivet nut",
    CLINCH: "Clinch nut, pressed in",
    COLLAR: "Collar drawn up and tapped",
    SCREW: "Sheet-metal screw",
}


class In(Inputs):
    thickness: Number = measured(
        "Sheet",
        "t",
        COARSE,
        tool="a micrometer, paint off",
        hard="0.3 to 6 mm",
        usual="0.5 to 3 mm",
        example="1 mm",
    )
    way: str = choice("Way of fastening", WAYS, must=True, example=RIVET)
    thread: str = choice(
        "Thread",
        {id: THREADS[id].words for id in MACHINE} | {id: f"{id}, screw for sheet" for id in SCREWS},
        must=True,
        example="M5x0.8",
    )
    alloy: str = choice(
        "Sheet's metal", {id: words for id, (words, _) in SHEETS.items()}, must=True, example="steel"
    )
    torque: Number = given(
        "Torque it will be tightened with",
        "T_g",
        TIGHTENING,
        hard="0.05 to 100 N·m",
        usual="0.3 to 40 N·m",
        example="2 N·m",
    )
    pull: Number = given(
        "Pull it must bear",
        "F_g",
        NEWTON,
        hard="1 to 50000 N",
        usual="10 to 10000 N",
        hint="Weight, shaking and wind together.",
        example="800 N",
    )
    edge: Number = measured(
        "Centre of the hole to the edge",
        "e",
        COARSE,
        tool="a calliper",
        hard="1 to 500 mm",
        usual="4 to 200 mm",
        hint="Or to the next bend.",
        example="15 mm",
    )
    grip_least: Number = given(
        "Rivet nut's grip, least",
        "g_min",
        COARSE,
        hard="0 to 10 mm",
        usual="0.2 to 6 mm",
        when=("way", RIVET),
        hint="From the nut's packet.",
        example="0.5 mm",
    )
    grip_most: Number = given(
        "Rivet nut's grip, most",
        "g_max",
        COARSE,
        hard="0.1 to 15 mm",
        usual="0.5 to 10 mm",
        when=("way", RIVET),
        example="3 mm",
    )
    height: Number = given(
        "Collar's height, sheet and all, over the thickness",
        "z",
        TIMES,
        hard="1 to 3",
        usual="1.5 to 2.2",
        when=("way", COLLAR),
        example="1.8",
    )
    tensile: Number | None = given(
        "Sheet's tensile strength, if known",
        "R_g",
        MPA,
        hard="50 to 1500 MPa",
        usual="80 to 800 MPa",
        fold=True,
    )


def refuse_what_does_not_go_together(i: In) -> None:
    if (i.thread in SCREWS) != (i.way == SCREW):
        kind, those = (
            ("a screw's own thread, which no nut has", "M3x0.5 to M10x1.5")
            if i.thread in SCREWS
            else ("not a sheet-metal screw", "ST2.9 to ST6.3")
        )
        raise impossible(
            "thread", "{thread} is {kind}; choose one of {those}", thread=i.thread, kind=kind, those=those
        )
    if i.grip_least >= i.grip_most:
        raise impossible(
            "grip_least", "is {a}, not less than the most, {b}; give less", a=i.grip_least, b=i.grip_most
        )
