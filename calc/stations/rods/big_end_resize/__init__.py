"""Big ends whose faces were cut: does honing clean them up, what comes off where, and what becomes of the
centre distances."""

from calc.declare.calculator import Answer, Limit, answer, calculator
from calc.reference import cautions, sources
from calc.stations.rods.big_end_resize.asked import In, refuse_limits_crossed
from calc.stations.rods.big_end_resize.drawing import section
from calc.stations.rods.big_end_resize.remarks import remarks_on
from calc.stations.rods.big_end_resize.rods import Rods, most, rods_of
from calc.stations.rods.big_end_resize.table import rod_by_rod
from calc.stations.rods.big_end_resize.told import Out
from calc.stations.rods.big_end_resize.verdict import as_they_are, verdict_on


@calculator(
    "big-end-resize",
    "Resize the big end",
    In,
    Out,
    purpose=(
        "Do these big ends clean up to size after the cut, how much must be honed off where, and do their"
        " centre distances still agree?"
    ),
    finds=(
        "rod resizing",
        "recondition connecting rods",
        "big end out of round",
        "cap grinding",
        "cut the cap",
        "hone the big end",
        "rod bore",
        "centre distance",
        "rod length",
        "stretched rod",
    ),
    sources=(sources.SPLIT_BORE, sources.TWO_POINT, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.ROD_SCRAP, cautions.CUTTING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def big_end_resize(i: In) -> Answer:
    """Each bore as an oval through its three readings, cut and closed up again; the circle that cleans it up,
    by trial all round.

    Exact plane geometry of two arcs for a round bore; the width at the parting line of an oval that leans is
    within 0.1 µm. Odd lobes, taper along the bore, and what the bolts do to a bore that is not tight are not
    in it.
    """
    refuse_limits_crossed(i)
    rods = rods_of(i)
    smallest = min((rod.along for rod in rods.each), key=float)
    return answer(
        rods.clean,
        rods.least_stock,
        rods.spread,
        *rods.stocks,
        rods.most_stock,
        rods.round,
        Out.cut_along(smallest),
        Out.offset(abs(rods.off)),
        Out.lost(most(rods.each, "lost")),
        rods.shortest,
        rods.longest,
        verdict=verdict_on(i, rods),
        limits=_limits_of(i, rods),
        remarks=remarks_on(i, rods),
        tables=lambda: (rod_by_rod(rods.each, i),),
        figures=lambda: (section(rods.worst, i.wanted),),
    )


def _limits_of(i: In, rods: Rods) -> tuple[Limit, ...]:
    return (
        Limit("the bore's cleaning up", rods.clean, high=i.high),
        Limit("the shortest rod", rods.shortest, low=i.least_length),
        Limit("the spread of centre distances", rods.spread, high=i.most_spread, level="attention"),
        (
            Limit("the bores as they are", min(rods.readings, key=float), low=i.low, level="attention")
            if as_they_are(i, rods)
            else Limit("the stock left for the hone", rods.clean, high=i.wanted, level="attention")
        ),
    )
