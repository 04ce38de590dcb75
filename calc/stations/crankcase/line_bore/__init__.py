"""Saddles of a case, read bolted up: are they one line, where does the bar lie, to which size are they bored,
and what becomes of the cam's gears."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.crankcase.line_bore.asked import In, refuse_what_does_not_go_together
from calc.stations.crankcase.line_bore.drawing import lines
from calc.stations.crankcase.line_bore.gears import gears_of
from calc.stations.crankcase.line_bore.remarks import remarks_on
from calc.stations.crankcase.line_bore.saddles import saddles_of
from calc.stations.crankcase.line_bore.size import size_of
from calc.stations.crankcase.line_bore.table import saddle_by_saddle
from calc.stations.crankcase.line_bore.told import Out
from calc.stations.crankcase.line_bore.verdict import limits_of, verdict_on


@calculator(
    "line-bore",
    "Line boring",
    In,
    Out,
    purpose=(
        "Are these main saddles in one line and in size, and if not, where does the bar lie and to which"
        " oversize are they bored?"
    ),
    finds=(
        "align bore",
        "line bore",
        "line hone",
        "main saddles",
        "main bearing housing",
        "saddle alignment",
        "crankcase pounded out",
        "main bearing oversize",
        "shell outside oversize",
        "crank to cam distance",
    ),
    sources=(
        sources.FARTHEST,
        sources.LEAST_CUT,
        sources.LEAST_DEVIATION,
        sources.SPLIT_BORE,
        sources.GEAR_DISTANCE,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.MAGNESIUM, cautions.CUTTING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def line_bore(i: In) -> Answer:
    """Each saddle as an oval about its own centre, its halves moved in by what their faces lost; the smallest
    circle about the bar that leaves nothing of it standing.

    How far out of line the saddles are is told from the line of least largest deviation, in each plane by
    itself. The bar that cuts least is another where saddles differ in size: a linear programme over all
    places of all saddles. Each saddle is taken as parted through its own centre. Odd lobes, taper, and
    what a case does that is not at its torque or not at room heat are not in it.
    """
    refuse_what_does_not_go_together(i)
    saddles = saddles_of(i)
    size = size_of(i, saddles)
    gears = gears_of(i, saddles, size)
    return answer(
        saddles.clean,
        saddles.farthest,
        size.oversize,
        size.low,
        size.high,
        size.aim,
        size.stock_worst,
        size.stock_best,
        *saddles.told,
        saddles.ends_off,
        saddles.gained,
        saddles.narrow,
        gears.moved,
        gears.distance,
        *gears.told,
        verdict=verdict_on(i, saddles, size, gears),
        limits=limits_of(i, saddles, size, gears),
        remarks=remarks_on(i, saddles, size, gears),
        tables=lambda: (saddle_by_saddle(i, saddles, size),),
        figures=lambda: (lines(saddles),),
    )
