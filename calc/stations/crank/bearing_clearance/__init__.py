"""A shell bearing: its clearance from housing, shells and journal, cold and running, tightest and loosest."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.crank.bearing_clearance.asked import In, bearing_of
from calc.stations.crank.bearing_clearance.clearance import clearance_of
from calc.stations.crank.bearing_clearance.drawing import section
from calc.stations.crank.bearing_clearance.remarks import remarks_on
from calc.stations.crank.bearing_clearance.told import Out
from calc.stations.crank.bearing_clearance.verdict import limits_of, verdict_on


@calculator(
    "bearing-clearance",
    "Bearing clearance",
    In,
    Out,
    purpose="Has this main or rod bearing the clearance that it needs, cold and running; and if not, which"
    " part is to be changed?",
    finds=(
        "main bearing clearance",
        "rod bearing clearance",
        "oil clearance",
        "bearing shells",
        "shell wall",
        "undersize shells",
        "tight bearing",
        "loose bearing",
        "low oil pressure",
    ),
    sources=(
        sources.CLEARANCE_SUM,
        sources.SHELL_CRUSH,
        sources.LAME,
        sources.THERMAL,
        sources.MATERIALS,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def bearing_clearance(i: In) -> Answer:
    """Housing − twice the wall − journal, of the tightest and of the loosest parts; the shells' crush opens
    the housing (two elastic rings, Lamé), and heat grows each part by its own.

    The sheet's limits are those of the sizes without the crush, as they follow from the limits of the parts;
    a bore that was read in the fitted shells has it in it, and it is taken off again. One temperature for
    each part, no load, round parts. Shells that lost their grip are counted as lying against the housing.
    """
    bearing = bearing_of(i)
    found = clearance_of(i, bearing)
    round_it = 0.0 if bearing.wall_round is None else float(bearing.wall_round)
    housing = float(bearing.bore) + (2 * float(bearing.wall) if bearing.fitted else 0.0)
    return answer(
        found.tight,
        found.loose,
        found.running,
        found.running_loose,
        found.held.cold.opened,
        found.fitted,
        found.held.cold.pressure,
        found.held.hot.pressure,
        found.held.hot.interference,
        Out.share(found.tight / bearing.journal),
        verdict=verdict_on(i, found),
        limits=limits_of(i, found),
        remarks=remarks_on(i, found),
        figures=lambda: (section(housing, bearing.wall, bearing.journal, found.tight, round_it),),
    )
