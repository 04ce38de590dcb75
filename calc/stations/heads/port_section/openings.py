"""Port and manifold as two openings: their shapes and sizes."""

import math
from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import PI, Number, Value, constant, least
from calc.formulas.sections import d_area, d_perimeter, oval_area, oval_perimeter
from calc.stations.heads.port_section.asked import OVAL, ROUND, SAME, D, In
from calc.stations.heads.port_section.edge import Section
from calc.stations.shared.forms import COARSE


class Opening(NamedTuple):
    shape: str
    width: Number
    height: Number  # of a round one: its width
    corner: Number  # counts only for a D

    @property
    def area(self) -> Value:
        if self.shape == ROUND:
            return PI / 4 * self.width**2
        if self.shape == OVAL:
            return oval_area(self.width, self.height)
        return d_area(self.width, self.height, self.corner)

    @property
    def perimeter(self) -> Value:
        if self.shape == ROUND:
            return PI * self.width
        if self.shape == OVAL:
            return oval_perimeter(self.width, self.height)
        return d_perimeter(self.width, self.height, self.corner)

    def edge(self, x: float = 0.0, y: float = 0.0) -> Section:
        """With its middle at a place, m."""
        corner = float(self.corner) if self.shape == D else 0.0
        return Section(self.shape, float(self.width), float(self.height), corner, x, y)


def openings_of(i: In) -> tuple[Opening, Opening]:
    """Port and manifold; a D whose sizes do not go together is refused."""
    kind = i.shape if i.manifold_shape == SAME else i.manifold_shape
    port = Opening(i.shape, i.width, i.width if i.shape == ROUND else i.height, i.corner)
    manifold = Opening(
        kind, i.manifold_width, i.manifold_width if kind == ROUND else i.manifold_height, i.corner
    )
    _check_d(port, "height")
    _check_d(manifold, "manifold_height")
    return port, manifold


def _check_d(opening: Opening, field: str) -> None:
    """`field` is the input to blame for its height."""
    shape, w, h, corner = opening
    if shape != D:
        return
    if h < w / 2:
        raise impossible(
            field,
            "is {h}, less than the half-round roof takes of a D {w} wide; give half of the width or"
            " more, or choose the oval",
            h=h,
            w=w,
        )
    if corner > least(w / 2, h - w / 2):
        most = math.floor(min(float(w) / 2, float(h) - float(w) / 2) * 1e5) / 1e5
        raise impossible(
            "corner",
            "is {r}, more than the straight sides of a D {w} wide and {h} high leave; give {most} or less",
            r=corner,
            w=w,
            h=h,
            most=constant("", "", COARSE, most),
        )


def check_offsets(i: In, port: Opening, manifold: Opening) -> None:
    """The two must meet over half of the smaller at least."""
    for name, off, a, b in (
        ("aside", i.aside, port.width, manifold.width),
        ("above", i.above, port.height, manifold.height),
    ):
        half = min(float(a), float(b)) / 2
        if abs(float(off)) >= half:
            raise impossible(
                name,
                "is {off}, so that the two hardly meet; give less than half of the smaller, {half}",
                off=off,
                half=constant("", "", COARSE, half),
            )
