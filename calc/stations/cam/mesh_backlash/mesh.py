"""Play of the cam's gears on the pitch circle, and the size code that brings it within its limits."""

import math
from typing import NamedTuple

from calc.core.conformance import past
from calc.core.result import impossible
from calc.core.working import Number, constant, greatest, least, step
from calc.formulas import gear_backlash
from calc.reference import sources
from calc.stations.cam.mesh_backlash.asked import DIAL, In
from calc.stations.cam.mesh_backlash.told import Out
from calc.stations.shared.forms import SIZE, TENTHS_OF_DEGREE


class Mesh(NamedTuple):
    least: Number
    most: Number
    mean: Number
    differs: Number
    each: Number
    take: Number
    least_then: Number
    most_then: Number

    @property
    def kept(self) -> bool:
        return float(self.least_then) == float(self.least)


def mesh_of(i: In) -> Mesh:
    if i.code != round(float(i.code)):
        raise impossible(
            "code", "is {n}, and codes are whole numbers; give one as stamped on the gear", n=i.code
        )
    if past(i.low, i.high):
        raise impossible("low", "is {a}, more than the most, {b}; give less", a=i.low, b=i.high)
    across = step(
        "α_t",
        "Pressure angle across the axis",
        TENTHS_OF_DEGREE,
        gear_backlash.transverse_angle(i.pressure, i.helix),
        sources.GEAR_DISTANCE,
    )
    plays = _by_the_dial(i) if i.how == DIAL else [_by_the_distance(i, across)]
    low, high = Out.least(least(*plays)), Out.most(greatest(*plays))
    mean = Out.mean(sum(plays[1:], plays[0]) / len(plays))
    each = Out.each(gear_backlash.per_radius(i.step, across), sources.GEAR_DISTANCE)
    steps = _steps(i, float(low), float(high), float(mean), float(each))
    more = constant("m", "Steps of the code larger", i.code.sure_form, steps)
    take = Out.take(i.code + more)
    return Mesh(
        low,
        high,
        mean,
        Out.differs(high - low),
        each,
        take,
        Out.least_then(low - more * each),
        Out.most_then(high - more * each),
    )


def _by_the_dial(i: In) -> list[Number]:
    return [
        step(f"j_p{n}", f"Play on the pitch circle, place {n}", SIZE, row[0] * i.radius / i.dial_radius)
        for n, row in enumerate(i.readings, 1)
        if row is not None
    ]


def _by_the_distance(i: In, across: Number) -> Number:
    """As drawn, and what the distance adds; a gear larger by its code stands as one set so much nearer."""
    there = step("a_n", "Distance, the gear's code taken off", SIZE, i.distance - i.code * i.step)
    if float(there) * 1.0 <= float(i.drawn) * math.cos(float(across)) * 1.001:
        raise impossible("distance", "is {a}, at which these gears do not mesh; give more", a=i.distance)
    working = step(
        "α_w",
        "Working pressure angle",
        TENTHS_OF_DEGREE,
        gear_backlash.working_angle(i.drawn, there, across),
        sources.GEAR_DISTANCE,
    )
    gained = gear_backlash.backlash_gained(there, across, working)
    return step("j_d", "Backlash by the distance", SIZE, i.aim + gained, sources.GEAR_DISTANCE)


def _steps(i: In, low: float, high: float, mean: float, each: float) -> int:
    """Steps of the code to go up: none where the gear at hand serves; else those that bring the mean nearest
    to what is drawn, of the codes sold, the tightest place kept off its least where one can."""
    if not past(i.low, low) and not past(high, i.high):
        return 0
    code, last = round(float(i.code)), round(float(i.last))
    sold = [n - code for n in range(-last, last + 1)]
    free = [n for n in sold if not past(i.low, low - n * each)] or [min(sold)]
    return min(free, key=lambda n: (abs(mean - n * each - float(i.aim)), abs(n)))
