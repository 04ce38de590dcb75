"""What is asked of a rocker: its arms, how it stands, and where the lifter is."""

from typing import Any

from calc.core.working import Form
from calc.declare.calculator import Inputs, Number, given, limit, measured
from calc.stations.shared.forms import COARSE, ROUGH, TENTHS_OF_DEGREE, TIMES


def _arm(label: str, symbol: str, feature: str) -> Any:
    return measured(
        label,
        symbol,
        COARSE,
        tool="a height gauge, the rocker on a pin",
        hard="8 to 120 mm",
        usual="20 to 60 mm",
        feature=feature,
    )


def _limit(label: str, symbol: str, feature: str, which: str, hard: str, usual: str) -> Any:
    shape: Form = COARSE
    return limit(label, symbol, shape, feature=feature, which=which, hard=hard, usual=usual)


class In(Inputs):
    valve_arm: Number = _arm("Arm to the valve: shaft's middle to the pad's", "L_v", "rocker.arm_valve")
    pushrod_arm: Number = _arm("Arm to the pushrod: shaft's middle to the cup's", "L_p", "rocker.arm_pushrod")
    tip: Number = measured(
        "Stem's tip above the shaft's middle, valve shut",
        "y",
        COARSE,
        tool="a height gauge",
        hard="-30 to 40 mm",
        usual="-2 to 12 mm",
        feature="rocker.tip_over_shaft",
        stage="",
        hint="Along the valve. Minus where the tip lies lower than the shaft's middle.",
    )
    lobe_lift: Number = measured(
        "Lobe lift",
        "h",
        COARSE,
        tool="a dial gauge on the lifter",
        hard="1 to 25 mm",
        usual="4 to 14 mm",
        feature="cam.lobe_lift",
    )
    pad: Number = given(
        "Radius of the pad or ball on the tip",
        "r_p",
        ROUGH,
        hard="0 to 30 mm",
        usual="0 to 20 mm",
        fold=True,
        assumed=("0.0 mm", "a swivelling foot, whose middle lies at the tip; common practice, no source"),
        hint="Its middle is what the arm is measured to.",
    )
    lash: Number = given(
        "Lash at the valve",
        "s",
        COARSE,
        hard="0 to 2 mm",
        usual="0 to 0.3 mm",
        feature="lifter.lash",
        fold=True,
        hint="0 for hydraulic lifters.",
    )
    cup: Number = given(
        "Cup above the line of the valve arm",
        "κ",
        TENTHS_OF_DEGREE,
        hard="-30 to 40°",
        usual="-15 to 25°",
        feature="rocker.cup_angle",
        fold=True,
    )
    offset: Number = given(
        "Shaft to the lifter's line, across",
        "x_l",
        ROUGH,
        hard="5 to 150 mm",
        usual="15 to 60 mm",
        feature="rocker.lifter_offset",
        fold=True,
    )
    depth: Number = given(
        "Shaft above the pushrod's seat in the lifter",
        "d_l",
        ROUGH,
        hard="40 to 800 mm",
        usual="80 to 350 mm",
        feature="rocker.lifter_depth",
        fold=True,
    )
    lift_low: Number = _limit("Valve lift, least", "L_min", "valve.lift", "low", "0.5 to 30 mm", "4 to 16 mm")
    lift_high: Number = _limit(
        "Valve lift, most", "L_max", "valve.lift", "high", "0.5 to 30 mm", "4 to 16 mm"
    )
    sweep_good: Number = _limit(
        "Sweep across the tip, good", "w_n", "rocker.sweep", "high", "0.05 to 10 mm", "0.3 to 3 mm"
    )
    sweep_most: Number = _limit(
        "Sweep across the tip, limit", "w_w", "rocker.sweep", "wear", "0.05 to 10 mm", "0.3 to 4 mm"
    )
    ratio_told: Number | None = limit(
        "Ratio that the engine's data tell",
        "i",
        TIMES,
        feature="valve.rocker_ratio",
        which="nominal",
        hard="0.5 to 3",
        usual="0.9 to 1.8",
    )
