"""How near to an edge the hole may lie. All of it is common practice, no source."""

from typing import NamedTuple

from calc.core.working import Number, greatest, step
from calc.reference import sources
from calc.stations.shared.forms import COARSE
from calc.stations.threads.insert_install.asked import In
from calc.stations.threads.insert_install.hole import Hole
from calc.stations.threads.insert_install.told import Out

LIGHT = ("mg-az91", "al-si-t6", "al-si-cu-t6")
SOFT_EDGE, SOFT_EDGE_WISHED = 1.5, 2.0  # × the stud's diameter in light metal
HARD_EDGE = 1.0  # × the insert's outside anywhere


class Edge(NamedTuple):
    """From the hole's centre."""

    least: Number
    wished: Number


def edge_of(i: In, hole: Hole) -> Edge:
    soft = i.parent in LIGHT
    least = Out.edge_least(
        greatest(HARD_EDGE * hole.major, SOFT_EDGE * hole.nominal) if soft else HARD_EDGE * hole.major,
        sources.PRACTICE,
    )
    wished = step(
        "e_w",
        "Centre to edge, better",
        COARSE,
        greatest(HARD_EDGE * hole.major, SOFT_EDGE_WISHED * hole.nominal) if soft else least,
        sources.PRACTICE,
    )
    return Edge(least, wished)
