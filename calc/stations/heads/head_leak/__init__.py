"""Leak of a closed volume from the change of its pressure, told apart from what temperature and gauge may
fake."""

from calc.core.result import Limit
from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.heads.head_leak.asked import VACUUM, In
from calc.stations.heads.head_leak.drawing import pressure_plot
from calc.stations.heads.head_leak.leak import leak_of
from calc.stations.heads.head_leak.told import Out
from calc.stations.heads.head_leak.verdict import remarks_on, verdict_on


@calculator(
    "leak-test",
    "Leak test by pressure or vacuum",
    In,
    Out,
    purpose="Does it leak, how much, through what hole, or is it only the temperature?",
    finds=(
        "vacuum test of valves",
        "pressure decay",
        "leak down",
        "standard cubic centimetres",
        "seat leak",
        "pressure test of a head",
        "crack test with air",
    ),
    sources=(
        sources.PRESSURE_CHANGE,
        sources.GAS_LAW,
        sources.STANDARD_FLOW,
        sources.ORIFICE,
        sources.INVENTED,
    ),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def leak_test(i: In) -> Answer:
    """Ideal gas in a rigid volume; a leak that falls off in proportion to the pressure that drives it; the
    barometer steady.

    Where much is lost through a choked hole, which does not fall off so, the leak at the start comes out too
    high: safe.

    Doubts of temperature and gauge are added as squares. The hole is ideal (discharge coefficient 1), so the
    smallest that does it.
    """
    found = leak_of(i)
    return answer(
        found.leak,
        found.doubt,
        found.mean,
        found.mean_20,
        found.rate,
        found.loss,
        found.least_loss,
        found.fake,
        found.kelvin_leak,
        found.hole,
        found.ratio,
        found.allowed,
        found.time_to_tell,
        verdict=verdict_on(i, found),
        limits=(Limit("the leak", found.leak, high=found.allowed),),
        remarks=remarks_on(i, found),
        cautions=(cautions.VACUUM if i.mode == VACUUM else cautions.COMPRESSED_AIR,),
        figures=lambda: (pressure_plot(i, found),),
    )
