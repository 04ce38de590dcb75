"""How near to an edge the hole may lie."""

from calc.core.result import impossible
from calc.core.working import Number
from calc.reference import sources
from calc.stations.threads.sheet_insert.asked import CLINCH, COLLAR, RIVET, SCREW, In
from calc.stations.threads.sheet_insert.made import Made
from calc.stations.threads.sheet_insert.told import Out

# Centre to edge over hole, hole and collar's outside, common practice, no source; over a screw (AISI S100).
EDGE = {RIVET: 1.5, CLINCH: 1.3, COLLAR: 1.5, SCREW: 1.5}


def edge_least(i: In, made: Made) -> Number:
    edge = Out.edge_least(
        EDGE[i.way] * (made.across if i.way in (COLLAR, SCREW) else made.hole),
        sources.AISI_S100 if i.way == SCREW else sources.PRACTICE,
    )
    if i.edge <= made.across / 2:
        raise impossible(
            "edge", "is {e}, and what sits in the hole is {a} across; give more", e=i.edge, a=made.across
        )
    return edge
