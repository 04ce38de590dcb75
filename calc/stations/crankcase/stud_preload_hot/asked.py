"""What is asked: the cold preload, the stud, and what it clamps, each part with its own size, material and
temperature."""

from typing import Any

from calc.core.kinds import AREA, EXPANSION, MODULUS
from calc.core.working import form
from calc.declare.calculator import Inputs, Number, Rows, choice, column, given, grid, measured
from calc.stations.shared import bolts
from calc.stations.shared.asked import material_of
from calc.stations.shared.forms import COARSE, DEGREES_C, KILONEWTON, ROUGH, SHARE
from calc.stations.shared.thread_sizes import SIZES

STUD = "forged-steel"
CYLINDERS = ("grey-iron", "ductile-iron", "al-si-t6", "al-si-cu-t6")
HEADS = ("al-si-cu-t6", "al-si-t6", "grey-iron")
CASES = ("mg-az91", "al-si-t6", "al-si-cu-t6")
FACE = form(AREA, 0)


def _length(of: str, symbol: str, feature: str) -> Any:
    return given(
        f"{of}: length that is clamped",
        symbol,
        ROUGH,
        hard="0 to 500 mm",
        usual="0 to 200 mm",
        feature=feature,
    )


def _section(of: str, symbol: str, feature: str) -> Any:
    return given(
        f"{of}: section that one stud presses",
        symbol,
        FACE,
        hard="20 to 20000 mm²",
        usual="100 to 4000 mm²",
        feature=feature,
        fold=True,
    )


def _temperature(label: str, symbol: str, feature: str, why: str, usual: str = "60 to 250 °C") -> Any:
    return given(
        label, symbol, DEGREES_C, hard="-60 to 300 °C", usual=usual, feature=feature, fold=True, assumed=why
    )


class In(Inputs):
    preload: Number = given(
        "Preload, cold",
        "F",
        KILONEWTON,
        hard="0.1 to 400 kN",
        usual="1 to 120 kN",
        hint="Where only the torque is known, the torque calculator tells it.",
        example="13 kN",
    )
    thread: str = choice("Thread of the stud", SIZES, must=True, example="M10x1.5")
    strength: str = choice("Class of the stud", bolts.NAMES, must=True, example="10.9")
    shank: Number = measured(
        "Stud's shank",
        "d_w",
        COARSE,
        tool="a calliper",
        hard="2 to 60 mm",
        usual="4 to 20 mm",
        feature="stud.shank",
        stage="",
        hint="A waisted stud: its waist. A stud with thread all along: the thread's stress diameter.",
    )
    thread_length: Number = given(
        "Free thread within the clamp",
        "L_t",
        ROUGH,
        hard="0 to 400 mm",
        usual="0 to 60 mm",
        feature="stud.free_thread",
        hint="Under the nut, and above the face of the thread in the case.",
    )
    cylinder: Number = _length("Cylinder", "L_z", "cylinder.length")
    head: Number = _length("Head", "L_k", "head.clamped_length")
    case: Number = _length("Case", "L_g", "crankcase.clamped_length")
    pull: Number | None = given(
        "Pull at which the thread in the case gives way, hot",
        "F_p",
        KILONEWTON,
        hard="0.5 to 1000 kN",
        usual="5 to 200 kN",
        hint="The calculator of the insert tells it. Empty: the thread in the case is not judged.",
    )
    gas: Number | None = given(
        "Gas pulls at each stud",
        "F_g",
        KILONEWTON,
        hard="0.1 to 200 kN",
        usual="1 to 40 kN",
        feature="stud.gas_load",
        hint="Greatest pressure on the bore's area, shared by its studs. Empty where it is none.",
    )
    cylinder_material: str = material_of(
        "Cylinder, material", CYLINDERS, feature="cylinder.alloy", example="grey-iron"
    )
    head_material: str = material_of("Head, material", HEADS, feature="head.alloy", example="al-si-cu-t6")
    case_material: str = material_of("Case, material", CASES, feature="crankcase.alloy", example="mg-az91")
    own: Rows = grid(
        "Maker's own values of the material",
        ("stud", "cylinder", "head", "case"),
        (
            column(
                "Stiffness E",
                "E",
                form(MODULUS, 0),
                hard="20 to 700 GPa",
                usual="40 to 250 GPa",
                optional=True,
            ),
            column(
                "Expansion, 20 to 100 °C",
                "α",
                form(EXPANSION, 1),
                hard="2 to 35 µm/(m·K)",
                usual="9 to 27 µm/(m·K)",
                optional=True,
            ),
        ),
        least=0,
        fold=True,
        hint="A stainless stud: about 195 GPa and 16 µm/(m·K), from memory.",
    )
    cylinder_section: Number = _section("Cylinder", "A_z", "cylinder.clamped_section")
    head_section: Number = _section("Head", "A_k", "head.clamped_section")
    case_section: Number = _section("Case", "A_g", "crankcase.clamped_section")
    band: Number = given(
        "Those sections may be larger by",
        "w_A",
        SHARE,
        hard="0 to 200 %",
        usual="10 to 60 %",
        fold=True,
        assumed=("30 %", "fins and walls bear nobody knows how much; common practice, no source"),
    )
    stud_temperature: Number = _temperature(
        "Stud, running", "T_s", "stud.running_temperature", "common practice, no source"
    )
    cylinder_temperature: Number = _temperature(
        "Cylinder, running, mean", "T_z", "cylinder.running_temperature", "common practice, no source"
    )
    head_temperature: Number = _temperature(
        "Head, running, mean", "T_k", "head.running_temperature", "common practice, no source"
    )
    case_temperature: Number = _temperature(
        "Case, running", "T_g", "crankcase.running_temperature", "common practice, no source", "40 to 140 °C"
    )
    stud_warming: Number = _temperature(
        "Stud, when cylinder and head are first hot",
        "T_1",
        "stud.warming_temperature",
        "common practice, no source",
        "20 to 150 °C",
    )
    frost: Number = given(
        "Coldest start, all parts",
        "T_f",
        DEGREES_C,
        hard="-60 to 20 °C",
        usual="-40 to 20 °C",
        fold=True,
        assumed=("-20 °C", "a hard winter; common practice, no source"),
    )
    thread_friction: Number = bolts.thread_friction("Oiled about 0.12, dry 0.14 to 0.24.", fold=True)
    head_friction: Number = bolts.head_friction(fold=True)
    spread: Number = bolts.friction_spread("None where the stud's stretch is read.")
    bearing: Number | None = bolts.bearing_diameter("2 to 80 mm")
