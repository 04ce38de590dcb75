"""The other casting beside this one: more heat, or how much air for as much."""

from typing import NamedTuple

from calc.core.kinds import RATIO
from calc.core.result import impossible
from calc.core.working import Number, Value, constant, form, least, step
from calc.formulas.fins import coefficient_for, hydraulic_diameter, unwarmed, warmed
from calc.reference import sources
from calc.stations.heads.fin_cooling.asked import In
from calc.stations.heads.fin_cooling.casting import Casting, air_takes, casting_of
from calc.stations.heads.fin_cooling.told import AIR, OTHER, PERK, THIS, Out


class Comparison(NamedTuple):
    """`change_least` is the change with a fan that gives no more pressure; it blows `slower` through the
    other, 1 for as fast."""

    this: Casting
    other: Casting
    change: Number
    change_least: Number
    slower: Value
    speed_other: Number
    even: Number
    may_fall: Number


def compared(i: In) -> Comparison:
    """How much air comes hangs on the fan: at most as fast as through this one, at least under no more
    pressure."""
    streams = _streams(i)
    row, row_other = i.fins
    air_other = i.air if i.air_other is None else i.air_other
    this = casting_of(i, 1, row, i.air, i.alloy, streams, THIS)
    other = casting_of(i, 2, row_other, air_other, i.alloy_other, streams, OTHER)
    change = Out.change(other.heat / this.heat - 1)
    narrower = hydraulic_diameter(other.fins.gap, other.fins.length) / hydraulic_diameter(
        this.fins.gap, this.fins.length
    )
    slower = least(narrower ** (5 / 7), 1.0)
    speed_other = Out.speed_other(i.speed * slower, sources.SAME_PRESSURE)
    takes_least = step(
        "C_f",
        "Heat that the other's air takes up per kelvin, fan as before",
        PERK,
        air_takes(other.fins, speed_other, streams),
        sources.COOLING_AIR,
    )
    change_least = Out.change_least(warmed(other.to_cold_air, takes_least) / this.per_kelvin - 1)
    even = Out.even(
        constant(
            "h_0",
            "Coefficient at which they shed alike, found by halving",
            AIR,
            coefficient_for(
                unwarmed(float(this.per_kelvin), float(other.air_takes)),
                *other.fins.plain,
                float(i.width),
                float(other.conductivity),
            ),
            sources.FINS,
        )
    )
    may_fall = Out.may_fall(1 - even / i.air)
    return Comparison(this, other, change, change_least, slower, speed_other, even, may_fall)


def _streams(i: In) -> Number:
    """How many streams of air pass the fins side by side. Raises where one would be longer than the fins."""
    path = i.width if i.path is None else i.path
    if path > i.width:
        raise impossible("path", "is {p}, longer than the fins run, {w}; give {w} or less", p=path, w=i.width)
    return step("z", "Streams side by side", form(RATIO, 2), i.width / path)
