"""What is asked of a valve that may leave its lobe: the spring, what moves with the valve, and the lobe."""

from typing import Any

from calc.core.kinds import MASS
from calc.core.working import form
from calc.declare.calculator import Inputs, Number, choice, given, limit, measured, which_valve
from calc.formulas.lobe import LAWS, POLY_4567
from calc.stations.shared.forms import COARSE, DEGREES, NEWTON, TIMES, TURNS

GRAMS = form(MASS, 0, "g", "oz")


def _weighed(label: str, symbol: str, feature: str, usual: str, **more: Any) -> Any:
    return measured(
        label,
        symbol,
        GRAMS,
        tool="a balance",
        hard="1 to 2000 g",
        usual=usual,
        feature=feature,
        fold=True,
        **more,
    )


class In(Inputs):
    valve: str = which_valve()
    seat_load: Number = measured(
        "Spring load, valve shut",
        "F_1",
        NEWTON,
        tool="a spring tester, at the fitted height",
        hard="20 to 3000 N",
        usual="100 to 800 N",
        feature="spring.seat_load",
        hint="All springs of one valve together; the weakest of the set.",
    )
    open_load: Number = measured(
        "Spring load at full lift",
        "F_2",
        NEWTON,
        tool="a spring tester, at the open height",
        hard="30 to 6000 N",
        usual="250 to 2000 N",
        feature="spring.open_load",
    )
    top_speed: Number = limit(
        "Highest engine speed",
        "n_max",
        TURNS,
        feature="crank.top_speed",
        which="nominal",
        hard="200 1/min to 20000 1/min",
        usual="2000 1/min to 9000 1/min",
        fold=False,
        hint="Of this engine as it is used; overrun down a hill counts.",
    )
    valve_mass: Number = _weighed("Valve by itself", "m_v", "valve.mass_{valve}", "30 to 250 g")
    retainer: Number = _weighed("Retainer with its keepers", "m_r", "spring.retainer_mass", "5 to 80 g")
    spring: Number = _weighed("Spring", "m_s", "spring.mass", "20 to 200 g", hint="A third of it moves.")
    rocker: Number = given(
        "Rocker, mass felt at the valve",
        "m_k",
        GRAMS,
        hard="0 to 1000 g",
        usual="5 to 200 g",
        feature="rocker.felt_mass",
        fold=True,
        hint="Its moment of inertia over the valve arm squared; as a rule of thumb a fifth of its mass.",
    )
    pushrod: Number = _weighed("Pushrod", "m_p", "rocker.pushrod_mass", "20 to 150 g")
    lifter: Number = _weighed("Lifter", "m_l", "lifter.mass", "20 to 200 g", hint="With its plunger and oil.")
    ratio: Number = given(
        "Rocker's ratio",
        "i",
        TIMES,
        hard="0.5 to 3",
        usual="0.9 to 1.8",
        feature="valve.rocker_ratio",
        fold=True,
    )
    lobe_lift: Number = measured(
        "Lobe lift",
        "h",
        COARSE,
        tool="a dial gauge on the lifter",
        hard="1 to 25 mm",
        usual="4 to 14 mm",
        feature="cam.lobe_lift",
        fold=True,
    )
    flank: Number = given(
        "Lobe, base circle to nose, at the cam",
        "β",
        DEGREES,
        hard="30 to 120°",
        usual="50 to 90°",
        feature="cam.flank_angle",
        fold=True,
        hint="A shorter flank throws the follower off sooner.",
    )
    law: str = choice(
        "The lobe's law", LAWS, fold=True, assumed=(POLY_4567, "a smooth lobe; common practice, no source")
    )
    margin: Number = given(
        "Margin wanted over the highest speed",
        "k_w",
        TIMES,
        hard="1 to 3",
        usual="1 to 1.5",
        fold=True,
        assumed=("1.08", "for springs that sag and for a missed shift; common practice, no source"),
    )
