"""The step where port and manifold meet, all round the edge and on each side."""

from typing import NamedTuple

from calc.core.working import Number, constant
from calc.reference import sources
from calc.stations.heads.port_section.asked import INTAKE, In
from calc.stations.heads.port_section.edge import Section
from calc.stations.heads.port_section.openings import Opening
from calc.stations.heads.port_section.told import Out
from calc.stations.shared.forms import COARSE


class Joint(NamedTuple):
    port: Section
    manifold: Section
    facing: Number  # largest step that faces the flow
    drop: Number  # largest step that falls away from it
    sides: tuple[
        tuple[str, float], ...
    ]  # how much wider the second opening is, m; minus where it faces the flow


def joint_of(i: In, port: Opening, manifold: Opening) -> Joint:
    """Gas goes from the first opening into the second: in an intake from the manifold into the port."""
    port_edge, manifold_edge = port.edge(), manifold.edge(float(i.aside), float(i.above))
    first, second = (manifold_edge, port_edge) if i.valve == INTAKE else (port_edge, manifold_edge)
    facing = Out.facing(
        constant(
            "f_0",
            "Farthest that the second edge stands in the first opening",
            COARSE,
            second.stands_in(first),
            sources.PORT_PLANE,
        )
    )
    drop = Out.drop(
        constant(
            "o_0",
            "Farthest that the first edge stands in the second opening",
            COARSE,
            first.stands_in(second),
            sources.PORT_PLANE,
        )
    )
    return Joint(port_edge, manifold_edge, facing, drop, _sides(i, port_edge, manifold_edge))


def _sides(i: In, port: Section, manifold: Section) -> tuple[tuple[str, float], ...]:
    way = -1 if i.valve == INTAKE else 1
    wider, taller = (manifold.width - port.width) / 2, (manifold.height - port.height) / 2
    return (
        ("top", way * (taller + manifold.y)),
        ("bottom", way * (taller - manifold.y)),
        ("left", way * (wider - manifold.x)),
        ("right", way * (wider + manifold.x)),
    )
