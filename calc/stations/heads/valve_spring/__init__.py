"""Valve springs, from two loads read on a tester or from their sizes.

Loads as fitted, coil bind, stress, surge, shims, spread.
"""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.heads.valve_spring.asked import In
from calc.stations.heads.valve_spring.drawing import between_plates, load_over_height
from calc.stations.heads.valve_spring.life import life_of
from calc.stations.heads.valve_spring.loads import loads_of, shims_of
from calc.stations.heads.valve_spring.remarks import remarks_on
from calc.stations.heads.valve_spring.surge import harmonics, surge_of
from calc.stations.heads.valve_spring.table import spring_by_spring
from calc.stations.heads.valve_spring.told import Out
from calc.stations.heads.valve_spring.verdict import limits_of, verdict_on


@calculator(
    "valve-spring",
    "Valve springs",
    In,
    Out,
    purpose="Do these springs hold the valves, with room left to coil bind, and what does a shim do?",
    finds=(
        "valve spring pressure",
        "spring tester",
        "spring rate",
        "coil bind",
        "installed height",
        "fitted height",
        "spring surge",
        "spring shim",
        "weak spring",
    ),
    sources=(
        sources.SPRING,
        sources.WAHL,
        sources.ENDURANCE,
        sources.SURGE,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.SPRING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def valve_spring(i: In) -> Answer:
    """Cylindrical spring of constant pitch, load along the axis, ends closed.

    From loads: a straight line through the two readings of each spring. From sizes: EN 13906-1. Bind, stress
    and surge take the wire's sizes both ways. The weakest spring is judged for holding, the strongest for
    stress.
    """
    loads = loads_of(i)
    life = life_of(i, loads)
    surge = surge_of(i, loads.weak.rate)
    shims = shims_of(i, loads)
    return answer(
        loads.seat,
        loads.open,
        loads.margin,
        loads.spread,
        loads.rate,
        loads.rate_by_sizes,
        loads.free,
        loads.solid,
        life.stress,
        life.stress_solid,
        life.endurance,
        surge.frequency,
        surge.order,
        surge.speed,
        shims.wanted,
        shims.most,
        verdict=verdict_on(i, loads, life, surge, shims),
        limits=limits_of(i, loads, life),
        remarks=remarks_on(i, loads, life),
        tables=lambda: (spring_by_spring(i, loads), harmonics(surge)),
        figures=lambda: (between_plates(i, loads), load_over_height(i, loads)),
    )
