"""Is the face flat and square enough, and if not, what comes off it?"""

from calc.core.advice import at_least
from calc.core.conformance import past
from calc.core.result import Judged, Remark, note, say, warning
from calc.core.working import Number
from calc.declare.calculator import Limit
from calc.stations.crankcase.face_plane.asked import SEAT, In
from calc.stations.crankcase.face_plane.face import Face
from calc.stations.shared.forms import SIZE

TOO_MUCH = (
    1.0e-3  # m: more than a face that was in use may differ from end to end; common practice, no source
)

Held = tuple[str, str, Number, Number, Number]  # words of a headline, of a doubt; number, good, most


def _held(i: In, face: Face) -> list[Held]:
    if i.face != SEAT:
        return [
            (
                "Joint out of flat",
                "the parting face's flatness",
                face.flatness,
                i.parting_good,
                i.parting_most,
            )
        ]
    return [
        ("Seat out of flat", "the seat's flatness", face.flatness, i.seat_flat_good, i.seat_flat_most),
        ("Seat tilted", "the seat's tilt", face.tilt, i.tilt_good, i.tilt_most),
    ]


def _wrong_unit(i: In, face: Face) -> Judged | None:
    """No face that a cylinder or a half sat on differs so much: a unit was mistaken. How a half stands on
    its jacks is no matter."""
    differ = face.spread if i.face == SEAT else face.flatness
    if not past(differ, TOO_MUCH):
        return None
    return (
        "unsure",
        say("Readings differ by {d}: wrong unit?", d=differ),
        "Were hundredths or thousandths typed as whole millimetres, or did a gauge slip? Put that right or"
        " read again; nothing is cut by these numbers.",
    )


def verdict_on(i: In, face: Face) -> Judged:
    if wrong := _wrong_unit(i, face):
        return wrong
    for words, _, number, _, most in _held(i, face):
        if past(number, most):
            return "fail", say(words + ": {x}, {most} allowed", x=number, most=most), _cut(i, face)
    for words, _, number, good, _ in _held(i, face):
        if past(number, good):
            return (
                "attention",
                say(words + ": {x}, {good} is good", x=number, good=good),
                say(
                    "Take burrs off with a flat stone, wash, and read it again. If it stays: {cut}",
                    cut=_cut(i, face),
                ),
            )
    if i.face == SEAT:
        return (
            "pass",
            say("Flat within {f}, tilted by {t}", f=face.flatness, t=face.tilt),
            "Leave it alone. Then all seats of the side against each other: their heights must agree too.",
        )
    return (
        "pass",
        say("Flat within {f}", f=face.flatness),
        "Leave it alone: no paper, no file. Sealant bridges no more than a film.",
    )


def _cut(i: In, face: Face):
    if i.face == SEAT:
        return say(
            "Cut the seat parallel to the crank by {c}, and the other seats of the side to the same height.",
            c=at_least(face.cut, SIZE),
        )
    return say(
        "A cut of {c} cleans it up, and narrows every bore on the joint: only together with line boring,"
        " cam bores too.",
        c=at_least(face.cut_along, SIZE),
    )


def limits_of(i: In, face: Face) -> tuple[Limit, ...]:
    return tuple(
        limit
        for _, words, number, good, most in _held(i, face)
        for limit in (Limit(words, number, high=most), Limit(words, number, high=good, level="attention"))
    )


def remarks_on(i: In, face: Face) -> tuple[Remark | None, ...]:
    few = len(face.points)
    return (
        warning(
            "Four places show a face that is twisted, and none that is hollow between them: read eight"
            " before it is cut."
        )
        if few == 4
        else None,
        note(
            "Flatness and tilt are those of the narrowest zone that holds every place. What is laid on the"
            " face rests on its highest places only, and leans by {t}.",
            t=face.resting_tilt,
        ),
        note(
            "A seat is cut parallel to the crank, so its tilt goes too. Its height falls by {c} then, and"
            " deck height and pushrods follow.",
            c=face.cut,
        )
        if i.face == SEAT
        else None,
    )
