"""The edge of an opening in plain numbers: for drawing, and for the step all round it."""

import math
from dataclasses import dataclass
from functools import lru_cache

from calc.core.drawing import arc
from calc.stations.heads.port_section.asked import D
from calc.stations.shared.drawings import Points


@dataclass(frozen=True)
class Section:
    """The edge of one opening, about the middle of its width and height, m."""

    shape: str
    width: float
    height: float
    radius: float = 0.0
    x: float = 0.0
    y: float = 0.0

    @lru_cache(maxsize=16)  # noqa: B019  # few, of numbers only; each is gone round twice, and drawn
    def outline(self, fine: int = 180) -> Points:
        """Points all round, counter-clockwise: so many to each quarter turn, and half as many along each
        straight side."""
        arcs = [
            arc((self.x + cx, self.y + cy), radius, start * math.pi, end * math.pi, fine if radius else 1)
            for (cx, cy), radius, start, end in self._turns()
        ]
        points: list[tuple[float, float]] = []
        for turn, after in zip(arcs, (*arcs[1:], arcs[0])):
            (ax, ay), (bx, by) = turn[-1], after[0]
            points += turn
            if math.hypot(bx - ax, by - ay) > 1e-9:
                points += [
                    (ax + (bx - ax) * i / (fine // 2), ay + (by - ay) * i / (fine // 2))
                    for i in range(1, fine // 2)
                ]
        return tuple(points)

    def _turns(self) -> tuple[tuple[tuple[float, float], float, float, float], ...]:
        """Its four round corners, counter-clockwise: the middle of each from that of the opening, its radius,
        and the angles between which it turns, in half turns."""
        w, h, r = self.width / 2, self.height / 2, self.radius
        if self.shape == D:
            return (
                ((w - r, r - h), r, -0.5, 0.0),
                ((0.0, h - w), w, 0.0, 0.5),
                ((0.0, h - w), w, 0.5, 1.0),
                ((r - w, r - h), r, 1.0, 1.5),
            )
        s = min(w, h)
        middles = ((w - s, h - s), (s - w, h - s), (s - w, s - h), (w - s, s - h))
        return tuple((middle, s, i / 2, i / 2 + 0.5) for i, middle in enumerate(middles))

    def depths(self, points: Points) -> list[float]:
        """How far each point lies within the edge, m; negative outside."""
        w, h, r = self.width / 2, self.height / 2, self.radius
        middle, level = self.x, self.y
        if self.shape != D:
            s = min(w, h)
            along, up = w - s, h - s
            return [
                s
                - math.hypot(
                    dx if (dx := abs(x - middle) - along) > 0 else 0.0,
                    dy if (dy := abs(y - level) - up) > 0 else 0.0,
                )
                for x, y in points
            ]

        def depth(x: float, y: float) -> float:
            if y >= h - w:
                return w - math.hypot(x, y - (h - w))
            if x > w - r and y < r - h:
                return r - math.hypot(x - (w - r), y - (r - h))
            return min(w - x, y + h)

        return [depth(abs(x - middle), y - level) for x, y in points]

    def stands_in(self, other: "Section") -> float:
        """How far this edge stands within the opening of the other at the worst place, m, to the nanometre; 0
        where it nowhere does."""
        return round(max(0.0, *other.depths(self.outline())), 9)
