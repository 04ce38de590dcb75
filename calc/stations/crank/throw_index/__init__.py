"""Throw and angle of each rod journal, from heights over the pins of a crank in blocks, against the first
pin."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.crank.throw_index.asked import In, refuse_impossible
from calc.stations.crank.throw_index.drawing import throws
from calc.stations.crank.throw_index.pins import pins_of
from calc.stations.crank.throw_index.table import pin_by_pin
from calc.stations.crank.throw_index.told import Out
from calc.stations.crank.throw_index.verdict import limits_of, remarks_on, verdict_on


@calculator(
    "throw-index",
    "Throws and their angles",
    In,
    Out,
    purpose=(
        "Are the strokes of the four cylinders alike, and does every pin stand at its angle to the first?"
    ),
    finds=(
        "crank index error",
        "indexing a crankshaft",
        "measure the stroke",
        "stroke of each cylinder",
        "crank throw",
        "phase of the pins",
        "pin angle",
        "split throws",
    ),
    sources=(sources.SINE_OF_HEIGHT, sources.TWO_THROWS, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def throw_index(i: In) -> Answer:
    """Throw: half the difference of the heights at top and bottom. Angle: arcsine of what the pin stands over
    halfway, over its throw, the crank clamped with its throws level.

    Halfway between top and bottom is the height of the crank's axis and half the pin, so that neither has
    to be known. A bow of the crank moves the pins too, and comes in as throw and angle."""
    refuse_impossible(i)
    pins = pins_of(i)
    return answer(
        pins.turned,
        pins.spread,
        pins.longest,
        pins.shortest,
        pins.shift,
        pins.diameter,
        verdict=verdict_on(i, pins),
        limits=limits_of(i, pins),
        remarks=remarks_on(i, pins),
        tables=lambda: (pin_by_pin(i, pins),),
        figures=lambda: (throws(i, pins),),
    )
