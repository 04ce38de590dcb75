"""How much oil a hole lets in, and how long it takes to make up what the plunger has lost."""

import math
from typing import NamedTuple

from calc.core.kinds import AREA, VOLUME
from calc.core.working import Number, constant, form, step
from calc.formulas import annular_gap, small_hole
from calc.reference import sources
from calc.stations.lifters.oil_hole.asked import In
from calc.stations.lifters.oil_hole.told import FLOWS, Out
from calc.stations.shared.forms import DEGREES
from calc.stations.shared.oil_at import DataSheet, oil_at

FULL_TURN, CYCLE = (constant("", "", DEGREES, turns * 2 * math.pi) for turns in (1, 2))


class Feed(NamedTuple):
    """What comes through the hole, and what that means to the lifter.

    `lost` is the oil that leaks in one opening of the valve, `fill` the time that it takes to make it up, and
    `window` the time that there is, of which that is the `share`; `running` goes until an empty one is full.
    """

    viscosity: Number
    density: Number
    flow: Number
    wall_share: Number
    reynolds: Number
    lost: Number
    fill: Number
    window: Number
    share: Number
    running: Number


def feed_of(i: In) -> Feed:
    _, viscosity, density = oil_at(
        i.oil,
        i.oil_temperature,
        DataSheet(i.cool_temperature, i.cool_viscosity, i.warm_temperature, i.warm_viscosity),
        i.density,
        Out.viscosity,
    )
    by_wall = step(
        "Q_w",
        "Flow that the wall alone would let through",
        FLOWS,
        small_hole.wall_flow(i.hole, i.wall, viscosity, i.pressure),
        sources.HAGEN_POISEUILLE,
    )
    by_edge = step(
        "Q_e",
        "Flow that the edge alone would let through",
        FLOWS,
        small_hole.edge_flow(i.hole, density, i.pressure, i.discharge),
        sources.HOLE_LOSS,
    )
    flow = Out.flow(small_hole.flow(by_wall, by_edge), sources.HOLE_LOSS)
    wall_share = Out.wall_share(flow / by_wall)
    reynolds = Out.reynolds(small_hole.reynolds(flow, i.hole, density, viscosity))
    area = step("A", "Area of the plunger", form(AREA, 1), annular_gap.plunger_area(i.plunger))
    lost = step("V", "Oil lost in one opening", form(VOLUME, 5), area * i.sink)
    fill = Out.fill_time(lost / flow)
    window = Out.window(i.meeting / FULL_TURN / i.speed)
    share = Out.share(fill / window)
    running = Out.running_time(i.empty / flow * (CYCLE / i.meeting))
    return Feed(viscosity, density, flow, wall_share, reynolds, lost, fill, window, share, running)
