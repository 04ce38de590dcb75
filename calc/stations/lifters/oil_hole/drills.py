"""What other drills would do in the hole's place."""

from typing import NamedTuple

from calc.core.drawing import Axis, Plot, Series
from calc.core.result import Table, Text, say
from calc.core.working import constant
from calc.formulas import small_hole
from calc.stations.lifters.oil_hole.asked import In
from calc.stations.lifters.oil_hole.feed import Feed
from calc.stations.lifters.oil_hole.told import FLOWS, MILLIS, TENTH_SHARE
from calc.stations.shared.forms import COARSE, SECONDS

HOLES = (0.5e-3, 0.8e-3, 1.0e-3, 1.2e-3, 1.5e-3, 2.0e-3)  # m: drills at hand


class Drilled(NamedTuple):
    """What a hole would do: flow (m³/s), share of the time used, running until an empty one is full (s)."""

    flow: float
    used: float
    until_full: float


class Drills:
    """Other holes in the same lifter: nothing else is changed."""

    def __init__(self, i: In, feed: Feed):
        self.i, self.feed = i, feed

    def with_hole(self, diameter: float) -> Drilled:
        i, feed = self.i, self.feed
        by_wall = small_hole.wall_flow(diameter, float(i.wall), float(feed.viscosity), float(i.pressure))
        by_edge = small_hole.edge_flow(diameter, float(feed.density), float(i.pressure), float(i.discharge))
        flow = float(small_hole.flow(by_wall, by_edge))
        used = float(feed.lost) / flow / float(feed.window)
        return Drilled(flow, used, float(feed.running) * float(feed.flow) / flow)

    def serves(self, diameter: float) -> bool:
        _, used, until_full = self.with_hole(diameter)
        return (
            used <= float(self.i.most_share)
            and until_full <= float(self.i.most_running)
            and diameter < float(self.i.groove)
        )

    def advice(self) -> Text | str:
        """Which of them to take: the smallest that serves, but below a hole that is too wide the largest."""
        best, which = (max, "largest") if self.i.hole >= self.i.groove else (min, "smallest")
        fitting = [diameter for diameter in HOLES if self.serves(diameter)]
        if not fitting:
            return "No usual drill serves: more oil pressure, or less leak at the plunger."
        return say(
            f"Of the usual drills {{d}} is the {which} that serves.",
            d=constant("", "", COARSE, best(fitting)),
        )

    def table(self) -> Table:
        rows, states = [], []
        shapes = COARSE, FLOWS, TENTH_SHARE, SECONDS
        for diameter in HOLES:
            drilled = self.with_hole(diameter)
            rows.append(tuple(constant("", "", shape, x) for shape, x in zip(shapes, (diameter, *drilled))))
            states.append("pass" if self.serves(diameter) else "fail" if drilled.used > 1 else "attention")
        return Table(
            "Other drills",
            ("Hole", "Flow", "Share of the time", "Until an empty one is full"),
            tuple(rows),
            tuple(states),
        )

    def plot(self) -> Plot:
        """Time to fill over the hole's diameter."""
        hole, fill, window = float(self.i.hole), self.feed.fill, self.feed.window
        sizes = [hole * (0.6 + 0.05 * n) for n in range(21)]
        return Plot(
            "Time to fill against the hole",
            say("{t} for this hole, out of {w}.", t=fill, w=window),
            Axis("Hole", COARSE),
            Axis("Time to fill", MILLIS),
            (Series("", tuple((d, self.with_hole(d).used * float(window)) for d in sizes)),),
            ((hole, float(fill), "this one"),),
        )
