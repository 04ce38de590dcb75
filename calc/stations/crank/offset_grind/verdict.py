"""Does the stroke come out of the journal that is there, and does the crank bear it?"""

from typing import NamedTuple

from calc.core.advice import at_least, at_most
from calc.core.conformance import past
from calc.core.result import Judged, say
from calc.core.working import Number
from calc.declare.calculator import Limit
from calc.stations.crank.offset_grind.asked import In
from calc.stations.shared.forms import COARSE, SIZE


class Found(NamedTuple):
    """`room` is what the rods keep to case and cam, None where it was not read; `turned` counts without
    sign."""

    offset: Number
    largest_offset: Number
    largest: Number
    turned: Number
    overlap: Number
    shim: Number
    deck: Number
    room: Number | None
    inner_stock: Number


def verdict_on(i: In, found: Found) -> Judged:
    if past(found.offset, found.largest_offset):
        return _does_not_come_out(i, found)
    if found.room is not None and i.room_least is not None and past(i.room_least, found.room):
        return (
            "fail",
            say("Rods come too near: {q} left", q=found.room),
            say(
                "{least} are to be left to case and cam. Relieve the case or the rods' shoulders as their"
                " makers allow, and read again with clay; else a shorter stroke.",
                least=i.room_least,
            ),
        )
    if i.index_most is not None and past(found.turned, i.index_most):
        return (
            "fail",
            say("Pin {e} out of its angle, {most} allowed", e=found.turned, most=i.index_most),
            "Set the offset in the plane of the throw: the old pin's highest point straight over the axis,"
            " read with a dial before the wheel comes near.",
        )
    if past(i.overlap_least, found.overlap):
        return (
            "attention",
            say("Overlap only {u}, {least} wanted", u=found.overlap, least=i.overlap_least),
            "A crank breaks through the web where journals do not overlap. Ask its maker, or take a shorter"
            " stroke or a larger rod journal.",
        )
    return (
        "pass",
        say("Stroke {S}: {e} off the old axis", S=i.stroke, e=found.offset),
        say(
            "All four alike, fillets first. Then shim every cylinder by {z}, or take shorter rods or"
            " pistons, to keep the deck height; measure deck, compression and room again before it is"
            " closed.",
            z=at_least(found.shim, COARSE),
        ),
    )


def _does_not_come_out(i: In, found: Found) -> Judged:
    if past(0.0, found.largest_offset):
        return (
            "fail",
            "Nothing left to grind off centre",
            say(
                "Journal wanted, wear and stock to clean up take all that there is. Rods for a smaller"
                " journal may serve: at least {d} smaller.",
                d=at_least(-2 * found.largest_offset, SIZE),
            ),
        )
    return (
        "fail",
        say("{S} does not come out: {max} at most", S=i.stroke, max=at_most(found.largest, COARSE)),
        say(
            "Take that stroke, or rods whose journal is smaller by {d}. The outer side has to clean up: no"
            " wheel puts metal on.",
            d=at_least(2 * (found.offset - found.largest_offset), SIZE),
        ),
    )


def limits_of(i: In, found: Found) -> tuple[Limit, ...]:
    limits = [
        Limit("the offset", found.offset, high=found.largest_offset),
        Limit("the overlap", found.overlap, low=i.overlap_least, level="attention"),
    ]
    if i.index_most is not None:
        limits.append(Limit("the pin's angle", found.turned, high=i.index_most))
    if found.room is not None and i.room_least is not None:
        limits.append(Limit("the room of the rods", found.room, low=i.room_least))
    return tuple(limits)
