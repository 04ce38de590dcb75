"""Pitch diameter of an external thread from a reading over three wires."""

from calc.core.kinds import RATIO
from calc.core.result import Remark, impossible, note, warning
from calc.core.working import Number, form, step
from calc.declare.calculator import Answer, Limit, answer, calculator
from calc.formulas import screw_threads as screw
from calc.reference import sources
from calc.reference.standards.threads import Thread
from calc.stations.shared.thread_sizes import known, least_and_most, pair, pitch, standard
from calc.stations.threads.three_wire.asked import In
from calc.stations.threads.three_wire.drawing import wires_in_the_thread
from calc.stations.threads.three_wire.told import Out
from calc.stations.threads.three_wire.verdict import verdict_on
from calc.stations.threads.three_wire.wire import refuse_other_wire

MATTERS = 2e-6  # m: what lies below it, a shop's micrometer does not show


@calculator(
    "three-wire",
    "Measuring over three wires",
    In,
    Out,
    purpose="What is the pitch diameter of this thread, read over three wires?",
    finds=(
        "thread wires",
        "measurement over wires",
        "best wire size",
        "pitch diameter",
        "effective diameter",
        "stud thread",
        "three wires",
    ),
    sources=(sources.THREE_WIRES, sources.ISO_965, sources.ASME_B1_1),
)
def three_wire(i: In) -> Answer:
    """Pitch diameter of a bolt's thread of 60°, one start, at 20 °C; the lead angle is counted, the
    flattening of the wires is not.

    All three wires are of one size. A wire that is wrong by 1 µm makes the pitch diameter wrong by 3.
    """
    thread, _, bolt = pair(i.size, i.fit)
    refuse_other_wire(i.wire, thread)
    source, P = standard(thread), pitch(thread)
    basic = known("d_2,0", "Basic pitch diameter", thread.pitch_diameter, source)
    lead = step("t_λ", "Tangent of the lead angle", form(RATIO, 5), screw.lead_tangent(P, basic))
    factor = Out.play(screw.wire_factor(lead), sources.THREE_WIRES)
    found = Out.pitch_diameter(
        screw.pitch_diameter_over_wires(i.reading, P, i.wire, factor), sources.THREE_WIRES
    )
    d_least, d_most = least_and_most(bolt.pitch)
    least = known("d_2,min", "Pitch diameter, least", d_least, source)
    most = known("d_2,max", "Pitch diameter, most", d_most, source)
    low = Out.low(screw.over_wires(least, P, i.wire, factor), sources.THREE_WIRES)
    high = Out.high(screw.over_wires(most, P, i.wire, factor), sources.THREE_WIRES)
    _refuse_other_thread(i.reading, found, thread, low, high)
    correction = Out.lead((factor - 3) * i.wire, sources.THREE_WIRES)
    best = Out.best(screw.best_wire(P), sources.THREE_WIRES)
    return answer(
        found,
        best,
        low,
        high,
        correction,
        factor,
        verdict=verdict_on(bolt, found, least, most),
        limits=(Limit("the pitch diameter", found, low=float(least), high=float(most)),),
        remarks=_remarks_on(i.wire, thread, correction, best),
        figures=lambda: (wires_in_the_thread(thread, i.reading, i.wire, found),),
    )


def _refuse_other_thread(reading: Number, found: Number, thread: Thread, low: Number, high: Number) -> None:
    """A reading that is no thread's of that size."""
    if abs(float(found) - thread.pitch_diameter) > 0.4 * thread.P:
        raise impossible(
            "reading",
            "is {m}, far from what {thread} reads; measure again with {low} to {high} in mind, or choose the"
            " thread that it belongs to",
            m=reading,
            thread=thread.words,
            low=low,
            high=high,
        )


def _remarks_on(wire: Number, thread: Thread, correction: Number, best: Number) -> tuple[Remark | None, ...]:
    return (
        (
            note("The lead matters here: left out, the pitch diameter comes out {c} too large.", c=correction)
            if float(correction) > MATTERS
            else note("Left out, the lead would make {c}, less than a micrometer shows.", c=correction)
        ),
        (
            warning(
                "This wire touches away from the pitch line, where an error of the flank's angle shows:"
                " the best one is {best}.",
                best=best,
            )
            if abs(float(wire) / float(screw.best_wire(thread.P)) - 1) > 0.05
            else None
        ),
        note(
            "The doubt of the wire counts three times, that of the micrometer once: write ± behind both,"
            " and do not screw down harder than the wires' paper says."
        ),
    )
