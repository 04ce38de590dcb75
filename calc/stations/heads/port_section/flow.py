"""Areas, and how fast the gas goes through the port."""

from typing import NamedTuple

from calc.core.working import PI, Number
from calc.reference import sources
from calc.stations.heads.port_section.asked import In
from calc.stations.heads.port_section.openings import Opening
from calc.stations.heads.port_section.told import Out


class Flow(NamedTuple):
    area: Number
    manifold_area: Number
    perimeter: Number
    piston_speed: Number
    swept: Number
    speed: Number


def flow_of(i: In, port: Opening, manifold: Opening) -> Flow:
    """Mean over one stroke of one cylinder, that of the piston times the ratio of the areas."""
    area = Out.area(port.area, sources.PORT_PLANE)
    manifold_area = Out.manifold_area(manifold.area, sources.PORT_PLANE)
    perimeter = Out.perimeter(port.perimeter, sources.PORT_PLANE)
    piston_speed = Out.piston_speed(2 * i.stroke * i.engine_speed)
    swept = Out.swept(PI / 4 * i.bore**2 * i.stroke)
    speed = Out.speed(2 * i.engine_speed * swept / area, sources.CONTINUITY)
    return Flow(area, manifold_area, perimeter, piston_speed, swept, speed)
