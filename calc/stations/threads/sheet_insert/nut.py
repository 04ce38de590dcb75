"""A nut that is riveted into the sheet or pressed into it."""

from calc.core.result import Judged, say
from calc.core.working import PI, constant, step
from calc.declare.calculator import Limit
from calc.reference import sources
from calc.reference.standards.threads import THREADS
from calc.stations.shared import thread_sizes as sizes
from calc.stations.shared.forms import COARSE, NEWTON, TIGHTENING
from calc.stations.threads.sheet_insert.asked import CLINCH, RIVET, In
from calc.stations.threads.sheet_insert.made import Made, borne_by_both
from calc.stations.threads.sheet_insert.sheet import Sheet
from calc.stations.threads.sheet_insert.sold import NUTS
from calc.stations.threads.sheet_insert.told import Out

# Common practice, no source.
PUSHED = 0.2  # of the sheet's shear round a clinch nut that it takes to push it back out
TURNED = {RIVET: 0.2, CLINCH: 0.35}  # of the torque that would shear the sheet round the nut


def nut(i: In, sheet: Sheet) -> Made:
    thread = THREADS[i.thread]
    rivet, clinch, _ = NUTS[i.thread]
    usual = (rivet if i.way == RIVET else clinch) * 1e-3
    hole = Out.hole(constant("D_u", "Usual hole for it", COARSE, usual, sources.PRACTICE), sources.PRACTICE)
    pull = step(
        "F_s",
        "Pull that would shear the sheet round it",
        NEWTON,
        PI * hole * i.thickness * sheet.shear,
        sources.SHEET_SHEAR,
    )
    torque = step(
        "T_s", "Torque that would shear the sheet round it", TIGHTENING, pull * hole / 2, sources.SHEET_SHEAR
    )
    borne = borne_by_both(
        thread,
        pull if i.way == RIVET else PUSHED * pull,
        TURNED[i.way] * torque,
        sources.SHEET_SHEAR,
        sources.SHEET_SHEAR,
    )
    turns = Out.turns(sizes.nominal(thread) / sizes.pitch(thread), sources.PRACTICE)
    across = Out.across(1.35 * hole, sources.PRACTICE)
    limits, fault = _thin(i) if i.way == CLINCH else ((), None)
    return Made(hole, across, thread.d, turns, borne.pull, borne.turn, limits, fault, borne.screw)


def _thin(i: In) -> tuple[tuple[Limit, ...], Judged | None]:
    """The least sheet that a clinch nut grips in, and what is said of one that is thinner."""
    thinnest, thickness = NUTS[i.thread][2] * 1e-3, float(i.thickness)
    limits = (Limit("the sheet to grip in", i.thickness, low=thinnest),)
    if thickness >= thinnest - 1e-9:
        return limits, None
    return limits, (
        "fail",
        say("Sheet too thin by {x}", x=sizes.length(thinnest - thickness, COARSE)),
        say(
            "A clinch nut of this thread wants {t} at least to grip in. Take a smaller one, or a rivet nut.",
            t=sizes.length(thinnest, COARSE),
        ),
    )
