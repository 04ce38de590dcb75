"""Rod bolts: preload from torque or stretch, the pull of piston and rod at top dead centre, and what holds
the cap shut."""

from calc.core.conformance import past
from calc.core.result import Remark, note, warning
from calc.core.working import Number
from calc.declare.calculator import Answer, Limit, answer, calculator
from calc.reference import cautions, sources
from calc.stations.rods.rod_bolt.asked import ENDS, TORQUE, In
from calc.stations.rods.rod_bolt.bolt import bolt_of
from calc.stations.rods.rod_bolt.clamp import clamp_left, pull_at_top, refuse_what_cannot_turn
from calc.stations.rods.rod_bolt.drawing import clamp_over_speed
from calc.stations.rods.rod_bolt.stress import yield_used
from calc.stations.rods.rod_bolt.tightening import tightening
from calc.stations.rods.rod_bolt.told import Out
from calc.stations.rods.rod_bolt.verdict import verdict_on
from calc.stations.shared.bolts import TARGET


@calculator(
    "rod-bolt",
    "Rod bolts at speed",
    In,
    Out,
    purpose=(
        "What preload does this torque or stretch give the rod bolts, and does it hold the cap shut at speed"
        " without yield?"
    ),
    finds=(
        "rod bolt torque",
        "rod bolt stretch",
        "connecting rod bolt",
        "cap lift",
        "inertia load",
        "overspeed",
        "rod nut",
        "bolt elongation",
        "preload",
    ),
    sources=(
        sources.ISO_16047,
        sources.VDI_2230,
        sources.BOLT_SPRINGS,
        sources.SLIDER_CRANK,
        sources.STRESS_AREA,
        sources.BOLT_CLASSES,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.ROD_SCRAP, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def rod_bolt(i: In) -> Answer:
    """Preload by ISO 16047 or from the stretch of shank and thread in series; pull of all that hangs on the
    rod's half at top dead centre between exhaust and intake, when no gas helps.

    The cap's own weight rides on the journal and does not pull at the bolts. The pull is shared evenly;
    prying of a thin cap, heat and settling are not in it. Elastic up to yield.
    """
    refuse_what_cannot_turn(i)
    bolt = bolt_of(i)
    made = tightening(i, bolt)
    pull = pull_at_top(i)
    clamp = clamp_left(i, made.low, pull.each)
    used = yield_used(i, bolt, made, pull.each)
    return answer(
        made.preload,
        clamp.margin,
        used,
        made.torque,
        made.stretch,
        made.low,
        made.high,
        pull.acceleration,
        pull.whole,
        pull.each,
        clamp.left,
        clamp.opens,
        verdict=verdict_on(i, made, clamp, used),
        limits=_limits_of(i, clamp.margin, used),
        remarks=_remarks_on(i, used),
        figures=lambda: (clamp_over_speed(made.preload - i.crush, clamp, i.speed),),
    )


def _limits_of(i: In, margin: Number, used: Number) -> tuple[Limit, ...]:
    allowed = i.known == TORQUE and (i.least_torque is not None or i.most_torque is not None)
    return (
        Limit("the bolt's stress", used, high=1),
        Limit("the clamp", margin, low=1),
        Limit("the bolt's stress", used, high=TARGET, level="attention"),
        Limit("the clamp", margin, low=i.least_margin, level="attention"),
        *(
            (Limit("the torque", i.torque, low=i.least_torque, high=i.most_torque, level="attention"),)
            if allowed
            else ()
        ),
    )


def _remarks_on(i: In, used: Number) -> tuple[Remark | None, ...]:
    return (
        (
            note(
                "Over the ends a micrometer reads a seventh or so more than the free length stretches:"
                " the head gives, and the thread inside the nut."
            )
            if i.read_over == ENDS
            else None
        ),
        note("The pull grows with the square of the speed: a tenth more speed is a fifth more pull."),
        (
            warning("Past yield the bolt stays longer, and the preload shown is more than there is.")
            if past(used, 1)
            else None
        ),
    )
