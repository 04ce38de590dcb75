"""Bend and twist of a rod, from readings at both ends of an arbor in its small end."""

from calc.core.working import atan, constant, sqrt
from calc.declare.calculator import Answer, Limit, answer, calculator
from calc.reference import cautions, sources
from calc.stations.rods.rod_align.asked import In
from calc.stations.rods.rod_align.drawing import views
from calc.stations.rods.rod_align.remarks import remarks_on
from calc.stations.rods.rod_align.slope import OVER, slope_of
from calc.stations.rods.rod_align.told import Out
from calc.stations.rods.rod_align.verdict import Found, good, verdict_on
from calc.stations.shared.forms import ROUGH


@calculator(
    "rod-align",
    "Bend and twist of a rod",
    In,
    Out,
    purpose="Are the two bores of this rod parallel, and if not, is it bent or twisted past its limit?",
    finds=(
        "bent rod",
        "twisted rod",
        "rod straightness",
        "rod alignment",
        "connecting rod parallelism",
        "rod gauge",
        "piston cocked",
    ),
    sources=(sources.TWO_AXES, sources.REVERSAL, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.ROD_SCRAP, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def rod_align(i: In) -> Answer:
    """Slope of the small end's axis against the big end's in two planes, told over 100 mm.

    Bend is the slope in the plane of rod and crank, twist that across it. Turned end for end the rod shows
    its own slope with the other sign, and the gauge's with the same: half the difference is the rod, half the
    sum the gauge.
    """
    over = constant("l_0", "Length that it is told over", ROUGH, OVER)
    upright = slope_of("u", "upright", (i.bend_left, i.bend_right), i.bend_turned, i.span, Out.gauge_bend)
    laid_over = slope_of(
        "v", "laid over", (i.twist_left, i.twist_right), i.twist_turned, i.span, Out.gauge_twist
    )
    u, v = upright.rod, laid_over.rod
    found = Found(Out.bend(abs(u) * over), Out.twist(abs(v) * over), over)
    lean = Out.lean(abs(u) * i.piston_height)
    return answer(
        found.bend,
        found.twist,
        Out.bend_angle(atan(abs(u)), sources.TWO_AXES),
        Out.twist_angle(atan(abs(v)), sources.TWO_AXES),
        Out.skew(atan(sqrt(u**2 + v**2)), sources.TWO_AXES),
        lean,
        upright.gauge,
        laid_over.gauge,
        verdict=verdict_on(i, found),
        limits=_limits_of(i, found),
        remarks=remarks_on(i, over, max((upright.gauge, laid_over.gauge), key=lambda g: abs(float(g))), lean),
        figures=lambda: (views(u, v, i.span, found.bend, found.twist),),
    )


def _limits_of(i: In, found: Found) -> tuple[Limit, ...]:
    offset = (
        ()
        if i.offset is None
        else (
            Limit("the ends' offset", i.offset, high=i.offset_worn),
            Limit("the ends' offset", i.offset, high=i.offset_new, level="attention"),
        )
    )
    return (
        Limit("the bend", found.bend, high=i.bend_worn),
        Limit("the twist", found.twist, high=i.twist_worn),
        Limit("the bend", found.bend, high=good(i.bend_new, i.bend_worn), level="attention"),
        Limit("the twist", found.twist, high=good(i.twist_new, i.twist_worn), level="attention"),
        *offset,
    )
