"""A lobe that is ground smaller: what it becomes, what is left of it, and all that follows in the engine."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.cam.cam_regrind.asked import In
from calc.stations.cam.cam_regrind.drawing import lobes
from calc.stations.cam.cam_regrind.follows import what_follows
from calc.stations.cam.cam_regrind.ground import ground_of
from calc.stations.cam.cam_regrind.remarks import remarks_on
from calc.stations.cam.cam_regrind.told import Out
from calc.stations.cam.cam_regrind.verdict import limits_of, verdict_on


@calculator(
    "cam-regrind",
    "Regrinding a lobe",
    In,
    Out,
    purpose=(
        "On which base circle can this lobe be ground to its lift again, does the cam bear it, and what must"
        " be made up in the engine?"
    ),
    finds=(
        "cam grinding",
        "regrind the camshaft",
        "reground cam",
        "base circle",
        "flat lobe",
        "worn lobe",
        "lobe wiped",
        "nose radius",
        "lobe taper",
        "longer pushrods after regrind",
    ),
    sources=(
        sources.SMALLER_LOBE,
        sources.FLAT_FOOT,
        sources.LOBE_LAWS,
        sources.CHAIN_ALONG_PUSHROD,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.BREAK_IN, cautions.SPINNING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def cam_regrind(i: In) -> Answer:
    """New base circle's radius = the lesser of half the heel and (nose from the axis − lift), less pit and
    stock; half of what the diameter lost is made up between lobe and rocker.

    The heel is taken as concentric with the journals, and worn alike. Since it was new the base circle lost
    ΔR, the nose ΔR + old lift − new lift, the flank at half lift their mean. Under a flat foot each radius of
    the same lobe is less by ΔR; another lobe's least radius is R + s + s″, its foot 2·s′ at least across.
    """
    found = ground_of(i)
    return answer(
        found.base,
        found.lift,
        found.make_up,
        found.lash,
        found.read,
        found.heel_off,
        found.flank_off,
        found.nose_off,
        found.valve_lift,
        found.more,
        found.half,
        verdict=verdict_on(i, found),
        limits=limits_of(i, found),
        remarks=remarks_on(i, found),
        tables=lambda: (what_follows(i, found),),
        figures=lambda: (lobes(i, found),),
    )
