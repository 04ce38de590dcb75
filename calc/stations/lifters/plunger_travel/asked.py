"""What is asked of a plunger, and of the parts whose growth moves it."""

from calc.core.working import Number
from calc.declare.calculator import Inputs, given, limit, measured, which_valve
from calc.stations.shared import valve_train as train
from calc.stations.shared.forms import COARSE


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
    case_material: str = train.CASE_MATERIAL
    case_length: Number = train.CASE_LENGTH
    cylinder: Number = train.CYLINDER
    head: Number = train.HEAD
    lifter: Number = train.LIFTER
    valve_length: Number = train.VALVE_LENGTH
    ratio: Number = train.RATIO
    cylinder_material: str = train.CYLINDER_MATERIAL
    head_material: str = train.HEAD_MATERIAL
    valve_material: str = train.VALVE_MATERIAL
    pushrod_expansion: Number = train.pushrod_expansion()
    case_temperature: Number = train.CASE_TEMPERATURE
    cylinder_temperature: Number = train.CYLINDER_TEMPERATURE
    head_temperature: Number = train.HEAD_TEMPERATURE
    valve_temperature: Number = train.VALVE_TEMPERATURE
    rod_temperature: Number = train.ROD_TEMPERATURE
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
