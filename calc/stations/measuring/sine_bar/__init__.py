"""Blocks that set an angle under a sine bar, the angle that blocks set, what a micrometre turns it by."""

from calc.core.kinds import ANGLE
from calc.core.reading import in_si
from calc.core.result import impossible, note
from calc.core.working import constant
from calc.declare.calculator import Answer, Limit, answer, calculator
from calc.formulas import trigonometry as trig
from calc.reference import sources
from calc.stations.measuring.sine_bar.asked import ARC_SECONDS, In
from calc.stations.measuring.sine_bar.drawing import bar_on_blocks
from calc.stations.measuring.sine_bar.told import Out
from calc.stations.measuring.sine_bar.verdict import (
    blocks_to_wring,
    verdict_on_blocks,
    verdict_on_whole_micrometres,
)
from calc.stations.shared.forms import FINE

STEEPEST = in_si("60°", ANGLE)


@calculator(
    "sine-bar",
    "Sine bar",
    In,
    Out,
    purpose="Which blocks set this angle, and which angle do these blocks set?",
    finds=("sine bar", "sine plate", "gauge block stack", "setting an angle", "angle blocks"),
    sources=(sources.TRIANGLE, sources.PRACTICE),
)
def sine_bar(i: In) -> Answer:
    """Right triangle with the bar as its long side: h = L·sin α. The plate is flat, the rolls are alike.

    Without blocks given, those that whole micrometres can make are judged.
    """
    height = Out.height(trig.sine_height(i.length, i.angle), sources.TRIANGLE)
    _refuse_steeper(i)
    stack = (
        constant("h_b", "Blocks, in whole micrometres", FINE, round(float(height), 6))
        if i.blocks is None
        else i.blocks
    )
    angle_set = Out.angle_set(trig.sine_angle(i.length, stack), sources.TRIANGLE)
    off = Out.off(angle_set - i.angle)
    per_second = Out.per_second(
        trig.sine_sensitivity(i.length, i.angle)
        * constant("1″", "A second of arc", ARC_SECONDS, in_si("1″", ANGLE)),
        sources.TRIANGLE,
    )
    picked = blocks_to_wring(float(i.length), i.angle, float(height))
    return answer(
        height,
        angle_set,
        off,
        per_second,
        verdict=(
            verdict_on_whole_micrometres(i, stack, off, per_second)
            if i.blocks is None
            else verdict_on_blocks(i, height, angle_set, off)
        ),
        limits=(Limit("the angle", off, low=-float(i.allowed), high=float(i.allowed)),),
        remarks=(
            note("The angle wanted is {dms}.", dms=trig.degrees_minutes_seconds(i.angle)),
            note(
                "A height as small as this cannot be wrung up. Put the same larger stack under both rolls,"
                " and the difference more under one."
            )
            if picked is None
            else None,
        ),
        tables=lambda: (picked,),
        figures=lambda: (bar_on_blocks(i.length, stack, angle_set),),
    )


def _refuse_steeper(i: In) -> None:
    most = constant("", "", FINE, trig.sine_height(float(i.length), STEEPEST))
    if i.blocks is not None and float(i.blocks) > float(most):
        raise impossible(
            "blocks",
            "are {b}, which stands a bar of {L} steeper than 60°; give {most} at most",
            b=i.blocks,
            L=i.length,
            most=most,
        )
