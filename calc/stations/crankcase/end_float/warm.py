"""What heat makes of the end float: the crank's shoulders move apart, and so do the thrust faces between."""

from calc.core.result import impossible
from calc.core.working import Number, Value
from calc.reference import sources
from calc.reference.materials import MATERIALS
from calc.stations.crankcase.end_float.asked import STEEL, In
from calc.stations.crankcase.end_float.told import Out
from calc.stations.shared.growth import growth, reference_temperature


def change(width: Value, crank_strain: Value, body_strain: Value) -> Value:
    """How much the float grows, m: the crank's shoulders, `width` apart, less what stands between them."""
    return width * (crank_strain - body_strain)


def change_of(i: In) -> Number:
    reference = reference_temperature()
    crank = growth(MATERIALS[STEEL], i.crank_temperature, reference, "k", "crank", "crank_temperature")
    body = growth(
        MATERIALS[i.body], i.case_temperature, reference, "w", "part between the faces", "case_temperature"
    )
    return Out.change(change(i.width, crank, body), sources.THERMAL)


def refuse_crossed(i: In) -> None:
    if i.low >= i.high:
        raise impossible("low", "is {low}, not below the most, {high}; give less", low=i.low, high=i.high)
