"""What becomes of a valve's lash, set cold with solid lifters, when the engine runs and in frost."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.cam.lash_hot.asked import In
from calc.stations.cam.lash_hot.chains import lash_of
from calc.stations.cam.lash_hot.drawing import warming
from calc.stations.cam.lash_hot.told import Out
from calc.stations.cam.lash_hot.verdict import limits_of, remarks_on, verdict_on


@calculator(
    "lash-hot",
    "Lash, cold and running",
    In,
    Out,
    purpose="Does a valve that is set to this lash cold still shut when the engine is hot, and in frost?",
    finds=(
        "hot lash",
        "cold valve clearance",
        "tappet clearance",
        "aluminium pushrods",
        "steel pushrods lash",
        "burnt valve",
    ),
    sources=(
        sources.VALVE_TRAIN_GROWTH,
        sources.THERMAL,
        sources.MATERIALS,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.SPRING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def lash_hot(i: In) -> Answer:
    """Case, cylinder and head carry the rocker shaft away from the cam, lifter and pushrod follow; the rocker
    passes the difference on by its ratio. The valve grows against the head beside it.

    Free growth, each part at one mean heat, from 20 °C; in frost all at one. The tilt of the pushrod and what
    springs and gas press are left out.
    """
    found = lash_of(i)
    return answer(
        found.running,
        found.frost,
        found.cold,
        found.train,
        found.stem,
        verdict=verdict_on(i, found),
        limits=limits_of(i, found),
        remarks=remarks_on(i, found),
        figures=lambda: (warming(i, found),),
    )
