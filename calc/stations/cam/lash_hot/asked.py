"""What is asked of a valve's lash: what it is cold, and the parts whose growth changes it."""

from typing import Any

from calc.core.working import Number
from calc.declare.calculator import Inputs, choice, given, limit, measured, which_valve
from calc.reference.materials import MATERIALS
from calc.stations.shared.forms import ALPHA, COARSE, DEGREES_C, ROUGH, TIMES


def _length(label: str, symbol: str, feature: str, hard: str, usual: str, hint: str = "") -> Any:
    return given(label, symbol, ROUGH, hard=hard, usual=usual, feature=feature, fold=True, hint=hint)


def _heat(label: str, symbol: str, feature: str, hard: str, usual: str) -> Any:
    return given(label, symbol, DEGREES_C, hard=hard, usual=usual, feature=feature, fold=True)


def _material(label: str, ids: tuple[str, ...], feature: str, example: str) -> Any:
    return choice(label, {id: MATERIALS[id].name for id in ids}, fold=True, feature=feature, example=example)


class In(Inputs):
    lash: Number = measured(
        "Lash, cold",
        "s",
        COARSE,
        tool="feelers, at room heat",
        hard="0 to 2 mm",
        usual="0 to 0.5 mm",
        feature="lifter.lash",
        stage="finished",
        hint="At the valve. Solid lifters only.",
    )
    valve: str = which_valve("The exhaust valve is hotter and longer when it runs.")
    pushrod_expansion: Number = given(
        "Expansion of the pushrod",
        "α_p",
        ALPHA,
        hard="5 to 30 µm/(m·K)",
        usual="10 to 25 µm/(m·K)",
        feature="lifter.pushrod_expansion",
        hint="Steel about 12, aluminium tube with steel ends about 22.",
    )
    frost: Number = given(
        "Coldest start",
        "T_f",
        DEGREES_C,
        hard="-60 to 30 °C",
        usual="-40 to 10 °C",
        assumed=("-5 °C", "a frosty morning; give the coldest of your winter"),
        fold=True,
    )
    case: Number = _length(
        "Case, cam to cylinder seat", "L_c", "crankcase.seat_height", "0 to 400 mm", "40 to 200 mm"
    )
    cylinder: Number = _length(
        "Cylinder, seat to head", "L_z", "cylinder.length", "0 to 400 mm", "50 to 200 mm"
    )
    head: Number = _length(
        "Head, sealing face to rocker shaft", "L_h", "head.rocker_height", "0 to 300 mm", "60 to 200 mm"
    )
    lifter: Number = _length(
        "Cam centre to the pushrod's seat in the lifter",
        "L_l",
        "lifter.reach",
        "0 to 200 mm",
        "20 to 120 mm",
        "Base circle's radius and body.",
    )
    pushrod: Number = _length("Pushrod", "L_p", "lifter.pushrod", "20 to 600 mm", "80 to 350 mm")
    length: Number = _length("Valve, seat to tip", "L_v", "valve.length", "10 to 300 mm", "60 to 160 mm")
    beside: Number = _length(
        "Head, valve seat to rocker shaft", "L_b", "head.seat_to_shaft", "5 to 300 mm", "50 to 160 mm"
    )
    ratio: Number = given(
        "Rocker's ratio",
        "i",
        TIMES,
        hard="0.5 to 3",
        usual="0.9 to 1.8",
        feature="valve.rocker_ratio",
        fold=True,
    )
    case_material: str = _material(
        "Case, material", ("mg-az91", "al-si-t6", "ductile-iron"), "crankcase.alloy", "mg-az91"
    )
    cylinder_material: str = _material(
        "Cylinder, material", ("grey-iron", "al-si-t6"), "cylinder.alloy", "grey-iron"
    )
    head_material: str = _material(
        "Head, material", ("al-si-t6", "al-si-cu-t6", "grey-iron"), "head.alloy", "al-si-cu-t6"
    )
    valve_material: str = _material(
        "Valve, material", ("valve-steel", "austenitic-valve-steel"), "valve.alloy_{valve}", "valve-steel"
    )
    case_heat: Number = _heat(
        "Case, running", "T_c", "crankcase.running_temperature", "-40 to 180 °C", "50 to 130 °C"
    )
    cylinder_heat: Number = _heat(
        "Cylinder, running, mean", "T_z", "cylinder.running_temperature", "-40 to 300 °C", "90 to 220 °C"
    )
    head_heat: Number = _heat(
        "Head, running, mean", "T_h", "head.running_temperature", "-40 to 300 °C", "90 to 220 °C"
    )
    valve_heat: Number = _heat(
        "Valve, running, mean", "T_v", "valve.running_temperature_{valve}", "-40 to 600 °C", "100 to 500 °C"
    )
    rod_heat: Number = _heat(
        "Pushrod and lifter, running", "T_p", "lifter.running_temperature", "-40 to 150 °C", "50 to 130 °C"
    )
    least: Number = limit(
        "Lash running, least",
        "s_min",
        COARSE,
        feature="lifter.lash_hot",
        which="low",
        hard="0 to 1 mm",
        usual="0 to 0.3 mm",
    )
    most: Number = limit(
        "Lash running, most",
        "s_max",
        COARSE,
        feature="lifter.lash_hot",
        which="high",
        hard="0.01 to 3 mm",
        usual="0.1 to 1.2 mm",
    )
