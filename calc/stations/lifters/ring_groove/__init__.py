"""Snap ring that keeps a plunger unit in its body: what all three bear, and whether the ring sits."""

from calc.core.result import Remark, note, warning
from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.reference.materials import MATERIALS, Material
from calc.stations.lifters.ring_groove.asked import In
from calc.stations.lifters.ring_groove.drawing import section
from calc.stations.lifters.ring_groove.strength import Strength, refuse_no_groove, seat_and_strength_of
from calc.stations.lifters.ring_groove.told import Out
from calc.stations.lifters.ring_groove.verdict import limits_of, verdict_on


@calculator(
    "ring-groove",
    "Snap ring and its groove",
    In,
    Out,
    purpose=(
        "Do ring, groove and lip bear the valve train's load, and does the ring sit deep enough and reach far"
        " enough?"
    ),
    finds=(
        "retaining ring",
        "circlip groove",
        "snap ring thrust load",
        "lifter snap ring",
        "groove depth",
        "ring came out",
        "lip of a groove",
    ),
    sources=(sources.SNAP_RING, sources.MATERIALS, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.SNAP_RING, cautions.CUTTING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def ring_groove(i: In) -> Answer:
    """Square ring, square groove, load even all round. A gap or a round corner bears less.

    The lip is judged in shear at the groove's bottom; a short one bends as well, which is why it must be
    three depths long.
    """
    refuse_no_groove(i)
    seat, bears = seat_and_strength_of(i)
    return answer(
        bears.capacity,
        bears.used,
        seat.depth,
        bears.ring,
        bears.groove,
        bears.lip,
        seat.lip_ratio,
        seat.wall,
        seat.overhang,
        seat.play,
        verdict=verdict_on(i, seat, bears),
        limits=limits_of(i, seat, bears),
        remarks=_remarks_on(MATERIALS[i.body_material], bears),
        figures=lambda: (section(i, seat.depth),),
    )


def _remarks_on(body: Material, bears: Strength) -> tuple[Remark | None, ...]:
    return (
        note(f"The weakest of the three: {bears.weakest}."),
        warning(
            "{name} breaks without warning: a groove with sharp corners halves what its lip bears.",
            name=body.name,
        )
        if body.brittle
        else None,
    )
