"""What is asked of a plunger, and of the parts whose growth moves it."""

from calc.core.working import Number
from calc.declare.calculator import Inputs, choice, given, limit, measured, which_valve
from calc.reference.materials import MATERIALS
from calc.stations.shared.forms import ALPHA, COARSE, DEGREES_C, ROUGH, TIMES

CASES, CYLINDERS, HEADS, VALVES = (
    ("mg-az91", "al-si-t6", "ductile-iron"),
    ("grey-iron", "al-si-t6"),
    ("al-si-t6", "al-si-cu-t6"),
    ("valve-steel", "austenitic-valve-steel"),
)


class In(Inputs):
    preload: Number = measured(
        "Plunger pressed in, cold",
        "p",
        COARSE,
        tool="a dial gauge, lifter bled down, valve shut",
        hard="-5 to 20 mm",
        usual="0.3 to 5 mm",
        feature="lifter.preload",
        stage="",
        hint=(
            "Each valve by itself. 0 where the pushrod just touches the plunger on its upper stop, minus"
            " where it has play."
        ),
    )
    travel: Number = measured(
        "Plunger travel, stop to stop",
        "S",
        COARSE,
        tool="a dial gauge",
        hard="0.2 to 25 mm",
        usual="1 to 8 mm",
        feature="lifter.travel",
    )
    pushrod: Number = measured(
        "Pushrod fitted",
        "L_p",
        COARSE,
        tool="a height gauge",
        hard="20 to 600 mm",
        usual="80 to 350 mm",
        feature="lifter.pushrod",
        stage="",
    )
    valve: str = which_valve()
    case_material: str = choice(
        "Case, material",
        {id: MATERIALS[id].name for id in CASES},
        feature="crankcase.alloy",
        example="mg-az91",
        fold=True,
    )
    case_length: Number = measured(
        "Case, cam to cylinder seat",
        "L_c",
        ROUGH,
        tool="a height gauge",
        hard="0 to 400 mm",
        usual="40 to 200 mm",
        feature="crankcase.seat_height",
        fold=True,
        hint="Along the cylinder.",
    )
    cylinder: Number = measured(
        "Cylinder, seat to head",
        "L_z",
        ROUGH,
        tool="a height gauge",
        hard="0 to 400 mm",
        usual="50 to 200 mm",
        feature="cylinder.length",
        fold=True,
    )
    head: Number = measured(
        "Head, sealing face to rocker shaft",
        "L_h",
        ROUGH,
        tool="a height gauge",
        hard="0 to 300 mm",
        usual="60 to 200 mm",
        feature="head.rocker_height",
        fold=True,
    )
    lifter: Number = given(
        "Cam centre to the pushrod's seat in the lifter",
        "L_l",
        ROUGH,
        hard="1 to 200 mm",
        usual="20 to 120 mm",
        feature="lifter.reach",
        fold=True,
        hint="Base circle's radius and body.",
    )
    valve_length: Number = measured(
        "Valve, seat to tip",
        "L_v",
        ROUGH,
        tool="a calliper",
        hard="10 to 300 mm",
        usual="60 to 160 mm",
        feature="valve.length",
        fold=True,
    )
    ratio: Number = given(
        "Rocker's ratio",
        "i",
        TIMES,
        hard="0.5 to 3",
        usual="0.9 to 1.8",
        feature="valve.rocker_ratio",
        fold=True,
        hint="Valve side over pushrod side.",
    )
    cylinder_material: str = choice(
        "Cylinder, material",
        {id: MATERIALS[id].name for id in CYLINDERS},
        fold=True,
        feature="cylinder.alloy",
        example="grey-iron",
    )
    head_material: str = choice(
        "Head, material",
        {id: MATERIALS[id].name for id in HEADS},
        fold=True,
        feature="head.alloy",
        example="al-si-t6",
    )
    valve_material: str = choice(
        "Valve, material",
        {id: MATERIALS[id].name for id in VALVES},
        fold=True,
        feature="valve.alloy_{valve}",
        example="valve-steel",
    )
    pushrod_expansion: Number = given(
        "Expansion of the pushrod",
        "α_p",
        ALPHA,
        hard="5 to 30 µm/(m·K)",
        usual="10 to 25 µm/(m·K)",
        feature="lifter.pushrod_expansion",
        fold=True,
        hint="Steel about 12, aluminium tube about 24.",
    )
    case_temperature: Number = given(
        "Case temperature, running",
        "T_c",
        DEGREES_C,
        hard="-40 to 180 °C",
        usual="50 to 130 °C",
        feature="crankcase.running_temperature",
        fold=True,
    )
    cylinder_temperature: Number = given(
        "Cylinder, running, mean",
        "T_z",
        DEGREES_C,
        hard="-40 to 300 °C",
        usual="90 to 220 °C",
        feature="cylinder.running_temperature",
        fold=True,
    )
    head_temperature: Number = given(
        "Head, running, mean",
        "T_h",
        DEGREES_C,
        hard="-40 to 300 °C",
        usual="90 to 220 °C",
        feature="head.running_temperature",
        fold=True,
    )
    valve_temperature: Number = given(
        "Valve, running, mean",
        "T_v",
        DEGREES_C,
        hard="-40 to 600 °C",
        usual="100 to 500 °C",
        feature="valve.running_temperature_{valve}",
        fold=True,
    )
    rod_temperature: Number = given(
        "Pushrod and lifter, running",
        "T_p",
        DEGREES_C,
        hard="-40 to 150 °C",
        usual="50 to 130 °C",
        feature="lifter.running_temperature",
        fold=True,
    )
    sinking: Number = limit(
        "Stem's tip may still rise by",
        "z_v",
        COARSE,
        feature="head.stem_rise",
        which="wear",
        hard="0 to 5 mm",
        usual="0.2 to 1.5 mm",
        hint="As the valve sinks into its seat, until its wear limit.",
    )
    wear: Number = limit(
        "Cam and lifter may still wear by",
        "z_c",
        COARSE,
        feature="cam.may_wear",
        which="nominal",
        hard="0 to 3 mm",
        usual="0 to 0.4 mm",
        hint="On the base circle and the foot.",
    )
    least_top: Number = given(
        "To the upper stop, least",
        "u_w",
        COARSE,
        hard="0 to 5 mm",
        usual="0.1 to 1 mm",
        fold=True,
        assumed=("0.30 mm", "common practice, no source"),
    )
    least_bottom: Number = given(
        "To the lower stop, least",
        "l_w",
        COARSE,
        hard="0 to 5 mm",
        usual="0.1 to 1.5 mm",
        fold=True,
        assumed=("0.50 mm", "common practice, no source"),
    )
