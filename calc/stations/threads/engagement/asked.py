"""What is asked of a bolt in a tapped hole."""

from calc.declare.calculator import Inputs, Number, choice, given
from calc.formulas.screw_threads import SHEAR_SHARE
from calc.stations.shared.asked import material_of
from calc.stations.shared.forms import KILONEWTON, MPA, ROUGH, TIMES
from calc.stations.shared.thread_sizes import fit_of_pair, thread_of
from calc.stations.threads.engagement.bolt_strength import BOLTS

PARENTS = (
    "al-si-t6",
    "al-si-cu-t6",
    "mg-az91",
    "grey-iron",
    "ductile-iron",
    "forged-steel",
    "bronze",
    "brass",
)
# × the least strength: 8.8 may have 320 HV, 10.9 380 HV (ISO 898-1, as a fastener dealer prints it), at about
# 3.1 MPa a point.
STRONGEST = "1.25"


class In(Inputs):
    size: str = thread_of("M8x1.25")
    length: Number = given(
        "Length of full threads engaged",
        "L",
        ROUGH,
        hard="0.7 to 100 mm",
        usual="3 to 60 mm",
        hint="Whole turns that touch: without chamfers, run-out and the bolt's point.",
        example="16 mm",
    )
    parent: str = material_of("Metal round the hole", PARENTS, example="al-si-cu-t6", fold=False, must=True)
    bolt_class: str = choice("Class of the bolt", BOLTS, must=True, example="8.8")
    pull: Number | None = given(
        "Preload hot, if you know it",
        "F_h",
        KILONEWTON,
        hard="0.05 to 1000 kN",
        usual="0.5 to 300 kN",
        hint=(
            "Of a stud that clamps an air-cooled cylinder: half as much again as cold; common practice, no"
            " source."
        ),
    )
    parent_strength: Number | None = given(
        "Hole's tensile strength, if you know it",
        "R_own",
        MPA,
        hard="30 to 2000 MPa",
        usual="100 to 1500 MPa",
        fold=True,
    )
    bolt_strength: Number | None = given(
        "Bolt's tensile strength, most, if you know it",
        "R_bolt",
        MPA,
        hard="100 to 2200 MPa",
        usual="300 to 1600 MPa",
        fold=True,
    )
    strongest: Number = given(
        "Strongest bolt of the class, over the weakest",
        "k_R",
        TIMES,
        hard="1 to 2",
        usual="1.1 to 1.8",
        fold=True,
        assumed=(STRONGEST, "by the most hardness that ISO 898-1 allows 8.8"),
        hint="Counts where the class is told. The softer the class, the more: up to 1.8 for 4.6.",
    )
    shear: Number = given(
        "Shear strength, of the tensile",
        "k_τ",
        TIMES,
        hard="0.3 to 0.9",
        usual="0.5 to 0.7",
        fold=True,
        assumed=(str(SHEAR_SHARE), "FED-STD-H28, on the safe side"),
        hint="0.5 by FED-STD-H28; tests lie nearer to 0.6 for most metals.",
    )
    fit: str = fit_of_pair()
