"""Deck heights read at both ends of each pin's axis: do the pistons lean, are both of a head alike, and
which shims bring them where they belong."""

from calc.core.result import impossible
from calc.core.working import Extreme, Number, greatest, least
from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.cylinders.deck_height.asked import In
from calc.stations.cylinders.deck_height.barrels import barrels_of, heads_of, steepest
from calc.stations.cylinders.deck_height.drawing import crowns
from calc.stations.cylinders.deck_height.remarks import remarks_on
from calc.stations.cylinders.deck_height.table import cylinder_by_cylinder
from calc.stations.cylinders.deck_height.told import Out
from calc.stations.cylinders.deck_height.verdict import limits_of, verdict_on


@calculator(
    "deck-height",
    "Deck height and cylinder shims",
    In,
    Out,
    purpose="How far below its cylinder does each piston stop, does one lean, and which shims go where?",
    finds=(
        "deck height",
        "barrel shims",
        "cylinder shims",
        "cylinder base shims",
        "squish",
        "piston below the deck",
        "piston tilt",
    ),
    sources=(sources.TWO_AXES, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def deck_height(i: In) -> Answer:
    """The mean of two readings on the pin's axis is free of the rocking of the piston about it; their
    difference is the slope of the crown along it. One head stands on two cylinders, which get the same
    shims: of all sets of those sold, that which brings both decks within their limits and their mean nearest
    to the one wanted. What is in already stays where it serves.
    """
    if i.low >= i.high:
        raise impossible("low", "is {low}, not below {high}; give less than {high}", low=i.low, high=i.high)
    barrels = barrels_of(i)
    heads = heads_of(i, barrels)
    worst, slope, angle = steepest(barrels)
    decks = [deck for head in heads for deck in head.decks]
    return answer(
        Out.shims(_end(greatest, [head.thick for head in heads])),
        Out.spread(_end(greatest, [head.spread for head in heads])),
        Out.least(_end(least, decks)),
        Out.most(_end(greatest, decks)),
        slope,
        angle,
        verdict=verdict_on(i, heads, worst, slope),
        limits=limits_of(i, heads, worst, slope),
        remarks=remarks_on(i, barrels, heads),
        tables=lambda: (cylinder_by_cylinder(heads),),
        figures=lambda: (crowns(i, heads),),
    )


def _end(pick: Extreme, numbers: list[Number]) -> Number:
    """The least or greatest of them; of one, itself."""
    return pick(*numbers) if len(numbers) > 1 else numbers[0]
