"""Where the plunger of a hydraulic lifter stands, cold, while it warms up and running.

And the pushrod that keeps it off both stops.
"""

from calc.core.conformance import past
from calc.core.result import Remark, impossible, note
from calc.declare.calculator import Answer, Limit, answer, calculator
from calc.reference import cautions, sources
from calc.stations.lifters.plunger_travel.asked import In
from calc.stations.lifters.plunger_travel.chain import Movement, movement_of
from calc.stations.lifters.plunger_travel.drawing import columns, warm_up
from calc.stations.lifters.plunger_travel.told import Out
from calc.stations.lifters.plunger_travel.travel import Left, left_of, length, pushrod_of
from calc.stations.lifters.plunger_travel.verdict import verdict_on


@calculator(
    "plunger-travel",
    "Plunger in its travel",
    In,
    Out,
    purpose="Does the plunger stay off both its stops, cold, hot and worn, and what pushrod puts it there?",
    finds=(
        "lifter preload",
        "pushrod length",
        "hydraulic lifter adjustment",
        "plunger depth",
        "valve held open",
        "rocker stand shim",
        "lifter bottoms",
        "thermal growth of the valve train",
    ),
    sources=(
        sources.VALVE_TRAIN_GROWTH,
        sources.THERMAL,
        sources.MATERIALS,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.SPRING, cautions.BREAK_IN, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def plunger_travel(i: In) -> Answer:
    """A chain along the cylinder: case, cylinder and head carry the rocker shaft away from the cam.

    Lifter and pushrod follow it. The tip of the stem is taken to stand as high over the seat as the shaft
    does. Each part has one mean temperature. Warming up: cylinder, head and valve hot, while case, lifter and
    pushrod are still cold. Tilt of the pushrod is left out (under 1 %).
    """
    if past(i.preload, i.travel):
        raise impossible(
            "preload",
            "is {p}, more than the travel, {s}, which is all that the plunger goes; give {s} or less",
            p=i.preload,
            s=i.travel,
        )
    moves = movement_of(i)
    left = left_of(i, moves)
    rod = pushrod_of(i, left)
    return answer(
        left.top,
        left.bottom,
        rod.wanted,
        rod.longer,
        rod.shim,
        moves.change,
        moves.running,
        moves.warming,
        left.cold,
        left.running,
        left.preload_least,
        left.preload_most,
        verdict=verdict_on(i, left, rod),
        limits=(
            Limit("what is left to the upper stop", left.top, low=0.0),
            Limit("what is left to the lower stop", left.bottom, low=0.0),
            Limit("what is left to the upper stop", left.top, low=i.least_top, level="attention"),
            Limit("what is left to the lower stop", left.bottom, low=i.least_bottom, level="attention"),
        ),
        remarks=_remarks_on(moves, left),
        figures=lambda: (columns(i, moves), warm_up(i, moves)),
    )


def _remarks_on(moves: Movement, left: Left) -> tuple[Remark | None, ...]:
    low, high = left.preload_least, left.preload_most
    return (
        note("Cold it may be pressed in by {a} to {b}.", a=low, b=high) if low <= high else None,
        note(
            "Running, the plunger comes up by {d}: the case and cylinder grow more than the pushrod.",
            d=length(-float(moves.change)),
        )
        if moves.change < 0
        else note(
            "Running, the plunger goes down by {d}: the pushrod and valve grow more than what carries"
            " the rockers.",
            d=moves.change,
        ),
    )
