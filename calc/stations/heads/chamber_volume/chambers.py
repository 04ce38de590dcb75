"""The chambers as the burette gave them, and what a cut leaves of them."""

import math
from typing import NamedTuple

from calc.core.kinds import EXPANSION
from calc.core.result import impossible
from calc.core.working import PI, Number, constant, form, greatest, step
from calc.reference import sources
from calc.stations.heads.chamber_volume.asked import CHAMBERS, LIQUIDS, MATCH, In
from calc.stations.heads.chamber_volume.told import CC, FACE, Out
from calc.stations.shared.forms import COARSE

# Of volume, 1/K, 20 to 30 °C; handbook values, from memory.
GROWTH = {"water": 0.26e-3, "paraffin": 0.95e-3, "spirit": 1.09e-3}
NOTHING = 0.5e-8  # m³: less than this is not to be measured with a burette


class Chamber(NamedTuple):
    name: str
    read: Number
    before: Number  # before the cut, liquid as warm as the head
    volume: Number  # after it


class Chambers(NamedTuple):
    """The set as it is after the cut, and what is told of it."""

    each: list[Chamber]
    small: Chamber
    large: Chamber
    mouth: Number  # area
    growth: Number
    taken: Number
    smallest: Number
    largest: Number
    spread: Number
    target: Number  # to which the others are ground out
    grind: Number
    cut_wanted: Number
    cut_most: Number


def check_limits(i: In) -> None:
    if i.high <= i.low:
        raise impossible(
            "high",
            "is {high}, not more than the least volume, {low}; give more than {low}",
            high=i.high,
            low=i.low,
        )
    if not i.low <= i.wanted <= i.high:
        raise impossible(
            "wanted",
            "is {w}, not within the volumes allowed; give {low} to {high}",
            w=i.wanted,
            low=i.low,
            high=i.high,
        )


def chambers_of(i: In) -> Chambers:
    mouth = step(
        "A", "Mouth of the chamber", FACE, PI * i.mouth**2 / 4 if i.mouth_area is None else i.mouth_area
    )
    growth = constant(
        "β",
        f"Growth of {LIQUIDS[i.liquid]}, per kelvin",
        form(EXPANSION, 5, "1/K", "1/K"),
        GROWTH[i.liquid],
        sources.LIQUIDS,
    )
    taken = Out.taken(mouth * i.cut, sources.STRAIGHT_CUT)
    each = _each(i, growth, taken)
    small, large = (pick(each, key=lambda c: float(c.volume)) for pick in (min, max))
    _check_cut(i, small, mouth, taken)
    smallest = Out.smallest(small.volume, sources.STRAIGHT_CUT)
    largest = Out.largest(large.volume, sources.STRAIGHT_CUT)
    spread = Out.spread(largest - smallest)
    target = largest if i.aim == MATCH else i.wanted
    return Chambers(
        each,
        small,
        large,
        mouth,
        growth,
        taken,
        smallest,
        largest,
        spread,
        target,
        grind=Out.grind(greatest(target - smallest, 0.0)),
        cut_wanted=Out.cut_wanted(greatest((largest + taken - i.wanted) / mouth, 0.0), sources.STRAIGHT_CUT),
        cut_most=Out.cut_most(greatest((smallest + taken - i.low) / mouth, 0.0), sources.STRAIGHT_CUT),
    )


def _each(i: In, growth: Number, taken: Number) -> list[Chamber]:
    """The chambers that were read."""
    each = []
    for name, row in zip(CHAMBERS, i.readings):
        if not row:
            continue
        read = before = row[0]
        if i.warming:
            before = step(
                f"V'_{name}",
                f"Chamber {name}, liquid as warm as the head",
                CC,
                read * (1 + growth * i.warming),
                sources.LIQUIDS,
            )
        each.append(Chamber(name, read, before, before - taken))
    return each


def _check_cut(i: In, small: Chamber, mouth: Number, taken: Number) -> None:
    if taken >= small.before:
        raise impossible(
            "cut",
            "is {t} and takes {v}, all of chamber {name}, which holds {V}; give less than {most}",
            t=i.cut,
            v=taken,
            name=small.name,
            V=small.before,
            most=constant("", "", COARSE, math.floor(float(small.before) / float(mouth) * 1e5) / 1e5),
        )
