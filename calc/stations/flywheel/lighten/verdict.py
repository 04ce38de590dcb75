"""Is enough metal left behind the friction face, at the root and under the ring gear?"""

from typing import NamedTuple

from calc.core.conformance import past
from calc.core.result import Judged, say
from calc.core.working import Number, step
from calc.declare.calculator import Limit
from calc.stations.flywheel.lighten.asked import In
from calc.stations.flywheel.lighten.cuts import Cut, Left
from calc.stations.flywheel.lighten.sums import Sums
from calc.stations.shared.forms import ROUGH


class Found(NamedTuple):
    """What is left in the three zones; `seat_ends` is the largest diameter to which a cut may go under
    the ring
    gear's seat, `reaches` that to which one goes, None where none is known or made."""

    face: Left
    root: Left
    rim: Left
    seat_ends: Number | None
    reaches: Number | None


def found_in(i: In, cuts: list[Cut], face: Left, root: Left, rim: Left) -> Found:
    ends = (
        None
        if i.seat is None
        else step("D_k", "A cut on the engine's side ends by", ROUGH, i.seat - 2 * i.under_seat)
    )
    engine = [cut.outer for cut in cuts if cut.side == "engine"]
    return Found(face, root, rim, ends, max(engine, key=float, default=None))


def verdict_on(i: In, cuts: list[Cut], sums: Sums, found: Found) -> Judged:
    return _too_thin(i, found) or _look_again(i, found, sums) or _in_order(cuts, sums)


def limits_of(i: In, sums: Sums, found: Found) -> tuple[Limit, ...]:
    return (
        Limit("what is left behind the friction face", found.face.thickness, low=i.face_least),
        Limit("what is left at the root", found.root.thickness, low=i.root_least),
        *(
            ()
            if found.reaches is None or found.seat_ends is None
            else (
                Limit(
                    "the cut under the ring gear's seat",
                    found.reaches,
                    high=found.seat_ends,
                    level="attention",
                ),
            )
        ),
        Limit("the share of the inertia", sums.share, high=i.most_share, level="attention"),
    )


def _too_thin(i: In, found: Found) -> Judged | None:
    for words, left, least in (
        ("behind the face", found.face, i.face_least),
        ("at the root", found.root, i.root_least),
    ):
        if past(least, left.thickness):
            return (
                "fail",
                say("Too thin " + words + ": {t}, {l} wanted", t=left.thickness, l=least),
                say(
                    "Do not cut so. It is thinnest at a diameter of {d}: take less there, or take it"
                    " farther out,"
                    " where a shallower cut saves as much. If it is that thin already, the flywheel is"
                    " scrap.",
                    d=left.at,
                ),
            )
    return None


def _look_again(i: In, found: Found, sums: Sums) -> Judged | None:
    if found.reaches is not None and found.seat_ends is not None and past(found.reaches, found.seat_ends):
        return (
            "attention",
            "A cut goes under the ring gear's seat",
            say(
                "It goes to {d}. End it by {e}, so that {w} stay under the seat: one that gives lets the"
                " ring gear"
                " turn.",
                d=found.reaches,
                e=found.seat_ends,
                w=i.under_seat,
            ),
        )
    if past(sums.share, i.most_share):
        return (
            "attention",
            say("{q} of the inertia goes, more than {m}", q=sums.share, m=i.most_share),
            "Ask whoever drives it: it idles unevenly, stalls as it moves off, and the crank shakes"
            " more. Take less,"
            " unless that is wanted.",
        )
    if i.holes is not None:
        return (
            "attention",
            "Holes: only where the maker allows them",
            "The stress at the edge of a hole is about three times that beside it, and a row of holes is"
            " where a"
            " flywheel begins to crack. Turn metal off instead, and leave the pattern of holes as it is.",
        )
    return None


def _in_order(cuts: list[Cut], sums: Sums) -> Judged:
    if not cuts:
        return (
            "pass",
            "Thick enough as it is; nothing is cut",
            "Type the cuts that are planned. Then the result says what they take off and what they leave.",
        )
    return (
        "pass",
        say("Enough is left: {q} of the inertia goes", q=sums.share),
        "Before the first chip, try this section at its highest speed with the calculator for stress."
        " Turn it in"
        " one setting by its register, with a round corner in every step; then balance it.",
    )
