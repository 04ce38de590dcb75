"""How fast a machine taps, how it feeds, and how deep the hole is to be drilled for it."""

from math import pi

from calc.core.conformance import past
from calc.core.drawing import Area, Dimension, Drawing, Line, box
from calc.core.kinds import ANGLE, RATIO, SPEED
from calc.core.result import Judged, Remark, impossible, note, say, warning
from calc.core.working import constant, form, step, tan
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
from calc.reference import cautions, sources
from calc.reference.standards.threads import THREADS
from calc.stations.shared.forms import COARSE, ROUGH, ROUGH_TIMES, SIZE, TURNS
from calc.stations.shared.thread_sizes import nominal, pitch, thread_of

BLIND, THROUGH = "blind", "through"
# threads of a tap's end that do not cut to full depth, as handbooks name its three forms (from memory)
LEADS = {
    "taper": ("Taper, about 8 threads", 8.0),
    "second": ("Second, about 4 threads", 4.0),
    "bottoming": ("Bottoming, about 2 threads", 2.0),
}
SLOW = form(SPEED, 1, "m/min", "ft/min")
CORE = 1.0825318  # 5/4 of the height of the sharp triangle, over the pitch: ISO 68-1
THIN = 2.0e-3  # m of metal under the point: less may break out when the drill comes near, common practice


class In(Inputs):
    thread: str = thread_of("M8x1.25")
    hole: str = choice("The hole", {BLIND: "ends in the metal", THROUGH: "goes through"}, default=BLIND)
    depth: Number = given(
        "Full thread wanted, from the face",
        "l",
        ROUGH,
        hard="1 to 200 mm",
        usual="5 to 60 mm",
        example="18.0 mm",
        hint="“Length of engagement” tells how much holds.",
    )
    lead: str = choice(
        "The tap's end",
        {id: words for id, (words, _) in LEADS.items()},
        must=True,
        example="second",
        hint="Count the threads that are ground away.",
    )
    speed: Number = given(
        "Cutting speed",
        "v",
        SLOW,
        hard="0.5 to 100 m/min",
        usual="3 to 30 m/min",
        assumed=("8 m/min", "a tap of high-speed steel; common practice, no source"),
        hint="The tap maker's; iron and steel slower, aluminium faster.",
    )
    drill: Number | None = measured(
        "Drill", "d_b", SIZE, tool="a micrometer", hard="0.5 to 60 mm", hint="Left empty: thread less pitch."
    )
    metal: Number | None = measured(
        "Metal there is, from the face",
        "h",
        ROUGH,
        tool="a depth gauge, a rule, or a wire through a hole beside it",
        hard="1 to 500 mm",
        hint="To the next hollow: a gallery, a stud's hole, the other side.",
        when=("hole", BLIND),
    )
    room: Number = given(
        "Room under the tap's end",
        "s",
        COARSE,
        hard="0 to 20 mm",
        usual="0.5 to 5 mm",
        fold=True,
        assumed=("1.00 mm", "for chips; common practice, no source"),
        when=("hole", BLIND),
    )
    point: Number = given(
        "Angle of the drill's point",
        "φ",
        form(ANGLE, 0),
        hard="60° to 180°",
        usual="90° to 140°",
        fold=True,
        assumed=("118°", "a usual drill"),
    )


class Out(Outputs):
    spindle = Output("Spindle", "n", TURNS, main=True)
    feed = Output("Feed: the pitch, no choice", "v_f", form(SPEED, 0, "mm/min", "in/min"), main=True)
    full = Output("Drill to full diameter, deep", "l_b", ROUGH, main=True)
    tip = Output("Drill to its point, deep", "l_s", ROUGH)
    turns = Output("Turns in", "N", ROUGH_TIMES)


@calculator(
    "tapping-speed",
    "Speed and depth for tapping",
    In,
    Out,
    purpose="How fast is this thread tapped by machine, and how deep is the hole drilled before?",
    finds=(
        "tapping rpm",
        "tapping feed",
        "rigid tapping",
        "blind hole depth",
        "drill depth for tap",
        "tap lead",
        "bottoming tap",
        "broken tap",
    ),
    sources=(sources.TURNING, sources.ISO_965, sources.ASME_B1_1, sources.PRACTICE),
    cautions=(cautions.CUTTING, cautions.MAGNESIUM),
)
def tapping_speed(i: In) -> Answer:
    """n = v/(π·d) and feed = P·n. A blind hole is drilled to its full diameter as deep as full thread, lead
    of the tap and room reach; the point stands r/tan(φ/2) below."""
    thread = THREADS[i.thread]
    d, P = nominal(thread), pitch(thread)
    drill = i.drill if i.drill is not None else step("d_b", "Drill, thread less pitch", SIZE, d - P)
    if drill >= d:
        raise impossible("drill", "is {b}, not less than the thread, {d}; give less", b=drill, d=d)
    core = step("D_1", "Thread's core in the hole, basic size", SIZE, d - CORE * P)
    threads = constant("z", "Threads of the tap's end", form(RATIO, 0), LEADS[i.lead][1], sources.PRACTICE)
    spindle = Out.spindle(i.speed / (pi * d), sources.TURNING)
    travel = i.depth + threads * P
    full = Out.full(travel + i.room if i.hole == BLIND else i.depth)
    tip = Out.tip(full + drill / 2 / tan(i.point / 2))
    return answer(
        spindle,
        Out.feed(P * spindle),
        full,
        tip,
        Out.turns(travel / P),
        verdict=_verdict_on(i, full, tip, core),
        limits=_limits_of(i, tip, core),
        remarks=_remarks_on(i),
        figures=lambda: (section(i, d, drill, full, tip),),
    )


def _limits_of(i: In, tip: Number, core: Number) -> tuple[Limit, ...]:
    found = [] if i.drill is None else [Limit("the drill", i.drill, low=core, level="attention")]
    if i.metal is not None and i.hole == BLIND:
        found.append(Limit("the drill's point", tip, high=i.metal))
        found.append(Limit("the metal under it", i.metal - tip, low=THIN, level="attention"))
    return tuple(found)


def _verdict_on(i: In, full: Number, tip: Number, core: Number) -> Judged:
    left = None if i.metal is None or i.hole == THROUGH else i.metal - tip
    if left is not None and past(tip, i.metal or 0):
        return (
            "fail",
            say("Breaks through: {s} deep, {h} there", s=tip, h=i.metal),
            "Less thread, a bottoming tap after the second one, or a flat-ended drill for the last of it. If"
            " it may break through, the stud wants sealant.",
        )
    if left is not None and past(THIN, left):
        return (
            "attention",
            say("Only {x} left under the point", x=constant("", "", ROUGH, float(left))),
            "Thin metal breaks out under the drill. Set the stop by a trial on the outside, and feed by hand"
            " at the end.",
        )
    if i.drill is not None and past(core, i.drill):
        return (
            "attention",
            say("Drill small: {b}, core {c}", b=i.drill, c=core),
            "The tap cuts at its core too, binds and breaks. See that the drill belongs to this thread; take"
            " the one that “Drill for a tap” names.",
        )
    return (
        "pass",
        say("Drill {l} deep", l=full) if i.hole == BLIND else "Drill through",
        "Set the stop with the drill's point on the face. Countersink to the thread's outside, clean the"
        " hole, and start the tap square.",
    )


def _remarks_on(i: In) -> tuple[Remark | None, ...]:
    return (
        warning(
            "Another feed than the pitch strips the thread or breaks the tap: on a machine without a feed for"
            " it the tap holder must give along its axis."
        ),
        note(
            "Run out before the tap's end meets the bottom: what a spindle needs to stop is no part of the"
            " depth."
        )
        if i.hole == BLIND
        else note("The tap runs on by its lead behind the metal: is there room?"),
        note("Where metal there is was not measured, nobody knows whether the point comes out.")
        if i.hole == BLIND and i.metal is None
        else None,
    )


def section(i: In, d: Number, drill: Number, full: Number, tip: Number) -> Drawing:
    """The hole cut along its axis: full thread, full diameter, the point."""
    deep, point, r, R = float(full), float(tip), float(drill) / 2, float(d) / 2
    thread = float(i.depth)
    bottom = float(i.metal) if i.metal is not None else point + 0.5 * R
    wide = 3 * R
    edge = ((r, -deep), (0.0, -point))

    def side(sign: int) -> Area:
        points = [(r, 0.0), *edge, (0.0, -max(bottom, point)), (wide, -max(bottom, point)), (wide, 0.0)]
        return Area(tuple((sign * x, y) for x, y in points), "a")

    if i.hole == THROUGH:
        return Drawing(
            "The hole, cut along its axis",
            say("A hole of {d}, through {l}.", d=drill, l=i.depth),
            (
                Area(box(-wide, -thread, -r, 0.0), "a"),
                Area(box(r, -thread, wide, 0.0), "a"),
                *(Line(((x, 0.0), (x, -thread)), "thin") for x in (-R, R)),
                Line(((0.0, 0.2 * R), (0.0, -thread - 0.2 * R)), "centre"),
                Dimension((wide, 0.0), (wide, -thread), i.depth, 0.6 * R, "l"),
            ),
        )
    return Drawing(
        "The hole, cut along its axis",
        say("Full thread {l} deep, full diameter {b}, the point {s}.", l=i.depth, b=full, s=tip),
        (
            side(1),
            side(-1),
            *(Line(((x, 0.0), (x, -thread)), "thin") for x in (-R, R)),
            Line(((0.0, 0.2 * R), (0.0, -point - 0.2 * R)), "centre"),
            Dimension((-wide, 0.0), (-wide, -thread), i.depth, -0.6 * R, "l"),
            Dimension((wide, 0.0), (wide, -deep), full, 0.6 * R, "l_b"),
            Dimension((wide, 0.0), (wide, -point), tip, 2.2 * R, "l_s"),
        ),
    )
