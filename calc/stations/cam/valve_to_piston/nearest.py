"""Where the valve comes nearest to the piston, and how near, along the valve."""

import math
from typing import NamedTuple

from calc.core.kinds import LIFT_ACCELERATION, LIFT_VELOCITY
from calc.core.result import impossible
from calc.core.working import Number, Value, constant, cos, form, sin, sqrt, step
from calc.formulas.lobe import least_between, lift_at
from calc.reference import sources
from calc.stations.cam.valve_to_piston.asked import CLAY, DIAL, In
from calc.stations.cam.valve_to_piston.told import Out
from calc.stations.shared.forms import COARSE, TENTHS_OF_DEGREE

RANGE = math.radians(100)  # either side of top dead centre: beyond it the piston is half a stroke away
DEGREE = math.radians(1)
_SLOPE, _BEND = form(LIFT_VELOCITY, 4), form(LIFT_ACCELERATION, 5)


class Nearest(NamedTuple):
    """What is left along the valve as assembled and when running, and at which crank angle it is least; None
    where clay was laid, which does not tell it."""

    least: Number
    taken: Number
    running: Number
    angle: Number | None
    degree: float  # what a cam timed one degree nearer takes, m; 0 where readings were taken
    last_row: bool  # the least of a row of readings is its first or last one


def piston_below_top(throw: Value, rod: Value, angle: Value) -> Value:
    """How far the piston stands below top dead centre, m: slider-crank without offset. rod > throw."""
    return throw * (1 - cos(angle)) + rod - sqrt(rod**2 - (throw * sin(angle)) ** 2)


class Train(NamedTuple):
    """What the way left hangs on, as plain or traced values, SI."""

    way: Value
    throw: Value
    rod: Value
    lean: Value
    lobe: Value
    flank: Value
    centre: Value  # the lobe's middle, crank after top dead centre
    ratio: Value
    lash: Value


def opening(law: str, train: Train, angle: Value) -> Value:
    """How far the valve stands open at a crank angle, m."""
    lifted = lift_at(law, train.lobe, train.flank, (angle - train.centre) / 2) * train.ratio - train.lash
    return lifted if float(lifted) > 0 else 0 * train.lash


def way_left(law: str, train: Train, angle: Value) -> Value:
    """Way left along the valve at a crank angle, m."""
    down = piston_below_top(train.throw, train.rod, angle)
    return train.way + down / cos(train.lean) - opening(law, train, angle)


def angle_of_least(law: str, train: Train) -> float:
    """Crank angle after top dead centre at which the way left is least, rad; `train` of floats."""
    return least_between(lambda angle: float(way_left(law, train, angle)), -RANGE, RANGE)


def train_of(i: In) -> Train:
    """The lobe's middle lies after top dead centre for the intake valve, before it for the exhaust."""
    side = 1 if i.valve == "intake" else -1
    middle = step("C_s", "Lobe's middle, crank after top dead centre", TENTHS_OF_DEGREE, side * i.centre)
    return Train(i.way, i.throw, i.rod, i.lean, i.lobe_lift, i.flank, middle, i.ratio, i.lash_read)


def plain(train: Train) -> Train:
    return Train(*map(float, train))


def nearest(i: In) -> Nearest:
    angle, degree, last = None, 0.0, False
    if i.how == CLAY:
        least = i.clay / cos(i.lean)
    elif i.how == DIAL:
        rows = read_rows(i)
        last = lowest(rows) in (0, len(rows) - 1)
        least, angle = _of_the_row(rows)
    else:
        least, angle, degree = _of_the_lobe(i)
    told = Out.least(least, sources.NEAREST)
    taken = Out.taken(i.lash_read + i.adds)
    return Nearest(told, taken, Out.running(told - taken), angle, degree, last)


def _of_the_lobe(i: In) -> tuple[Number, Number, float]:
    if i.rod <= i.throw:
        raise impossible("rod", "is {l}, no longer than the throw, {r}; give more", l=i.rod, r=i.throw)
    train = train_of(i)
    floats = plain(train)
    found = angle_of_least(i.law, floats)
    angle = constant("θ_min", "Crank where it is least, by search", TENTHS_OF_DEGREE, found)
    down = step(
        "x_p",
        "Piston below its top there",
        COARSE,
        piston_below_top(i.throw, i.rod, angle),
        sources.SLIDER_CRANK,
    )
    lifted = step("L_v", "Valve open there by", COARSE, opening(i.law, train, angle), sources.LOBE_LAWS)
    toward = math.copysign(DEGREE, -floats.centre)
    nearer = floats._replace(centre=floats.centre + toward)
    degree = float(way_left(i.law, floats, found)) - float(
        way_left(i.law, nearer, angle_of_least(i.law, nearer))
    )
    return i.way + down / cos(i.lean) - lifted, angle, degree


def read_rows(i: In) -> list[tuple[Number, Number]]:
    rows = [(n, row) for n, row in enumerate(i.ways, 1) if row is not None]
    for (_, before), (n, after) in zip(rows, rows[1:]):
        if after[0] <= before[0]:
            raise impossible(
                f"ways.{n}.1",
                "is {b}, not after the angle above it, {a}; write the angles in rising order",
                a=before[0],
                b=after[0],
            )
    return [(row[0], row[1]) for _, row in rows]


def lowest(rows: list[tuple[Number, Number]]) -> int:
    """Which of the readings is the least, counted from 0."""
    return min(range(len(rows)), key=lambda n: float(rows[n][1]))


def _of_the_row(rows: list[tuple[Number, Number]]) -> tuple[Number, Number]:
    """Lowest point of the parabola through the least reading and its neighbours; the least reading itself
    where it stands at an end."""
    n = lowest(rows)
    if n in (0, len(rows) - 1):
        return rows[n][1], rows[n][0]
    (a, u), (b, v), (c, w) = rows[n - 1 : n + 2]
    first = step("k_1", "Change of the way before the least reading", _SLOPE, (v - u) / (b - a))
    second = step("k_2", "Change of it after", _SLOPE, (w - v) / (c - b))
    bend = step("k", "How fast that turns", _BEND, (second - first) / (c - a))
    if float(bend) <= 0:  # three alike readings
        return v, b
    angle = step(
        "θ_min",
        "Crank where it is least",
        TENTHS_OF_DEGREE,
        (a + b) / 2 - first / (2 * bend),
        sources.PARABOLA,
    )
    return u + first * (angle - a) + bend * (angle - a) * (angle - b), angle
