"""A cam's timing: four events, or durations and lobe centres, each from the other."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.cam.valve_timing.asked import In
from calc.stations.cam.valve_timing.drawing import diagram
from calc.stations.cam.valve_timing.timing import timing_of
from calc.stations.cam.valve_timing.told import Out
from calc.stations.cam.valve_timing.verdict import limits_of, remarks_on, verdict_on


@calculator(
    "valve-timing",
    "Valve timing",
    In,
    Out,
    purpose="Which cam is it, when do its valves open and close, and does it stand where it should?",
    finds=(
        "valve events",
        "timing diagram",
        "valve overlap",
        "lobe separation angle",
        "LSA",
        "cam advance",
        "intake centreline",
        "cam card",
    ),
    sources=(sources.TIMING, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def valve_timing(i: In) -> Answer:
    """Angles of the crank, counted from the dead centres; each lobe's centre lies midway between its events.

    Top dead centre is the one of the gas exchange. The centre is not the nose where flanks are not alike.
    """
    t = timing_of(i)
    return answer(
        t.overlap,
        t.separation,
        t.advance,
        t.in_opens,
        t.in_closes,
        t.ex_opens,
        t.ex_closes,
        t.in_duration,
        t.ex_duration,
        t.in_centre,
        t.ex_centre,
        verdict=verdict_on(i, t),
        limits=limits_of(i, t),
        remarks=remarks_on(i, t),
        figures=lambda: (diagram(t),),
    )
