"""Outlines of valve, seat, ring and head, right of the axis: x to the right, y up from the ring's face."""

import math
from dataclasses import dataclass

from calc.core.drawing import clip
from calc.core.working import Number
from calc.stations.heads.seat_cut.asked import In
from calc.stations.heads.seat_cut.cuts import Cuts
from calc.stations.heads.seat_cut.seated import Seated
from calc.stations.shared.drawings import Points


def section_of(i: In, cuts: Cuts, valve: Seated, valve_inner: Number) -> "Section":
    """The seat as cut, with the valve on it."""
    return Section(
        valve=float(i.valve_head),
        valve_inner=float(valve_inner),
        valve_angle=float(i.valve_angle),
        valve_depth=float(valve.valve_depth),
        margin=float(valve.margin_left),
        outer=float(cuts.outer),
        inner=float(cuts.inner),
        depth=float(cuts.depth),
        inner_depth=float(cuts.inner_depth),
        upper_angle=float(i.upper_angle),
        throat_angle=float(i.throat_angle),
        ring=float(i.ring_outside),
        bore=float(i.ring_bore),
        height=float(i.ring_height),
    )


@dataclass(frozen=True)
class Section:
    """Diameters, depths below the ring's face, m; angles, radians."""

    valve: float
    valve_inner: float
    valve_angle: float
    valve_depth: float
    margin: float
    outer: float
    inner: float
    depth: float
    inner_depth: float
    upper_angle: float
    throat_angle: float
    ring: float
    bore: float
    height: float

    def ring_half(self) -> Points:
        """The ring on the right of the axis, cut by the three cones."""
        far, deep = self.ring, 2 * self.height
        return clip(
            (
                (far, (far - self.outer / 2) * math.tan(self.upper_angle) - self.depth),
                (self.outer / 2, -self.depth),
                (self.inner / 2, -self.inner_depth),
                (self.inner / 2 - (deep - self.inner_depth) / math.tan(self.throat_angle), -deep),
                (far, -deep),
            ),
            self.bore / 2,
            -self.height,
            self.ring / 2,
            0.0,
        )

    def valve_half(self) -> Points:
        """The valve on the right of the axis, from the middle of its head round to the middle of its stem."""
        stem = self.valve * 0.11
        low = -self.valve_depth - (self.valve - self.valve_inner) / 2 * math.tan(self.valve_angle)
        neck = low - (self.valve_inner / 2 - 1.6 * stem) * math.tan(math.radians(20))
        foot = min(neck - 2 * stem, -1.3 * self.height)
        return (
            (0, self.margin - self.valve_depth),
            (self.valve / 2, self.margin - self.valve_depth),
            (self.valve / 2, -self.valve_depth),
            (self.valve_inner / 2, low),
            (max(1.6 * stem, 0), neck),
            (stem, neck - stem),
            (stem, foot),
            (0, foot),
        )

    def head_half(self, wide: float) -> Points:
        """The head round the ring's pocket."""
        return (
            (self.ring / 2, 0),
            (self.ring / 2 + wide, 0),
            (self.ring / 2 + wide, -1.5 * self.height),
            (self.bore / 2, -1.5 * self.height),
            (self.bore / 2, -self.height),
            (self.ring / 2, -self.height),
        )

    @property
    def band(self) -> Points:
        return ((self.inner / 2, -self.inner_depth), (self.outer / 2, -self.depth))

    def beside_cuts(self, margin: float) -> Points:
        """Places in the ring beside the middle of each cut."""
        tops = (
            (min(self.outer + 2 * self.depth / math.tan(self.upper_angle), self.ring) / 2, 0.0),
            (self.outer / 2, -self.depth),
            (self.inner / 2, -self.inner_depth),
            (self.bore / 2, -self.inner_depth - (self.inner - self.bore) / 2 * math.tan(self.throat_angle)),
        )
        return tuple(
            ((a[0] + b[0]) / 2 + margin * 0.3, (a[1] + b[1]) / 2 - margin * 0.35)
            for a, b in zip(tops, tops[1:])
        )
