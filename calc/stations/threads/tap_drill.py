"""Drill before a tap: which one, how much thread it leaves, and whether the bore stays within its class."""

from calc.core.drawing import Area, Drawing, Label, Line
from calc.core.kinds import RATIO
from calc.core.result import Table, impossible, note, say, warning
from calc.core.working import form
from calc.declare.calculator import (
    Answer,
    Inputs,
    Limit,
    Number,
    Output,
    Outputs,
    answer,
    calculator,
    choice,
    given,
    measured,
)
from calc.formulas.screw_threads import FULL_CUT, FULL_FORMED, FULL_HEIGHT, drill_for, share_of_thread
from calc.reference import cautions, sources
from calc.reference.standards.drills import Drill, choose, near
from calc.reference.standards.threads import HEIGHT, internal
from calc.stations.shared.thread_sizes import (
    FITS,
    NOTHING,
    SIZE,
    SIZES,
    known,
    length,
    nominal,
    pair,
    pitch,
    standard,
)

SHARE = form(RATIO, 1, "%", "%")
CUT, FORMED = "cutting", "forming"
TAPS = {CUT: "Cutting tap", FORMED: "Forming tap, no chips"}
LISTS = {"metric": "Metric, by 0.1 mm", "inch": "Numbers, letters, 64ths"}
FORMED_CLASS = (  # common practice, no source: a formed crest is not full, so its bore may be as wide as in the loose class
    "7H"
)


class Out(Outputs):
    drill = Output("Drill", "D_d", SIZE, main=True)
    share = Output("Thread that it leaves (full at 1.299·P)", "q", SHARE, main=True)
    share_of_height = Output("The same, of the height to the basic bore (full at 1.0825·P)", "q_1", SHARE)
    bore = Output("Bore of the finished thread", "D_1", SIZE)
    bore_low = Output("Bore allowed, least", "D_1,min", SIZE)
    bore_high = Output("Bore allowed, most", "D_1,max", SIZE)


class In(Inputs):
    size: str = choice("Thread", SIZES, must=True, example="M8x1.25")
    wanted: Number = given(
        "Thread wanted",
        "q_w",
        form(RATIO, 0, "%", "%"),
        hard="30 to 95 %",
        usual="55 to 85 %",
        assumed=("75 %", "common practice, no source"),
        hint=(
            "75 % is usual, 60 to 65 % in steel, long holes and with a forming tap; common practice, no"
            " source."
        ),
    )
    own: Number | None = measured(
        "Your drill or hole, if you have one",
        "D_own",
        SIZE,
        tool="a micrometer, or pin gauges",
        hard="1.5 to 26 mm",
    )
    drills: str = choice("Drills at hand", LISTS, default="metric")
    tap: str = choice("Kind of tap", TAPS, must=True, example=CUT)
    fit: str = choice("Class", FITS, fold=True, assumed=("usual", "what is sold unless another is asked for"))


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
    """The drill nearest to the thread wanted, of those that keep the bore within its class where there are any.

    Share of thread counts 100 % where the bore is 1.5·H = 1.299·P under the nominal diameter. A forming tap pushes the crest inwards: its drill
    is larger, its bore smaller than the drill by what the rule of 0.68·P gives. A drill cuts larger than itself: measure the hole.
    """
    thread, hole, _ = pair(i.size, i.fit)
    if i.tap == FORMED and thread.system == "metric":
        hole = internal(thread, FORMED_CLASS)
    source, full = standard(thread), FULL_CUT if i.tap == CUT else FULL_FORMED
    d, P = nominal(thread), pitch(thread)
    ideal = drill_for(float(d), float(P), float(i.wanted), full)
    low, tolerance = (
        known("D_1,0", "Basic bore", hole.minor.near, source),
        known("T_D1", "Tolerance of the bore", hole.minor.tolerance, source),
    )
    bore_low, bore_high = Out.bore_low(low, source), Out.bore_high(low + tolerance, source)

    def bore_of(drill):
        """Bore that the tap leaves of a hole drilled so, m."""
        return (
            drill
            if i.tap == CUT
            else thread.d - FULL_CUT * thread.P * share_of_thread(thread.d, thread.P, drill, full)
        )

    def within(drill):
        return hole.minor.low - NOTHING <= bore_of(drill) <= hole.minor.high + NOTHING

    around, best = near(ideal, i.drills, 7), choose(ideal, i.drills, within)
    chosen = best if i.own is None else Drill("your hole", float(i.own))
    if i.own is not None and not thread.d - 1.4 * thread.P <= float(i.own) < thread.d - 0.2 * thread.P:
        raise impossible(
            "own",
            "is {own}, no hole for {thread}; give {low} to {high}, or choose the thread that it belongs to",
            own=i.own,
            thread=thread.words,
            low=length(thread.d - 1.4 * thread.P),
            high=length(thread.d - 0.2 * thread.P),
        )
    drill = Out.drill(known("D_list", "Drill", chosen.size, sources.DRILLS) if i.own is None else i.own)
    share = Out.share(share_of_thread(d, P, drill, full), sources.THREAD_SHARE)
    bore = Out.bore(drill if i.tap == CUT else drill_for(d, P, share, FULL_CUT), sources.THREAD_SHARE)
    height = Out.share_of_height(share_of_thread(d, P, bore, FULL_HEIGHT), sources.THREAD_SHARE)
    return answer(
        drill,
        share,
        height,
        bore,
        bore_low,
        bore_high,
        verdict=_verdict(chosen, best, i.own is not None, hole, bore, bore_low, bore_high, share, i.tap),
        limits=(
            (Limit("the bore", bore, low=float(bore_low), high=float(bore_high)),)
            if i.own is not None
            else ()
        ),
        remarks=(
            (
                warning(
                    "{share} of thread turns hard and breaks taps: 85 % holds hardly more than 75 %.",
                    share=share,
                )
                if share > 0.85
                else None
            ),
            (
                note(
                    "A forming tap wants a metal that flows, such as aluminium or mild steel, and oil: never"
                    " cast iron or a casting that crumbles."
                )
                if i.tap == FORMED
                else None
            ),
            (
                note(
                    "A formed bore is judged by {name}, as crests are not pressed full; common practice, no"
                    " source.",
                    name=hole.name,
                )
                if i.tap == FORMED and thread.system == "metric"
                else None
            ),
            note(
                "The drill cuts larger than itself by some hundredths: try it in scrap of the same metal and"
                " measure."
            ),
        ),
        tables=(_table(around, thread, full, bore_of, within),),
        figures=(section(thread, float(bore), bore, drill),),
    )


def _verdict(chosen, best, own, hole, bore, low, high, share, tap):
    name = "Your hole" if own else f"Drill {chosen.name}"
    better = f" Take {best.name}." if own else " Choose the other list of drills, or less or more thread."
    if float(bore) > hole.minor.high + NOTHING:
        return (
            "fail",
            say(
                name + ": bore over {class_} by {by}",
                class_=hole.name,
                by=length(float(bore) - hole.minor.high),
            ),
            say(
                "{share} of thread is left. "
                + (
                    "It holds less than the class should: work out the length of engagement, or fit a wire"
                    " thread insert."
                    if own
                    else "Little is lost if the engagement is long; the class is not kept." + better
                ),
                share=share,
            ),
        )
    if float(bore) < hole.minor.low - NOTHING:
        return (
            "fail",
            say(
                name + ": bore under {class_} by {by}",
                class_=hole.name,
                by=length(hole.minor.low - float(bore)),
            ),
            "Drill or ream it larger before you tap it: a tight hole breaks taps, and the bolt may bind at"
            " its root." + better,
        )
    return (
        "pass",
        say(name + ": {share} of thread", share=share),
        say(
            "Within {class_}: {a} to {b}. "
            + (
                "Turn back every half turn to break the chip."
                if tap == CUT
                else "Run it in one go, with plenty of oil."
            ),
            class_=hole.name,
            a=low,
            b=high,
        ),
    )


def _table(around, thread, full, bore_of, within) -> Table:
    ordered = sorted(around, key=lambda drill: drill.size)
    return Table(
        "Drills near it",
        ("Drill", "Size", "Thread", "Bore"),
        tuple(
            (
                drill.name,
                length(drill.size),
                known("", "", share_of_thread(thread.d, thread.P, drill.size, full), None, SHARE),
                length(bore_of(drill.size)),
            )
            for drill in ordered
        ),
        tuple("pass" if within(drill.size) else "fail" for drill in ordered),
    )


def section(thread, bore, shown, drill) -> Drawing:
    """Half of the tapped hole's profile, to scale, with the height that the drill leaves."""
    P, r, top = thread.P, thread.d / 2, 0.75 * thread.P
    inner, H = bore / 2, HEIGHT * P
    points = []
    for i in range(3):
        x = i * P
        half = min(
            max((r + H / 8 - inner) / H * P / 2, P / 16), P / 2
        )  # where the flank meets the bore, from the middle of the groove
        points += [
            (x + P / 2 - half, inner),
            (x + P / 2 - P / 16, r),
            (x + P / 2 + P / 16, r),
            (x + P / 2 + half, inner),
        ]
    return Drawing(
        "Thread that the drill leaves",
        say(
            "Profile of the tapped hole, bore {b} from a drill of {d}; the broken line is the basic bore.",
            b=shown,
            d=drill,
        ),
        (
            Area(((0, inner), *points, (3 * P, inner), (3 * P, r + top), (0, r + top)), "a"),
            Line(((-0.2 * P, thread.minor / 2), (3.2 * P, thread.minor / 2)), "hidden"),
            Label((1.5 * P, thread.minor / 2 - 0.45 * P), say("bore {b}", b=shown)),
            Label((-0.25 * P, thread.minor / 2 - 0.06 * P), "basic bore", "end"),
        ),
    )
