"""A rocker's true lift and ratio, its pad's sweep across the stem's tip, and what sets it square."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.cam.rocker_lift.arc import arc_of
from calc.stations.cam.rocker_lift.asked import In
from calc.stations.cam.rocker_lift.drawing import arms, ratio_along
from calc.stations.cam.rocker_lift.told import Out
from calc.stations.cam.rocker_lift.verdict import limits_of, remarks_on, verdict_on


@calculator(
    "rocker-lift",
    "Rocker: lift and sweep",
    In,
    Out,
    purpose="What lift does this rocker really give its valve, and does it stay on the middle of the tip?",
    finds=(
        "rocker ratio",
        "rocker arm geometry",
        "valve lift from lobe lift",
        "contact sweep",
        "wipe pattern",
        "rocker stand shim",
        "half lift square",
    ),
    sources=(sources.ROCKER, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.SPRING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def rocker_lift(i: In) -> Answer:
    """The loop of shaft, rocker, pushrod and lifter, closed exactly at each lift; the pushrod is the one that
    reaches with the valve shut and no lash.

    All in one plane, and the lifter's line along the valve. Lash is taken off the lift at the valve. The
    sweep is that of the pad's middle; a pad that rolls on the tip adds its own.
    """
    arc = arc_of(i)
    return answer(
        arc.lift,
        arc.sweep,
        *arc.ratios,
        arc.shut,
        arc.opened,
        arc.pushrod,
        arc.up,
        verdict=verdict_on(i, arc),
        limits=limits_of(i, arc),
        remarks=remarks_on(i, arc),
        figures=lambda: (arms(i, arc), ratio_along(i, arc)),
    )
