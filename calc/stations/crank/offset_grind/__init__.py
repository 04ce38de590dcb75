"""A longer stroke by grinding the rod journals off their old axis: what is gained, what is possible, and all
that moves with it."""

from calc.core.kinds import ANGLE, AREA, VOLUME
from calc.core.result import impossible
from calc.core.working import PI, Number, asin, cos, form, sin, sqrt, step
from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.crank.offset_grind.asked import In, refuse_impossible
from calc.stations.crank.offset_grind.drawing import throw
from calc.stations.crank.offset_grind.remarks import remarks_on
from calc.stations.crank.offset_grind.told import Out
from calc.stations.crank.offset_grind.verdict import Found, limits_of, verdict_on
from calc.stations.shared.forms import SIZE


@calculator(
    "offset-grind",
    "Longer stroke by offset grinding",
    In,
    Out,
    purpose=(
        "Does this stroke come out of the journals that are there, what is the longest that does, and what"
        " moves with it?"
    ),
    finds=(
        "offset grinding",
        "stroker crank",
        "stroked crankshaft",
        "longer stroke",
        "increase the stroke",
        "rod journal offset",
        "journal overlap",
        "crank throw",
        "more displacement",
    ),
    sources=(sources.TWO_THROWS, sources.OVERLAP, sources.SWEPT, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.SPINNING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def offset_grind(i: In) -> Answer:
    """The new journal's circle within the old one, further out: at most half the difference of their
    diameters, less stock and wear on the outer side.

    The new throw is the old one and the offset as vectors; what the offset is set off the throw's plane turns
    the pin out of its angle. Wear on the inner side costs nothing. Half of the longer stroke shows at the
    crown.
    """
    refuse_impossible(i)
    then = step("r_2", "Throw then", SIZE, i.stroke / 2)
    gain = Out.gain(then - i.throw)
    offset = Out.offset(
        sqrt(then**2 - (i.throw * sin(i.off_plane)) ** 2) - i.throw * cos(i.off_plane), sources.TWO_THROWS
    )
    room = step("a", "Half the difference of both journals", SIZE, (i.pin - i.new_pin) / 2)
    most = Out.largest_offset(room - i.clean_up - (i.pin - i.along), sources.TWO_THROWS)
    largest = Out.largest(
        2 * sqrt((i.throw + most * cos(i.off_plane)) ** 2 + (most * sin(i.off_plane)) ** 2),
        sources.TWO_THROWS,
    )
    index = Out.index(asin(offset * sin(i.off_plane) / then), sources.TWO_THROWS)
    turned = step("δ_a", "Out of its angle, either way", form(ANGLE, 3), abs(index))
    overlap_then = Out.overlap_then((i.main + i.new_pin) / 2 - then, sources.OVERLAP)
    deck = Out.deck_then(i.deck - gain)
    shim = Out.shim(gain)
    left = None if i.room is None else step("q_2", "Room of the rods then", i.room.sure_form, i.room - gain)
    inner = Out.inner_stock(room + offset)
    found = Found(offset, most, largest, turned, overlap_then, shim, deck, left, inner)
    return answer(
        gain,
        largest,
        offset,
        most,
        inner,
        Out.outer_stock(room - offset),
        index,
        Out.overlap((i.main + i.pin) / 2 - i.throw, sources.OVERLAP),
        overlap_then,
        deck,
        shim,
        *_compression(i),
        verdict=verdict_on(i, found),
        limits=limits_of(i, found),
        remarks=remarks_on(i, found),
        figures=lambda: (throw(i, then, offset, index),),
    )


def _compression(i: In) -> tuple[Number, Number]:
    """As it is, and with the longer stroke and the same deck height."""
    area = step("A", "Area of the bore", form(AREA, 2), PI / 4 * i.bore**2)
    above = step("V", "Above the piston", form(VOLUME, 1), i.chamber + area * i.deck)
    if float(above) <= 0:
        raise impossible(
            "deck", "is {t}, so that the piston fills the whole chamber; give one that leaves room", t=i.deck
        )
    return (
        Out.ratio(1 + area * 2 * i.throw / above, sources.SWEPT),
        Out.ratio_then(1 + area * i.stroke / above, sources.SWEPT),
    )
