"""Rings of a piston: end gap cold and hot where the bore is smallest, and side clearance in the groove."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.cylinders.ring_gap.asked import In
from calc.stations.cylinders.ring_gap.drawing import seen_from_above
from calc.stations.cylinders.ring_gap.remarks import remarks_on
from calc.stations.cylinders.ring_gap.ring import rings_of
from calc.stations.cylinders.ring_gap.table import ring_by_ring
from calc.stations.cylinders.ring_gap.told import Out
from calc.stations.cylinders.ring_gap.verdict import limits_of, verdict_on


@calculator(
    "ring-gap",
    "Ring gap and side clearance",
    In,
    Out,
    purpose="Do the ends of these rings stay apart when hot, and have they room in their grooves?",
    finds=(
        "ring gap",
        "ring end gap",
        "piston rings",
        "piston-ring gap",
        "ring side clearance",
        "ring groove",
        "butting rings",
        "file piston rings",
    ),
    sources=(sources.THERMAL, sources.TRIANGLE, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def ring_gap(i: In) -> Answer:
    """A ring's length is the bore's circumference less the gap; hot, both grow with their own heat. In
    another
    place of the bore the gap is wider by π times the difference of the bores.

    A ring of one heat in a round bore of one heat. Judged where the bore is smallest: there the ends meet
    first.
    """
    rings = rings_of(i)
    return answer(
        rings.hot,
        rings.gap,
        rings.top,
        rings.closes,
        rings.wanted,
        rings.share,
        verdict=verdict_on(rings),
        limits=limits_of(rings),
        remarks=remarks_on(i, rings),
        tables=lambda: (ring_by_ring(rings),),
        figures=lambda: (seen_from_above(i, rings),),
    )
