"""Curtain and throat, and how near to sound the air past the valve comes."""

from typing import NamedTuple

from calc.core.kinds import SPECIFIC_HEAT
from calc.core.result import impossible
from calc.core.working import PI, Number, constant, form, least, sqrt, step
from calc.formulas import valve_curtain
from calc.formulas.leak import AIR_CONSTANT
from calc.reference import sources
from calc.stations.heads.valve_flow_area.asked import In
from calc.stations.heads.valve_flow_area.told import METRES, Out
from calc.stations.shared.forms import COARSE, TIMES

KAPPA = constant("κ", "Ratio of the specific heats of air", TIMES, 1.4, sources.SOUND)
AIR = constant("R", "Gas constant of air", form(SPECIFIC_HEAT, 1), AIR_CONSTANT, sources.SOUND)


class Flow(NamedTuple):
    """`width` is the seat's, seen along the stem."""

    width: Number
    first_stage: Number
    curtain: Number
    throat_area: Number
    free: Number
    crossover: Number
    opened: Number
    piston_speed: Number
    mach: Number
    speed_limit: Number


def past_the_valve(i: In) -> Flow:
    """Raises where valve, seat, throat and stem are not each smaller than the one before."""
    _refuse_what_does_not_go_through(i)
    width = step("w", "Seat seen along the stem", COARSE, (i.valve_head - i.seat_inner) / 2)
    first = Out.first_stage(valve_curtain.first_stage_lift(width, i.seat_angle), sources.CURTAIN)
    curtain = Out.curtain(valve_curtain.curtain(i.lift, i.valve_head, width, i.seat_angle), sources.CURTAIN)
    throat_area = Out.throat_area(PI / 4 * (i.throat**2 - i.stem**2), sources.CURTAIN)
    free = Out.free(least(curtain, throat_area))
    crossover = Out.crossover(
        valve_curtain.crossover_lift(throat_area, i.valve_head, width, i.seat_angle), sources.CURTAIN
    )
    opened = Out.opened(free / throat_area)
    piston_speed = Out.piston_speed(2 * i.stroke * i.engine_speed)
    sound = step("a", "Speed of sound in that air", METRES, sqrt(KAPPA * AIR * i.temperature), sources.SOUND)
    mach = Out.mach(
        (i.bore / i.valve_head) ** 2 * piston_speed / (i.flow_coefficient * sound), sources.MACH_INDEX
    )
    speed_limit = Out.speed_limit(i.engine_speed * i.most_mach / mach)
    return Flow(width, first, curtain, throat_area, free, crossover, opened, piston_speed, mach, speed_limit)


def _refuse_what_does_not_go_through(i: In) -> None:
    if i.seat_inner >= i.valve_head:
        raise impossible(
            "seat_inner",
            "is {i}, not smaller than the valve head, {v}, so that the valve falls through; give less"
            " than {v}",
            i=i.seat_inner,
            v=i.valve_head,
        )
    if i.throat > i.seat_inner:
        raise impossible(
            "throat",
            "is {t}, wider than the seat's inner edge, {i}, and the narrowest place counts; give {i} or less",
            t=i.throat,
            i=i.seat_inner,
        )
    if i.stem >= i.throat:
        raise impossible(
            "stem", "is {s}, not smaller than the throat, {t}; give less than {t}", s=i.stem, t=i.throat
        )
