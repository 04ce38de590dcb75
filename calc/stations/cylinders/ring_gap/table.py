"""Ring by ring: gaps cold and hot, and the clearance in the groove."""

from calc.core.result import Table
from calc.stations.cylinders.ring_gap.ring import Rings


def ring_by_ring(rings: Rings) -> Table:
    return Table(
        "Ring by ring",
        ("Ring", "Gap, bore smallest", "Gap, bore worn", "Gap hot", "Side clearance"),
        tuple((r.name, r.gap, r.top, r.hot, "–" if r.side is None else r.side) for r in rings.each),
    )
