"""The limits of one diameter, worked as the standard does: the basic size, off by the deviation, and a
tolerance beyond."""

from typing import NamedTuple

from calc.core.result import Source
from calc.core.working import Number
from calc.declare.calculator import Output
from calc.reference.standards.threads import Zone
from calc.stations.shared.thread_sizes import known, tolerance_of


class Sizes(NamedTuple):
    """`crest` is a bolt's outside or a hole's bore."""

    pitch_low: Number
    pitch_high: Number
    crest_low: Number
    crest_high: Number


def limits_of(
    zone: Zone, called: tuple[str, str], deviation: Number, ends: tuple[Output, Output], source: Source
) -> tuple[Number, Number]:
    """`called` are its letter and its name; `ends` name the least and the most."""
    letter, label = called
    low, high = ends
    basic = known(f"{letter}_0", f"Basic {label}", zone.basic, source)
    tolerance = known(f"T_{letter}", f"Tolerance of the {label}", tolerance_of(zone), source)
    if zone.inward < 0:
        top = high(basic - deviation, source)
        return low(top - tolerance, source), top
    bottom = low(basic + deviation, source)
    return bottom, high(bottom + tolerance, source)
