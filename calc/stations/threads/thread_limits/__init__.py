"""Limits of a screw thread in its class, bolt or tapped hole, and whether a measured one keeps to them."""

from calc.core.result import Remark, note
from calc.declare.calculator import Answer, Limit, answer, calculator
from calc.reference import sources
from calc.stations.shared.thread_sizes import known, least_and_most, pair, standard
from calc.stations.threads.thread_limits.asked import BOLT, In
from calc.stations.threads.thread_limits.drawing import profile
from calc.stations.threads.thread_limits.readings import Reading, readings_of
from calc.stations.threads.thread_limits.tables import both_parts, your_thread
from calc.stations.threads.thread_limits.told import Out
from calc.stations.threads.thread_limits.verdict import verdict_on
from calc.stations.threads.thread_limits.zone import Sizes, limits_of


@calculator(
    "thread-limits",
    "Limits of a thread",
    In,
    Out,
    purpose="What may this thread measure in its class, and does mine keep to it?",
    finds=(
        "ISO 965",
        "6g",
        "6H",
        "2A",
        "2B",
        "pitch diameter",
        "major diameter",
        "minor diameter",
        "UNC",
        "UNF",
        "metric thread",
        "worn thread",
        "thread tolerance",
    ),
    sources=(sources.ISO_965, sources.ASME_B1_1),
)
def thread_limits(i: In) -> Answer:
    """Limits by the tables of ISO 965-1, or the formulas of ASME B1.1, at 20 °C and before plating; normal
    engagement.

    Crest is what a plain micrometer or pin touches: a bolt's major diameter, a hole's minor. Form, pitch and
    angle of the flanks are not judged: thread gauges do that.
    """
    thread, hole, bolt = pair(i.size, i.fit)
    is_bolt, source = i.part == BOLT, standard(thread)
    own, mate = (bolt, hole.pitch) if is_bolt else (hole, bolt.pitch)
    crest = own.major if is_bolt else own.minor
    deviation = known("es" if is_bolt else "EI", "Deviation of the class", own.pitch.deviation, source)
    pitch_low, pitch_high = limits_of(
        own.pitch, ("p", "pitch diameter"), deviation, (Out.pitch_low, Out.pitch_high), source
    )
    crest_low, crest_high = limits_of(
        crest, ("c", "outside" if is_bolt else "bore"), deviation, (Out.crest_low, Out.crest_high), source
    )
    mate_least, mate_most = least_and_most(mate)
    mate_low = known("q_min", "Mate's pitch diameter, least", mate_least, source)
    mate_high = known("q_max", "Mate's pitch diameter, most", mate_most, source)
    tightest = Out.tightest(mate_low - pitch_high if is_bolt else pitch_low - mate_high)
    loosest = Out.loosest(mate_high - pitch_low if is_bolt else pitch_high - mate_low)
    sizes = Sizes(pitch_low, pitch_high, crest_low, crest_high)
    readings = readings_of(i, thread, (crest.basic, own.pitch.basic), sizes)
    return answer(
        *sizes,
        tightest,
        loosest,
        verdict=verdict_on(readings, own.name, i.part, sizes),
        limits=tuple(
            Limit(f"the {r.words.lower()}", r.read, low=float(r.low), high=float(r.high)) for r in readings
        ),
        remarks=_remarks_on(i, readings),
        tables=lambda: (both_parts(hole, bolt), your_thread(readings)),
        figures=lambda: (profile(thread, hole, bolt),),
    )


def _remarks_on(i: In, readings: list[Reading]) -> tuple[Remark | None, ...]:
    return (
        (
            note(
                "These limits hold before plating. A plating counts four times on the pitch diameter,"
                " twice on each of two flanks."
            )
            if i.part == BOLT
            else None
        ),
        (
            note("A pitch diameter in limits is no proof of pitch and flank: a go and a no-go gauge are.")
            if readings
            else None
        ),
    )
