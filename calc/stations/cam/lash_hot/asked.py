"""What is asked of a valve's lash: what it is cold, and the parts whose growth changes it."""

from calc.core.working import Number
from calc.declare.calculator import Inputs, given, limit, measured, which_valve
from calc.stations.shared import valve_train as train
from calc.stations.shared.forms import COARSE, DEGREES_C, ROUGH


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
    pushrod_expansion: Number = train.pushrod_expansion(fold=False)
    frost: Number = given(
        "Coldest start",
        "T_f",
        DEGREES_C,
        hard="-60 to 30 °C",
        usual="-40 to 10 °C",
        assumed=("-5 °C", "a frosty morning; give the coldest of your winter"),
        fold=True,
    )
    case_length: Number = train.CASE_LENGTH
    cylinder: Number = train.CYLINDER
    head: Number = train.HEAD
    lifter: Number = train.LIFTER
    pushrod: Number = given(
        "Pushrod",
        "L_p",
        ROUGH,
        hard="20 to 600 mm",
        usual="80 to 350 mm",
        feature="lifter.pushrod",
        fold=True,
    )
    valve_length: Number = train.VALVE_LENGTH
    beside: Number = given(
        "Head, valve seat to rocker shaft",
        "L_b",
        ROUGH,
        hard="5 to 300 mm",
        usual="50 to 160 mm",
        feature="head.seat_to_shaft",
        fold=True,
    )
    ratio: Number = train.RATIO
    case_material: str = train.CASE_MATERIAL
    cylinder_material: str = train.CYLINDER_MATERIAL
    head_material: str = train.HEAD_MATERIAL
    valve_material: str = train.VALVE_MATERIAL
    case_temperature: Number = train.CASE_TEMPERATURE
    cylinder_temperature: Number = train.CYLINDER_TEMPERATURE
    head_temperature: Number = train.HEAD_TEMPERATURE
    valve_temperature: Number = train.VALVE_TEMPERATURE
    rod_temperature: Number = train.ROD_TEMPERATURE
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
