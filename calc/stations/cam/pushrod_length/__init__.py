"""The pushrod that each valve needs, whether those at hand serve, and whether rockers stand square at half
lift."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.cam.pushrod_length.asked import CHECKED, In
from calc.stations.cam.pushrod_length.drawing import tips
from calc.stations.cam.pushrod_length.needed import needed
from calc.stations.cam.pushrod_length.told import Out
from calc.stations.cam.pushrod_length.verdict import limits_of, remarks_on, valve_by_valve, verdict_on


@calculator(
    "pushrod-length",
    "Pushrod length",
    In,
    Out,
    purpose="Do the pushrods at hand serve this engine as it now is, and if not, which length is ordered?",
    finds=(
        "checking pushrod",
        "adjustable pushrod",
        "cut to length pushrods",
        "rocker geometry",
        "half lift",
        "reground cam pushrods",
        "longer pushrods",
    ),
    sources=(sources.ROCKER, sources.CHAIN_ALONG_PUSHROD, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.SPRING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def pushrod_length(i: In) -> Answer:
    """Length at no lash with the adjuster in its middle, valve by valve; or the old length and the changes
    along it, the tip's by the rocker's ratio.

    From where the contact lies shut and at full lift, and the lift, follows how far the arm stands off square
    at half lift. A shaft raised by t, over a tip that stays, wants a pushrod longer by t(1 + 1/ratio). The
    pushrod's lean is left out: under 1 % of any change.
    """
    found = needed(i)
    return answer(
        found.length,
        found.off,
        found.longer,
        found.apart,
        found.run,
        found.up,
        found.with_shims,
        verdict=verdict_on(i, found),
        limits=limits_of(i, found),
        remarks=remarks_on(i, found),
        tables=lambda: (valve_by_valve(i, found),) if i.how == CHECKED else (),
        figures=lambda: (tips(i, found),),
    )
