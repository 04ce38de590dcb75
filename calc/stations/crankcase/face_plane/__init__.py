"""Tilt and flatness of a face, from its depths at four to eight places, and the least cut that cleans it
up."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.crankcase.face_plane.asked import In, refuse_what_does_not_go_together
from calc.stations.crankcase.face_plane.drawing import side
from calc.stations.crankcase.face_plane.face import face_of
from calc.stations.crankcase.face_plane.table import place_by_place
from calc.stations.crankcase.face_plane.told import Out
from calc.stations.crankcase.face_plane.verdict import limits_of, remarks_on, verdict_on


@calculator(
    "face-plane",
    "Flatness and tilt of a face",
    In,
    Out,
    purpose=(
        "Is this face flat, and square to what it must be, and how much must come off so that it cleans up"
        " everywhere?"
    ),
    finds=(
        "flatness",
        "warped face",
        "cylinder seat",
        "seat tilt",
        "parting face",
        "surface plate",
        "fly cut",
        "spot face the seat",
        "least cut",
        "parallelism",
    ),
    sources=(sources.LEAST_DEVIATION, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.MAGNESIUM, cautions.CUTTING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def face_plane(i: In) -> Answer:
    """Flatness is the width of the narrowest zone between two parallel planes that holds every place, as
    ISO 1101 has it; tilt is the slope of that same zone over the face's width.

    Not of the plane on the three highest places: only those three would decide, and a burr among them. What
    lies on the face does rest on those, so its lean is told beside. A cut parallel to the datum goes from the
    highest place to the lowest, whatever plane is laid through them. Places that were not read may be lower,
    for which the cutter goes a little deeper.
    """
    refuse_what_does_not_go_together(i)
    face = face_of(i)
    return answer(
        face.flatness,
        face.tilt,
        face.cut,
        face.cut_along,
        face.angle,
        face.downhill,
        face.resting_tilt,
        face.resting_deep,
        verdict=verdict_on(i, face),
        limits=limits_of(i, face),
        remarks=remarks_on(i, face),
        tables=lambda: (place_by_place(i, face),),
        figures=lambda: (side(face),),
    )
