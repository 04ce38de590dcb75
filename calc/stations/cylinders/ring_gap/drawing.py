"""The ring with the least gap in its bore, from above: cold, and hot within it."""

import math

from calc.core.drawing import Drawing, Label, Line, arc
from calc.core.result import say
from calc.stations.cylinders.ring_gap.asked import In
from calc.stations.cylinders.ring_gap.ring import Rings

TIMES = 12.0  # how many times too wide gaps are drawn


def seen_from_above(i: In, rings: Rings) -> Drawing:
    """The bore's middle at 0; the cold ring outside, the hot one within it."""
    ring, r = rings.hottest, float(i.bore) / 2

    def bent(gap: float, radius: float, style: str) -> list[Line]:
        half = min(max(gap, 0.0) * TIMES / (2 * radius), 1.2)
        found = [
            Line(arc((0, 0), radius * k, math.pi / 2 + half, 2.5 * math.pi - half, 60), style)
            for k in (1, 0.95)
        ]
        for a in (math.pi / 2 + half, math.pi / 2 - half):
            ends = tuple((radius * k * math.cos(a), radius * k * math.sin(a)) for k in (0.95, 1))
            found.append(Line(ends, style))
        return found

    return Drawing(
        "The ring with the least gap",
        say("Ring seen from above in its bore: {g} between its ends cold, {h} hot.", g=ring.gap, h=ring.hot),
        (
            Line(arc((0, 0), 1.03 * r, 0, 2 * math.pi, 80), "outline"),
            *bent(float(ring.gap), r, "outline"),
            *bent(float(ring.hot), 0.8 * r, "hidden"),
            Label((0, 1.12 * r), say("cold {g}", g=ring.gap)),
            Label((0, 0.6 * r), say("hot {h}", h=ring.hot)),
            Label((0, 0), say("{n} ring", n=ring.name)),
        ),
        f"gaps drawn about {TIMES:.0f} times too wide",
    )
