"""Drill before a tap: which one, how much thread it leaves, and whether the bore stays within its class."""

from calc.core.result import Remark, note, warning
from calc.core.working import Number
from calc.declare.calculator import Answer, Limit, answer, calculator
from calc.formulas.screw_threads import FULL_CUT, FULL_HEIGHT, drill_for, share_of_thread
from calc.reference import cautions, sources
from calc.reference.standards.drills import Drill, choose, near
from calc.stations.shared.thread_sizes import known, nominal, pitch, standard, tolerance_of
from calc.stations.threads.tap_drill.asked import CUT, FORMED, In
from calc.stations.threads.tap_drill.drawing import section
from calc.stations.threads.tap_drill.table import drills_near
from calc.stations.threads.tap_drill.tapping import Tapping, refuse_other_hole, tapping_of
from calc.stations.threads.tap_drill.told import Out
from calc.stations.threads.tap_drill.verdict import Found, verdict_on


@calculator(
    "tap-drill",
    "Drill for a tap",
    In,
    Out,
    purpose="Which drill before this tap, and how much thread does it leave?",
    finds=(
        "tapping drill",
        "tap drill size",
        "percent thread",
        "thread percentage",
        "forming tap",
        "roll tap",
        "core hole",
        "number drill",
        "letter drill",
    ),
    sources=(sources.THREAD_SHARE, sources.DRILLS, sources.ISO_965, sources.ASME_B1_1, sources.PRACTICE),
    cautions=(cautions.CUTTING, cautions.MAGNESIUM),
)
def tap_drill(i: In) -> Answer:
    """The drill nearest to the thread wanted, of those that keep the bore within its class where there are
    any.

    Share of thread counts 100 % where the bore is 1.5·H = 1.299·P under the nominal diameter. A forming tap
    pushes the crest inwards: its drill is larger, its bore smaller than the drill by what the rule of 0.68·P
    gives. A drill cuts larger than itself: measure the hole.
    """
    tapping = tapping_of(i)
    thread, hole, full = tapping.thread, tapping.hole, tapping.full
    source, d, P = standard(thread), nominal(thread), pitch(thread)
    low = known("D_1,0", "Basic bore", hole.minor.near, source)
    tolerance = known("T_D1", "Tolerance of the bore", tolerance_of(hole.minor), source)
    bore_low, bore_high = Out.bore_low(low, source), Out.bore_high(low + tolerance, source)
    ideal = float(drill_for(thread.d, thread.P, i.wanted, full))
    best = choose(ideal, i.drills, tapping.within)
    chosen = best
    if i.own is not None:
        refuse_other_hole(i.own, thread)
        chosen = Drill("your hole", float(i.own))
    drill = Out.drill(known("D_list", "Drill", chosen.size, sources.DRILLS) if i.own is None else i.own)
    share = Out.share(share_of_thread(d, P, drill, full), sources.THREAD_SHARE)
    bore = Out.bore(drill if i.tap == CUT else drill_for(d, P, share, FULL_CUT), sources.THREAD_SHARE)
    height = Out.share_of_height(share_of_thread(d, P, bore, FULL_HEIGHT), sources.THREAD_SHARE)
    own_limit = (Limit("the bore", bore, low=float(bore_low), high=float(bore_high)),)
    return answer(
        drill,
        share,
        height,
        bore,
        bore_low,
        bore_high,
        verdict=verdict_on(i, hole, Found(chosen, best, bore, bore_low, bore_high, share)),
        limits=() if i.own is None else own_limit,
        remarks=_remarks_on(tapping, share),
        tables=lambda: (drills_near(near(ideal, i.drills, 7), tapping),),
        figures=lambda: (section(thread, bore, drill),),
    )


def _remarks_on(tapping: Tapping, share: Number) -> tuple[Remark | None, ...]:
    return (
        (
            warning(
                "{share} of thread turns hard and breaks taps: 85 % holds hardly more than 75 %.", share=share
            )
            if share > 0.85
            else None
        ),
        (
            note(
                "A forming tap wants a metal that flows, such as aluminium or mild steel, and oil: never"
                " cast iron or a casting that crumbles."
            )
            if tapping.kind == FORMED
            else None
        ),
        (
            note(
                "A formed bore is judged by {name}, as crests are not pressed full; common practice, no"
                " source.",
                name=tapping.hole.name,
            )
            if tapping.kind == FORMED and tapping.thread.system == "metric"
            else None
        ),
        note(
            "The drill cuts larger than itself by some hundredths: try it in scrap of the same metal and"
            " measure."
        ),
    )
