"""Holes for larger cylinders: what they are bored to, what metal they leave, and whether the registers
fit cold and
running."""

from calc.core.result import note
from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.crankcase.spigot_bore.asked import In, refuse_what_does_not_go_together
from calc.stations.crankcase.spigot_bore.drawing import seat
from calc.stations.crankcase.spigot_bore.hole import hole_of
from calc.stations.crankcase.spigot_bore.told import Out
from calc.stations.crankcase.spigot_bore.verdict import limits_of, verdict_on


@calculator(
    "spigot-bore",
    "Holes for larger cylinders",
    In,
    Out,
    purpose="Can this case be opened for these cylinders, to what size, and do they fit cold and running?",
    finds=(
        "bore the case",
        "open the case for big cylinders",
        "larger cylinders",
        "spigot bore",
        "cylinder register",
        "case boring",
        "wall to the stud holes",
        "big bore",
    ),
    sources=(sources.SPIGOT_WALL, sources.THERMAL, sources.MATERIALS, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.MAGNESIUM, cautions.CUTTING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def spigot_bore(i: In) -> Answer:
    """Round holes on the middle of their studs; registers and holes by their ends, and both grown freely
    with heat.

    A hole bored off the middle has that much less wall on one side. What the stud's pull and a barrel's
    own fins do
    to the shapes is not in it.
    """
    refuse_what_does_not_go_together(i)
    hole = hole_of(i)
    return answer(
        hole.low,
        hole.high,
        hole.wall,
        hole.land,
        *hole.told,
        *hole.cold,
        *hole.hot,
        verdict=verdict_on(i, hole),
        limits=limits_of(i, hole),
        remarks=(
            note(
                "A hole that is off the middle of its studs by some amount has that much less wall on one"
                " side."
            ),
            note(
                "The seat must stay wide enough round the larger hole for the cylinder's foot, and square"
                " to it: read it after boring."
            ),
        ),
        figures=lambda: (seat(i, hole),),
    )
