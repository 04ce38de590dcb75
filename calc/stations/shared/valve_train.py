"""What is asked of the parts whose growth moves a plunger or a lash: from the cam to the rocker shaft, and
along the valve."""

from typing import Any

from calc.declare.calculator import given, measured
from calc.stations.shared.asked import material_of
from calc.stations.shared.forms import ALPHA, DEGREES_C, ROUGH, TIMES


def _length(label: str, symbol: str, feature: str, hard: str, usual: str, tool: str, hint: str = "") -> Any:
    return measured(
        label, symbol, ROUGH, tool=tool, hard=hard, usual=usual, feature=feature, fold=True, hint=hint
    )


def _running(label: str, symbol: str, feature: str, hard: str, usual: str) -> Any:
    return given(label, symbol, DEGREES_C, hard=hard, usual=usual, feature=feature, fold=True)


CASE_LENGTH = _length(
    "Case, cam to cylinder seat",
    "L_c",
    "crankcase.seat_height",
    "0 to 400 mm",
    "40 to 200 mm",
    "a height gauge",
    "Along the cylinder.",
)
CYLINDER = _length(
    "Cylinder, seat to head", "L_z", "cylinder.length", "0 to 400 mm", "50 to 200 mm", "a height gauge"
)
HEAD = _length(
    "Head, sealing face to rocker shaft",
    "L_h",
    "head.rocker_height",
    "0 to 300 mm",
    "60 to 200 mm",
    "a height gauge",
)
VALVE_LENGTH = _length(
    "Valve, seat to tip", "L_v", "valve.length", "10 to 300 mm", "60 to 160 mm", "a calliper"
)
LIFTER = given(
    "Cam centre to the pushrod's seat in the lifter",
    "L_l",
    ROUGH,
    hard="1 to 200 mm",
    usual="20 to 120 mm",
    feature="lifter.reach",
    fold=True,
    hint="Base circle's radius and body.",
)
RATIO = given(
    "Rocker's ratio",
    "i",
    TIMES,
    hard="0.5 to 3",
    usual="0.9 to 1.8",
    feature="valve.rocker_ratio",
    fold=True,
    hint="Valve side over pushrod side.",
)

CASE_MATERIAL = material_of(
    "Case, material", ("mg-az91", "al-si-t6", "ductile-iron"), feature="crankcase.alloy", example="mg-az91"
)
CYLINDER_MATERIAL = material_of(
    "Cylinder, material", ("grey-iron", "al-si-t6"), feature="cylinder.alloy", example="grey-iron"
)
HEAD_MATERIAL = material_of(
    "Head, material", ("al-si-t6", "al-si-cu-t6", "grey-iron"), feature="head.alloy", example="al-si-cu-t6"
)
VALVE_MATERIAL = material_of(
    "Valve, material",
    ("valve-steel", "austenitic-valve-steel"),
    feature="valve.alloy_{valve}",
    example="valve-steel",
)

CASE_TEMPERATURE = _running(
    "Case, running", "T_c", "crankcase.running_temperature", "-40 to 180 °C", "50 to 130 °C"
)
CYLINDER_TEMPERATURE = _running(
    "Cylinder, running, mean", "T_z", "cylinder.running_temperature", "-40 to 300 °C", "90 to 220 °C"
)
HEAD_TEMPERATURE = _running(
    "Head, running, mean", "T_h", "head.running_temperature", "-40 to 300 °C", "90 to 220 °C"
)
VALVE_TEMPERATURE = _running(
    "Valve, running, mean", "T_v", "valve.running_temperature_{valve}", "-40 to 600 °C", "100 to 500 °C"
)
ROD_TEMPERATURE = _running(
    "Pushrod and lifter, running", "T_p", "lifter.running_temperature", "-40 to 150 °C", "50 to 130 °C"
)


def pushrod_expansion(fold: bool = True) -> Any:
    """In sight where it is what decides."""
    return given(
        "Expansion of the pushrod",
        "α_p",
        ALPHA,
        hard="5 to 30 µm/(m·K)",
        usual="10 to 25 µm/(m·K)",
        feature="lifter.pushrod_expansion",
        fold=fold,
        hint="Steel about 12, aluminium tube about 24, with steel ends about 22.",
    )
