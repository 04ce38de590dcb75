"""Which step of a machine to set for a cut, how fast it then cuts, and how long it takes."""

from math import pi

from calc.core.kinds import SPEED, TIME
from calc.core.result import Judged, Remark, impossible, note, say, warning
from calc.core.working import Number, constant, form
from calc.declare.calculator import Answer, Limit, Output, Outputs, answer, calculator
from calc.reference import cautions, sources
from calc.stations.cutting.spindle_speed.asked import CUTTING_SPEED, FACED, MILLED, STEPS, In
from calc.stations.cutting.spindle_speed.drawing import speed_over_diameter
from calc.stations.cutting.usual_speeds import CUTS
from calc.stations.shared.forms import TURNS

RUBS = 0.4  # of the speed at the outside, under which the inside of a face is rubbed; common practice


class Out(Outputs):
    step = Output("Set the spindle to", "n", TURNS, main=True)
    speed = Output("Cutting speed then", "v", CUTTING_SPEED, main=True)
    wanted = Output("Spindle for the speed wanted", "n_w", TURNS)
    table = Output("Feed along the work", "v_f", form(SPEED, 1, "mm/min", "in/min"))
    time = Output("Time for one pass", "t", form(TIME, 0))


@calculator(
    "spindle-speed",
    "Spindle speed, feed and time",
    In,
    Out,
    purpose="Which step does this cut want, and how long does a pass take?",
    finds=(
        "rpm",
        "cutting speed",
        "surface speed",
        "surface feet",
        "feeds and speeds",
        "fly cutter",
        "facing",
        "boring speed",
        "machining time",
    ),
    sources=(sources.TURNING, sources.PRACTICE),
    cautions=(cautions.CUTTING, cautions.MAGNESIUM, cautions.ONE_GRINDER),
)
def spindle_speed(i: In) -> Answer:
    """n = v/(π·d), then the machine's next step below: never above the speed wanted.

    Time is way over feed: of a cutter that must leave the face, its length and the cutter's diameter; of a
    face, half the difference of its diameters. What is usual to cut at is common practice, from memory.
    """
    low, high = (constant("", "", CUTTING_SPEED, v / 60) for v in CUTS[i.cut].speeds[i.tool])
    speed = (
        i.speed
        if i.speed is not None
        else constant(
            "v_w",
            "Cutting speed, middle of what is usual",
            CUTTING_SPEED,
            (float(low) + float(high)) / 2,
            sources.PRACTICE,
        )
    )
    wanted = Out.wanted(speed / (pi * i.diameter), sources.TURNING)
    on_plate = (row[0] for row in i.steps if row is not None) if i.drive == STEPS else ()
    steps = sorted(on_plate, key=float)
    fitting = [n for n in steps if float(n) <= float(wanted) * (1 + 1e-9)]
    slow_enough = bool(fitting or not steps)
    step = Out.step(fitting[-1] if fitting else steps[0] if steps else wanted)
    cut = Out.speed(pi * i.diameter * step, sources.TURNING)
    table = Out.table(i.feed * step * (i.tips if i.way == MILLED else 1))
    found = Out.time(_way(i) / table)
    return answer(
        step,
        cut,
        wanted,
        table,
        found,
        verdict=_verdict_on(step, cut, speed, slow_enough),
        limits=(Limit("the spindle", step, high=wanted),),
        remarks=_remarks_on(i, cut, low, high),
        figures=lambda: (speed_over_diameter(i, step, cut, low, high),),
    )


def _way(i: In) -> Number:
    """What the tool travels in one pass."""
    if i.way == MILLED:
        return i.length + i.diameter
    if i.way != FACED:
        return i.length
    if i.inside >= i.diameter:
        raise impossible(
            "inside",
            "is {a}, not less than the outside, {b}; give less, as it is faced from the outside in",
            a=i.inside,
            b=i.diameter,
        )
    return (i.diameter - i.inside) / 2


def _verdict_on(step: Number, cut: Number, speed: Number, slow_enough: bool) -> Judged:
    if not slow_enough:
        return (
            "fail",
            say("No step slow enough: {n} cuts at {v}", n=step, v=cut),
            say(
                "{w} was wanted. A smaller cutter, or carbide in place of high-speed steel; else another"
                " machine. Too fast burns the edge, and in magnesium the chips.",
                w=speed,
            ),
        )
    return (
        "pass",
        say("Set {n}: it cuts at {v}", n=step, v=cut),
        "Sharp edge, short overhang, work held so that it cannot turn with the tool. Listen to the first"
        " chips, and slow down rather than speed up.",
    )


def _remarks_on(i: In, cut: Number, low: Number, high: Number) -> tuple[Remark | None, ...]:
    told = {"low": low, "high": high, "what": CUTS[i.cut].name.lower()}
    usual = "{low} to {high} is usual for this with that tool, common practice, from memory"
    inner = float(cut) * float(i.inside) / float(i.diameter) if i.way == FACED else None
    return (
        warning("You want {v}, where " + usual + ". Is it in the right unit?", v=i.speed, **told)
        if i.speed is not None and not float(low) / 2 <= float(i.speed) <= float(high) * 1.5
        else note(usual + "; the tool maker's table goes before that.", **told),
        warning(
            "At the inside of the face the speed is {v}: the edge rubs there. Take the inside in a second"
            " pass with a faster spindle.",
            v=constant("", "", CUTTING_SPEED, inner),
        )
        if inner is not None and inner < RUBS * float(cut)
        else None,
        note("The way counts the whole cutter behind the face: stopped before, it leaves a ridge.")
        if i.way == MILLED
        else None,
        warning(
            "Magnesium is cut dry, with sharp edges and thick chips: fine chips and a rubbing edge set it on"
            " fire."
        )
        if i.cut == "magnesium"
        else None,
        warning(
            "A fitted seat ring is cut by hand speed or a slow spindle; a fast one chatters and glazes it."
        )
        if i.cut == "seat" and cut > high
        else None,
    )
