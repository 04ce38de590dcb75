"""The cross-hatch that a hone leaves, from its strokes and its spindle, and the spindle for another angle."""

import math
from typing import NamedTuple

from calc.core.conformance import past
from calc.core.drawing import Drawing, Label, Line
from calc.core.result import Judged, Remark, impossible, note, say
from calc.core.working import PI, Number, atan, constant, least, sqrt, step, tan
from calc.declare.calculator import Answer, Limit, answer, calculator
from calc.reference import cautions, sources
from calc.stations.cylinders.hone_angle.asked import CRANK, PAIRS, REACH, In
from calc.stations.cylinders.hone_angle.told import STONE_SPEED, Out
from calc.stations.shared.forms import TENTHS_OF_DEGREE, TIMES, TURNS


class Hatch(NamedTuple):
    """Angles open towards the circumference; `judged` is that in the middle of the bore."""

    judged: Number
    mean: Number
    near_end: Number
    spindle: Number
    strokes: Number
    stroke: Number
    axial: Number
    round: Number


@calculator(
    "hone-angle",
    "Cross-hatch",
    In,
    Out,
    purpose="Which angle do the scratches of this hone cross at, and which spindle gives the one wanted?",
    finds=(
        "cross-hatch",
        "crosshatch",
        "cross-hatch angle",
        "honing",
        "honing angle",
        "hone",
        "hone speed",
        "hone stroke",
        "deglaze",
    ),
    sources=(sources.TRIANGLE, sources.HARMONIC_STROKE, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.SPINNING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def hone_angle(i: In) -> Answer:
    """Included angle 2·atan(v_along/v_round), the one that opens towards the circumference. A crank moves the
    stones along at π/2 times the mean in the middle of the stroke, and more slowly near its ends.

    Sine for the stroke: a long connecting rod. Where a hone turns back it stands, and the scratches lie round
    the bore whatever the drive.
    """
    hatch = hatch_of(i)
    return answer(
        hatch.judged,
        hatch.spindle,
        hatch.mean,
        hatch.near_end,
        hatch.strokes,
        hatch.stroke,
        hatch.axial,
        hatch.round,
        verdict=_verdict_on(i, hatch),
        limits=(Limit("the cross-hatch", hatch.judged, low=i.low, high=i.high, level="attention"),),
        remarks=_remarks_on(i, hatch),
        figures=lambda: (_crossed(hatch),),
    )


def hatch_of(i: In) -> Hatch:
    if past(i.low, i.high):
        raise impossible("low", "is {a}, more than the most, {b}; give {b} or less", a=i.low, b=i.high)
    stroke = Out.stroke(_stroke(i))
    singles = i.strokes * 2 if i.counted == PAIRS else i.strokes * 1
    mean = step("v_m", "Stones along the bore, mean", STONE_SPEED, stroke * singles)
    peak = PI / 2 if i.drive == CRANK else 1.0
    axial, around = Out.axial(mean * peak), Out.round(PI * i.bore * i.spindle)
    share = step("x", "Place on the stroke, 0 in its middle, 1 at its end", TIMES, _place(i, stroke))
    slow = sqrt(1 - share * share) if i.drive == CRANK else 1.0
    half = tan(i.wanted / 2)
    return Hatch(
        Out.judged(2 * atan(axial / around), sources.HARMONIC_STROKE),
        Out.mean(2 * atan(mean / around), sources.TRIANGLE),
        Out.near_end(2 * atan(axial * slow / around), sources.HARMONIC_STROKE),
        Out.spindle(axial / (PI * i.bore * half)),
        Out.strokes(around * half / (stroke * peak)),
        stroke,
        axial,
        around,
    )


def _stroke(i: In) -> Number:
    if i.stroke_by != REACH:
        return i.stroke * 1
    stroke = i.length + 2 * i.overrun - i.stones
    if stroke <= 0:
        raise impossible(
            "stones",
            "are {s}, longer than the bore of {b} with the overrun at both ends; give shorter ones",
            s=i.stones,
            b=i.length,
        )
    return stroke


def _place(i: In, stroke: Number) -> Number:
    return 1 - 2 * least(i.end, stroke / 2) / stroke


def _verdict_on(i: In, hatch: Hatch) -> Judged:
    flat, steep = past(i.low, hatch.judged), past(hatch.judged, i.high)
    if not flat and not steep:
        return (
            "pass",
            say("Cross-hatch {a}", a=hatch.judged),
            "Hone. Look at the scratches under a lamp: both ways alike deep, and the same from top to"
            " bottom.",
        )
    return (
        "attention",
        say(
            "Cross-hatch too {w}: {a}, {m} wanted",
            w="flat" if flat else "steep",
            a=hatch.judged,
            m=i.low if flat else i.high,
        ),
        say(
            "Set the spindle to {n} for {b}, or keep it and make single strokes at {s}. {why}",
            n=constant("", "", TURNS, float(hatch.spindle)),
            b=i.wanted,
            s=constant("", "", TURNS, float(hatch.strokes)),
            why="Flat scratches keep the oil from running back, and rings wear."
            if flat
            else "Steep ones let the oil run off, and turn the rings.",
        ),
    )


def _remarks_on(i: In, hatch: Hatch) -> tuple[Remark | None, ...]:
    return (
        note(
            "Driven by a crank it is {a} in the middle, {m} by the mean speed, and {e} near the end: say"
            " which"
            " one is meant when angles are compared.",
            a=hatch.judged,
            m=hatch.mean,
            e=hatch.near_end,
        )
        if i.drive == CRANK
        else None,
        note(
            "This is the angle that opens towards the circumference; the other one, along the bore, is {o}.",
            o=constant("", "", TENTHS_OF_DEGREE, math.pi - float(hatch.judged)),
        ),
    )


def _crossed(hatch: Hatch) -> Drawing:
    """A piece of the wall laid flat, x round the bore, y along it."""
    wide, high = 0.06, 0.04
    slope = float(hatch.axial) / float(hatch.round)
    lines = []
    for sign in (1, -1):
        for n in range(-12, 13):
            y0 = n * 0.008
            points = [(x, y0 + sign * slope * x) for x in (k * wide / 80 for k in range(-80, 81))]
            inside = [p for p in points if abs(p[1]) <= high]
            if len(inside) > 1:
                lines.append(Line((inside[0], inside[-1]), "thin"))
    frame = ((-wide, -high), (wide, -high), (wide, high), (-wide, high), (-wide, -high))
    return Drawing(
        "Scratches in the middle of the bore",
        say(
            "The wall laid flat, round the bore from left to right: scratches that cross at {a}.",
            a=hatch.judged,
        ),
        (
            Line(frame, "outline"),
            *lines,
            Label((0, -high - 0.008), "round the bore"),
            Label((0, high + 0.004), say("{a}", a=hatch.judged)),
        ),
        "angle to scale",
    )
