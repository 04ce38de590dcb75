"""A cone by its small end, ratio, taper per foot or angle: all of them from any one, and how to gauge it."""

from calc.core.result import Remark, note
from calc.core.working import Number, constant
from calc.declare.calculator import Answer, Limit, answer, calculator
from calc.formulas import trigonometry as trig
from calc.reference import sources
from calc.stations.measuring.taper.asked import In
from calc.stations.measuring.taper.drawing import cone
from calc.stations.measuring.taper.gauging import how_to_make, off_by, refuse_half_a_gauging, verdict_on
from calc.stations.measuring.taper.ratio import ratio_of
from calc.stations.measuring.taper.told import Out
from calc.stations.shared.forms import ROUGH, SIZE

PLANNED = 0.03  # m of blocks, where none are told: what the reading over them would be


@calculator(
    "taper",
    "Taper",
    In,
    Out,
    purpose="What angle, ratio and small end does this taper have, and what must it read over rollers?",
    finds=(
        "cone",
        "taper per foot",
        "taper ratio 1 in 10",
        "half angle",
        "compound slide angle",
        "taper over rollers",
    ),
    sources=(sources.TRIANGLE, sources.PRACTICE),
)
def taper(i: In) -> Answer:
    """Straight cone: ratio (D − d)/L = 2·tan α. The cone stands on its small end between rollers."""
    ratio = Out.per_foot(ratio_of(i), sources.TRIANGLE)
    small = Out.small(trig.small_end(i.large, ratio, i.length), sources.TRIANGLE)
    side = Out.side(trig.side_angle(ratio), sources.TRIANGLE)
    refuse_half_a_gauging(i)
    raised = (
        constant("H", "Blocks under the upper rollers, as an example", SIZE, PLANNED)
        if i.blocks is None
        else i.blocks
    )
    over_low = Out.over_low(trig.over_rollers(small, side, i.roller), sources.TRIANGLE)
    over_high = Out.over_high(trig.over_raised_rollers(over_low, side, raised), sources.TRIANGLE)
    off = off_by(i, side)
    return answer(
        small,
        side,
        Out.one_in(1 / ratio),
        ratio,
        over_low,
        over_high,
        verdict=(
            how_to_make(i.roller, small, side, raised, over_low, over_high)
            if off is None
            else verdict_on(i, side, off)
        ),
        limits=(
            () if off is None else (Limit("the taper", off, low=-float(i.allowed), high=float(i.allowed)),)
        ),
        remarks=_remarks_on(i, side, raised),
        figures=lambda: (cone(i, small, side),),
    )


def _remarks_on(i: In, side: Number, raised: Number) -> tuple[Remark | None, ...]:
    angle = float(side)
    reach = trig.roller_contact(angle, float(i.roller), float(raised))
    return (
        note(
            "A side stands at {a}; between the sides there are {both}.",
            a=trig.degrees_minutes_seconds(side),
            both=trig.degrees_minutes_seconds(2 * angle),
        ),
        note(
            "The raised rollers would touch {reach} up, and the cone is {L} long: take smaller rollers or"
            " fewer blocks before you gauge it.",
            reach=constant("", "", ROUGH, reach),
            L=i.length,
        )
        if reach > float(i.length)
        else None,
        note(
            "The right angle alone does not make a cone fit: it may still be too small throughout."
            " Measure one diameter too."
        ),
    )
