"""What becomes of the cam's gears where the crank is bored to another place."""

from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import Number, constant, cos, step, tan
from calc.formulas import gear_backlash
from calc.reference import sources
from calc.stations.crankcase.line_bore.asked import In
from calc.stations.crankcase.line_bore.saddles import Saddles
from calc.stations.crankcase.line_bore.size import BORE, Size
from calc.stations.crankcase.line_bore.told import Out
from calc.stations.shared.forms import FINE_DEGREES, SIZE


class Gears(NamedTuple):
    """`then` is the backlash that is left, None where none was read."""

    moved: Number
    distance: Number
    then: Number | None
    told: tuple[Number, ...]


def gears_of(i: In, saddles: Saddles, size: Size) -> Gears:
    """At the first saddle, beside the gears. Saddles that stay move nothing."""
    first = saddles.each[0]
    bar = constant("b_0", "Bar at the first saddle, to the cam", SIZE, saddles.bar.x.at(float(first.place)))
    moved = Out.moved(first.x - bar if size.state == BORE else first.x - first.x)
    distance = Out.distance(i.cam_distance + moved)
    mesh = step(
        "α_t",
        "Pressure angle across the axis",
        FINE_DEGREES,
        gear_backlash.transverse_angle(i.pressure, i.helix),
        sources.GEAR_DISTANCE,
    )
    if float(i.cam_distance) * float(cos(mesh)) >= float(distance):
        raise impossible(
            "cam_distance",
            "is {a}, and {d} less leaves the gears no mesh; give more",
            a=i.cam_distance,
            d=constant("", "", SIZE, abs(float(moved))),
        )
    working = Out.angle(gear_backlash.working_angle(i.cam_distance, distance, mesh), sources.GEAR_DISTANCE)
    more = Out.backlash_more(gear_backlash.backlash_gained(distance, mesh, working), sources.GEAR_DISTANCE)
    then = None if i.backlash is None else step("j'", "Backlash, then", SIZE, i.backlash + more)
    return Gears(
        moved,
        distance,
        then,
        (
            working,
            more,
            Out.backlash_rule(2 * moved * tan(mesh), sources.GEAR_DISTANCE),
            Out.backlash_normal(more * cos(i.pressure) * cos(i.helix), sources.GEAR_DISTANCE),
        ),
    )
