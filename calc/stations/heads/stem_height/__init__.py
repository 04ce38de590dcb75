"""Stem heights of a set of heads: what comes off tips and seats, and what shims the springs need."""

from calc.core.conformance import DUST
from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.heads.stem_height.asked import In
from calc.stations.heads.stem_height.drawing import assembly, beside_each_other
from calc.stations.heads.stem_height.remarks import remarks_on
from calc.stations.heads.stem_height.stems import check_limits, stems_of
from calc.stations.heads.stem_height.table import valve_by_valve
from calc.stations.heads.stem_height.told import Out
from calc.stations.heads.stem_height.verdict import limits_of, verdict_on


@calculator(
    "stem-height",
    "Stem heights",
    In,
    Out,
    purpose=(
        "Do the stems stand even and within limits, and if not, what comes off which tip or seat, and which"
        " spring needs a shim?"
    ),
    finds=(
        "valve stem height",
        "stem protrusion",
        "installed height",
        "fitted height",
        "tip grinding",
        "sunk valves",
        "spring shim",
        "valve seat depth",
        "stem projection",
        "stretched valve",
    ),
    sources=(sources.STEM_MOVES, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.SPRING, cautions.SODIUM, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def stem_height(i: In) -> Answer:
    """Each stem compared with the limits and with the others; the work that brings all of them within both.

    A tip ground by t lowers the stem by t and leaves the spring where it is; a seat sunk by z raises the stem
    by z and lets the spring out by z. A seat sunk costs ring, edge and chamber for good: of all ways the one
    that sinks seats least, then takes least off tips.
    """
    check_limits(i)
    stems = stems_of(i)
    return answer(
        stems.spread,
        stems.tip,
        stems.sink,
        stems.highest,
        stems.lowest,
        stems.bottom,
        stems.top,
        stems.spread_after,
        stems.fitted_most,
        stems.shim,
        verdict=verdict_on(i, stems),
        limits=limits_of(i, stems),
        remarks=remarks_on(i, stems),
        tables=lambda: (valve_by_valve(i, stems),),
        cautions=(cautions.SPINNING,) if float(stems.tip) > DUST else (),
        figures=lambda: (
            assembly(stems.most_to_do(i.wanted), i.tip_to_retainer),
            beside_each_other(i, stems),
        ),
    )
