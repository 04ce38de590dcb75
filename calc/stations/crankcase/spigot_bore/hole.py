"""The hole that the new cylinders want, the metal that it leaves, and its clearance cold and running."""

from typing import NamedTuple

from calc.core.conformance import past
from calc.core.result import impossible
from calc.core.working import Number, constant, sqrt, step
from calc.reference import sources
from calc.reference.materials import MATERIALS
from calc.stations.crankcase.spigot_bore.asked import CIRCLE, In
from calc.stations.crankcase.spigot_bore.told import Out
from calc.stations.shared.forms import COARSE, SIZE
from calc.stations.shared.growth import growth, reference_temperature
from calc.stations.shared.own_material import own_grade


class Hole(NamedTuple):
    """`low` and `high` are what any of the new cylinders fits; no hole fits all where they are crossed.
    `small` and `large` are the holes that the clearances are of: as bored, else as they would be."""

    low: Number
    high: Number
    small: Number
    large: Number
    reach: Number
    wall: Number
    land: Number
    told: tuple[Number, ...]
    cold: tuple[Number, Number]
    hot: tuple[Number, Number, Number]
    bored: bool
    fits_all: bool


def hole_of(i: In) -> Hole:
    low = Out.bore_least(i.register_large + i.clearance_low)
    high = Out.bore_most(i.register_small + i.clearance_high)
    fits_all = not past(low, high)
    bored = i.bored_small is not None and i.bored_large is not None
    small, large = _sizes(i, low, high, fits_all)
    if bored and past(i.register_large, small):
        raise impossible(
            "bored_small",
            "is {D}, smaller than the largest register, {d}; give what was bored, or leave both holes empty",
            D=small,
            d=i.register_large,
        )
    reach = step(
        "r", "From the hole's middle to a stud hole's edge", COARSE, _to_stud(i), sources.SPIGOT_WALL
    )
    wall = Out.wall(reach - large / 2, sources.SPIGOT_WALL)
    land = Out.land(i.spacing - large)
    for metal, field, words in ((wall, "stud_hole", "the stud holes"), (land, "spacing", "the next hole")):
        if not past(metal, 0.0):
            raise impossible(
                field,
                "leaves no metal between a hole of {D} and " + words + "; give what is read on this case",
                D=large,
            )
    cold = Out.cold_least(small - i.register_large), Out.cold_most(large - i.register_small)
    land_least = constant("l_a", "Land allowed", COARSE, 0.0) if i.land_least is None else i.land_least
    told = (
        Out.largest(2 * (reach - i.wall_least)),
        Out.largest_land(i.spacing - land_least),
        Out.stock((large - i.old_bore) / 2),
    )
    return Hole(
        low, high, small, large, reach, wall, land, told, cold, _hot(i, small, large), bored, fits_all
    )


def _sizes(i: In, low: Number, high: Number, fits_all: bool) -> tuple[Number, Number]:
    if i.bored_small is not None and i.bored_large is not None:
        return i.bored_small, i.bored_large
    if fits_all:
        return low, high
    # each hole to its own cylinder: the widest is that of the largest register
    return low, step("D_L", "Hole for the largest register, most", SIZE, i.register_large + i.clearance_high)


def _to_stud(i: In) -> Number:
    if i.pattern == CIRCLE:
        return i.stud_circle / 2 - i.stud_hole / 2
    return sqrt((i.stud_along / 2) ** 2 + (i.stud_up / 2) ** 2) - i.stud_hole / 2


def _hot(i: In, small: Number, large: Number) -> tuple[Number, Number, Number]:
    """Running, least and most; and least while the case is still cool."""
    case, foot = (own_grade(MATERIALS[id], row) for id, row in zip((i.case_material, i.foot_material), i.own))
    reference = reference_temperature()
    hole = growth(case, i.case_temperature, reference, "c", "case", "case_temperature")
    cool = growth(case, i.case_warming, reference, "w", "case, still cool", "case_warming")
    register = growth(foot, i.foot_temperature, reference, "f", "cylinder's foot", "foot_temperature")
    return (
        Out.hot_least(small * (1 + hole) - i.register_large * (1 + register), sources.THERMAL),
        Out.hot_most(large * (1 + hole) - i.register_small * (1 + register), sources.THERMAL),
        Out.warm_least(small * (1 + cool) - i.register_large * (1 + register), sources.THERMAL),
    )
