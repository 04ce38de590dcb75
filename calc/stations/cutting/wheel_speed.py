"""How fast the rim of a grinding wheel runs, and whether its own mark allows it."""

from math import pi

from calc.core.conformance import past
from calc.core.drawing import Axis, Plot, Series
from calc.core.kinds import LENGTH, RATIO, SPEED
from calc.core.result import Judged, Remark, note, say, warning
from calc.core.working import constant, form, least
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
from calc.stations.shared.forms import ROUGH, TURNS

RIM, WORK = form(SPEED, 1), form(SPEED, 2)
WHOLE_TIMES = form(RATIO, 0)
SPEED_ONLY, TURNS_ONLY, BOTH, NONE = "speed", "turns", "both", "none"
CLEAR, RESIN, DULL, NOT_TRIED = "clear", "resin", "dull", "not-tried"
USUAL = (60.0, 120.0)  # rim over work, in grinding a crank: common practice, no source


class In(Inputs):
    diameter: Number = measured(
        "Wheel's diameter, as it is now",
        "d_w",
        form(LENGTH, 0),
        tool="a rule across the wheel, at rest",
        hard="10 to 1500 mm",
        usual="50 to 900 mm",
        example="600 mm",
    )
    spindle: Number = given(
        "Speed that the spindle will run at",
        "n",
        TURNS,
        hard="10 1/ to 60000 1/min",
        usual="500 1/ to 6000 1/min",
        example="1100 1/min",
        hint="The highest that the machine can be set to by mistake, not the one meant.",
    )
    marked: str = choice(
        "On the wheel stands",
        {
            SPEED_ONLY: "its highest speed at the rim",
            TURNS_ONLY: "its highest speed in turns a minute",
            BOTH: "both",
            NONE: "no mark, or none that can be read",
        },
        must=True,
        example=BOTH,
    )
    marked_speed: Number = given(
        "Marked: at the rim",
        "v_max",
        RIM,
        hard="5 to 200 m/s",
        usual="16 to 80 m/s",
        example="35 m/s",
        when=("marked", SPEED_ONLY, BOTH),
        hint="In m/s, or in ft/min: the two look alike and are 200 apart.",
    )
    marked_turns: Number = given(
        "Marked: turns a minute",
        "n_max",
        TURNS,
        hard="10 1/ to 90000 1/min",
        usual="500 1/ to 9000 1/min",
        example="1110 1/min",
        when=("marked", TURNS_ONLY, BOTH),
    )
    ring: str = choice(
        "Looked over and rung",
        {
            CLEAR: "rings clear, no crack or chip to be seen",
            RESIN: "bonded with resin or rubber, which does not ring: no crack or chip to be seen",
            DULL: "sounds dull, or is cracked or chipped",
            NOT_TRIED: "not tried",
        },
        must=True,
        example=CLEAR,
        hint="Hang it dry on a finger or a pin and tap it with wood, a hand's breadth off the middle.",
    )
    work: Number | None = measured(
        "Work's diameter",
        "d_p",
        ROUGH,
        tool="a micrometer",
        hard="1 to 1000 mm",
        usual="10 to 300 mm",
        fold=True,
    )
    work_turns: Number | None = given(
        "Work's speed", "n_p", TURNS, hard="1 1/ to 2000 1/min", usual="10 1/ to 200 1/min", fold=True
    )


class Out(Outputs):
    rim = Output("Speed at the rim", "v", RIM, main=True)
    most = Output("Spindle's speed, at most", "n_most", TURNS, main=True)


@calculator(
    "wheel-speed",
    "Speed of a grinding wheel",
    In,
    Out,
    purpose="May this wheel run on this machine, at this speed?",
    finds=(
        "grinding wheel",
        "wheel surface speed",
        "rim speed",
        "peripheral speed",
        "maximum operating speed",
        "ring test",
        "worn wheel",
        "wheel burst",
    ),
    sources=(sources.WHEEL_MARK, sources.TURNING, sources.PRACTICE),
    cautions=(cautions.SPINNING, cautions.ONE_GRINDER, cautions.MAKER_FIRST),
)
def wheel_speed(i: In) -> Answer:
    """Rim speed v = π·d·n against the wheel's own marks; each that stands on it counts by itself.

    A wheel that has worn smaller may be turned faster by its mark at the rim, never by its mark in turns a
    minute.
    """
    rim = Out.rim(pi * i.diameter * i.spindle, sources.TURNING)
    allowed = (
        *((i.marked_speed / (pi * i.diameter),) if i.marked in (SPEED_ONLY, BOTH) else ()),
        *((i.marked_turns,) if i.marked in (TURNS_ONLY, BOTH) else ()),
    )
    runs = allowed and i.ring != DULL
    return answer(
        rim,
        Out.most(least(*allowed) if runs else constant("", "", TURNS, 0.0), sources.WHEEL_MARK),
        verdict=_verdict_on(i, rim),
        limits=_limits_of(i, rim),
        remarks=_remarks_on(i, rim),
        figures=lambda: (over_diameter(i, rim),),
    )


def _limits_of(i: In, rim: Number) -> tuple[Limit, ...]:
    if i.marked == NONE or i.ring == DULL:
        return (Limit("the spindle", i.spindle, high=0.0),)
    return (
        *((Limit("the rim", rim, high=i.marked_speed),) if i.marked in (SPEED_ONLY, BOTH) else ()),
        *((Limit("the spindle", i.spindle, high=i.marked_turns),) if i.marked in (TURNS_ONLY, BOTH) else ()),
    )


def _verdict_on(i: In, rim: Number) -> Judged:
    if i.marked == NONE:
        return (
            "fail",
            "Does not run: it has no mark",
            "Nobody knows what this wheel bears. Break it up so that nobody fits it, and take one that is"
            " marked.",
        )
    if i.ring == DULL:
        return (
            "fail",
            "Does not run: cracked, chipped or dull",
            "Break it up so that nobody fits it. A wheel that only got wet sounds dull too: dry it and try it"
            " once more, but never run it on a guess.",
        )
    if i.marked in (SPEED_ONLY, BOTH) and past(rim, i.marked_speed):
        return (
            "fail",
            say("Does not run: rim {v}, {m} marked", v=rim, m=i.marked_speed),
            "Set a slower spindle, or take a smaller wheel or one that is marked for more. Read the mark"
            " again: m/s and ft/min are easily taken for each other.",
        )
    if i.marked in (TURNS_ONLY, BOTH) and past(i.spindle, i.marked_turns):
        return (
            "fail",
            say("Does not run: spindle {n}, {m} marked", n=i.spindle, m=i.marked_turns),
            "Set a slower spindle, or take a wheel that is marked for more. That this one has worn smaller"
            " allows it nothing.",
        )
    if i.ring == NOT_TRIED:
        return (
            "attention",
            "Not yet: nobody has rung it",
            "Its mark allows this speed. Look it over, hang it up dry, tap it with wood: it must ring clear."
            " Then say so here.",
        )
    return (
        "pass",
        say("May run: {v} at the rim", v=rim),
        "Flanges of one size with blotters, nut no tighter than it takes, guard shut. Let it run a minute"
        " with nobody in its plane before it touches the work; then dress it.",
    )


def _remarks_on(i: In, rim: Number) -> tuple[Remark | None, ...]:
    return (
        note(
            "Only the turns a minute are marked: they hold for the wheel as it was new, so a rim speed cannot"
            " be judged by them when the wheel is not of the size that stands beside them."
        )
        if i.marked == TURNS_ONLY
        else None,
        None if i.work is None or i.work_turns is None else _on_work(rim, pi * i.work * i.work_turns),
        note("The machine's own plate has a say too: its guard is made for one size and speed of wheel."),
    )


def _on_work(rim: Number, work: Number) -> Remark:
    """How the wheel and the work that it grinds run past each other."""
    low, high = (constant("", "", WHOLE_TIMES, end) for end in USUAL)
    ratio = float(rim) / float(work)
    told = {
        "v": constant("", "", WORK, float(work)),
        "k": constant("", "", WHOLE_TIMES, ratio),
        "low": low,
        "high": high,
    }
    runs = "The work runs at {v} at its skin, the rim {k} times as fast; {low} to {high} is usual on journals"
    if USUAL[0] <= ratio <= USUAL[1]:
        return note(runs + " (common practice, no source).", **told)
    return warning(
        runs + " (common practice, no source). Below that the wheel is rough and wears, above it the work"
        " burns.",
        **told,
    )


def over_diameter(i: In, rim: Number) -> Plot:
    """How fast the rim is at this spindle speed, over the wheel's diameter, and its mark."""
    here, turns = float(i.diameter), float(i.spindle)
    low, high = 0.5 * here, 1.25 * here
    marks = (
        (Series("marked", ((low, float(i.marked_speed)), (high, float(i.marked_speed))), "limit"),)
        if i.marked in (SPEED_ONLY, BOTH)
        else ()
    )
    return Plot(
        "Speed at the rim, over the wheel's diameter",
        say("The rim runs at {v} here; a larger wheel on the same spindle is faster.", v=rim),
        Axis("Diameter of the wheel", form(LENGTH, 0)),
        Axis("Speed at the rim", RIM),
        (Series("this spindle", tuple((d, pi * d * turns) for d in (low, high))), *marks),
        ((here, float(rim), "here"),),
    )
