"""A cam timed by degree wheel and dial: its lobe's centre, how far it is off, and what brings it right."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.cam.cam_phase.asked import In
from calc.stations.cam.cam_phase.drawing import wheel
from calc.stations.cam.cam_phase.phase import phase_of
from calc.stations.cam.cam_phase.told import Out
from calc.stations.cam.cam_phase.verdict import limits_of, remarks_on, verdict_on


@calculator(
    "cam-phase",
    "Timing the cam by the wheel",
    In,
    Out,
    purpose="Does the cam stand right to the crank, is it a tooth out, and what offset key brings it right?",
    finds=(
        "degree the cam",
        "degree wheel",
        "intake centreline method",
        "piston stop",
        "true top dead centre",
        "offset key",
        "offset dowel",
        "cam gear one tooth out",
    ),
    sources=(sources.TIMING, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.SPRING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def cam_phase(i: In) -> Answer:
    """Top dead centre midway between both readings at a piston stop, the lobe's centre midway between equal
    lifts, run through from opening to closing.

    The wheel is on the crank. A key or dowel moves on its circle, told as the straight way across.
    """
    p = phase_of(i)
    return answer(
        p.centre,
        p.late,
        p.turn,
        p.top,
        p.room,
        verdict=verdict_on(i, p),
        limits=limits_of(i, p),
        remarks=remarks_on(i, p),
        figures=lambda: (wheel(i, p),),
    )
