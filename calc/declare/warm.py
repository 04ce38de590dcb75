"""A length that was read away from 20 °C, brought to it: with what the part and the gauge were at."""

import math
from collections.abc import Callable
from dataclasses import dataclass

from calc.core.conformance import COVERAGE
from calc.core.kinds import EXPANSION, TEMPERATURE
from calc.core.reading import Entry, EntryError, in_si, read
from calc.core.result import Refused, Text, say
from calc.core.working import Form, Number, constant, form, step
from calc.formulas.warm_reading import (
    ALPHA_DOUBT,
    GAUGE_ALPHA,
    at_reference,
    expansion_doubt,
    temperature_doubt,
)
from calc.reference.materials import REFERENCE, Material
from calc.reference.sources import THERMAL

# what may be told beside a measured length: entry name.part
WARM = {"part": "part temperature", "gauge": "gauge temperature"}
_RANGE = (in_si("-60 °C", TEMPERATURE), in_si("150 °C", TEMPERATURE))
_DEGREES = form(TEMPERATURE, 0)

Refusal = Callable[[str, Text, str], Refused]
"""Makes the error of an entry: code, sentence, name of the part of the entry."""


@dataclass(frozen=True)
class Temperature:
    """A temperature and its standard doubt, K."""

    value: float
    doubt: float


def temperatures(told: dict[str, str], system: str, refused: Refusal) -> dict[str, Temperature]:
    """Of part and gauge; 20 °C where nothing is told. Raises what `refused` makes of an entry that cannot be
    used."""
    return {
        part: _temperature(told[part], part, system, refused) if part in told else Temperature(REFERENCE, 0.0)
        for part in WARM
    }


def _temperature(text: str, part: str, system: str, refused: Refusal) -> Temperature:
    words = WARM[part]
    try:
        entry = read(text, TEMPERATURE, TEMPERATURE.unit(system), _RANGE)
    except EntryError as error:
        sentence = say(f"{words}: " + "{problem}; {accepted}", problem=error.problem, accepted=error.accepted)
        raise refused(error.code, sentence, part) from None
    if not _RANGE[0] <= entry.value <= _RANGE[1]:
        t, low, high = (constant("", "", _DEGREES, value) for value in (entry.value, *_RANGE))
        sentence = say(
            f"{words} " + "{t} is no temperature to measure at; give {low} to {high}", t=t, low=low, high=high
        )
        raise refused("out-of-range", sentence, part)
    return Temperature(entry.value, standard_doubt(entry))


def at_20(
    reading: Number, shape: Form, u: float, at: dict[str, Temperature], material: Material
) -> tuple[Number, float]:
    """A reading (a length with symbol and label, the form it is written in, and its standard doubt u, m)
    brought to 20 °C, and the standard doubt of that, with those of the temperatures and of the part's
    expansion. Where no doubt is told at all, the reading is taken as it is: 0. Raises `OutsideTable` where
    the material's expansion is not known."""
    symbol, label = reading.symbol, reading.label
    alpha = material.mean_alpha(at["part"].value)
    of_part, of_gauge = (
        constant(f"α_{letter}", words, form(EXPANSION, 1), a, THERMAL)
        for letter, words, a in (
            ("part", f"Expansion of {material.name}", alpha),
            ("gauge", "Expansion of a steel gauge", GAUGE_ALPHA),
        )
    )
    part, gauge = (
        constant(f"t_{name}", words.capitalize(), form(TEMPERATURE, 1), at[name].value)
        for name, words in WARM.items()
    )
    zero = constant("T_0", "Reference temperature", _DEGREES, REFERENCE)
    read_as = constant(
        f"{symbol}{',' if '_' in symbol else '_'}read", f"{label}, as read", shape, float(reading)
    )
    length = at_reference(read_as, of_part, of_gauge, part, gauge, zero)
    value = step(symbol, f"{label} at 20 °C", shape, length, THERMAL, reading.key)
    if not u and not any(each.doubt for each in at.values()):
        return value, 0.0
    size = abs(float(reading))
    return value, math.hypot(
        u,
        temperature_doubt(size, alpha, GAUGE_ALPHA, at["part"].doubt, at["gauge"].doubt),
        expansion_doubt(size, alpha, ALPHA_DOUBT / COVERAGE, at["part"].value, REFERENCE),
    )


def standard_doubt(entry: Entry) -> float:
    """Standard uncertainty of an entry, SI: a doubt written behind ± is the expanded one (GUM, common
    form)."""
    return (entry.doubt or 0.0) / COVERAGE
