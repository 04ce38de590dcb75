"""How deep a drill must go to take out an unbalance: a cylinder and the cone of its point."""

from typing import NamedTuple

from calc.core.kinds import DENSITY
from calc.core.result import impossible
from calc.core.working import PI, Number, constant, form, sqrt, step, tan
from calc.reference import sources
from calc.reference.materials import MATERIALS
from calc.stations.flywheel.balance.asked import RIM, In
from calc.stations.flywheel.grade import MOMENT
from calc.stations.shared.forms import COARSE, SECTION

AGAIN = 3  # turns of the point's own sum, in which its depth moves its radius: settled to a part in a million


class Drill(NamedTuple):
    """Its section (m²), the height of its point (m), and the metal's density (kg/m³)."""

    section: Number
    height: Number
    density: Number


class Hole(NamedTuple):
    """Mass taken out (kg), depth of the full diameter and to the tip (m)."""

    mass: Number
    shoulder: Number
    tip: Number


def drill_of(i: In) -> Drill:
    return Drill(
        step("A", "Section of the drill", SECTION, PI / 4 * i.drill**2),
        step("h_p", "Height of its point", COARSE, i.drill / (2 * tan(i.point / 2))),
        constant("ρ", "Density", form(DENSITY, 0), MATERIALS[i.material].density),
    )


def hole_of(i: In, drill: Drill, moment: Number) -> Hole:
    """The hole that takes out `moment` (kg·m) with its mouth at the radius R. In a rim each slice further in
    sits at a smaller radius, ∫ρA(R − x)dx; in a face all sit at R. The rim counts as flat over the drill."""
    A, h, rho, R = drill.section, drill.height, drill.density, i.radius
    rim = i.how == RIM
    of_point = step(
        "U_p",
        "Taken out by the point",
        MOMENT,
        rho * A * h / 3 * ((R - h / 4) if rim else R),
        sources.DRILLED,
    )
    if float(moment) <= float(of_point):
        return _point_alone(i, drill, moment)
    if not rim:
        shoulder = step("s", "Depth to the shoulder", COARSE, moment / (rho * A * R) - h / 3, sources.DRILLED)
        return Hole(moment / R, shoulder, shoulder + h)
    reach = step("r_p", "Rim's radius less a third of the point", COARSE, R - h / 3)
    under = reach**2 - 2 * (moment - of_point) / (rho * A)
    if float(under) <= 0 or float(reach - sqrt(under) + h) >= float(R):
        raise impossible(
            "drill",
            "is {D}, so that the hole would reach the axis before it takes out enough; give a larger one",
            D=i.drill,
        )
    shoulder = step("s", "Depth to the shoulder", COARSE, reach - sqrt(under), sources.DRILLED)
    return Hole(rho * A * (shoulder + h / 3), shoulder, shoulder + h)


def _point_alone(i: In, drill: Drill, moment: Number) -> Hole:
    """So little that the point does not go in to its full diameter."""
    tip, slender = constant("z", "Depth", COARSE, 0.0), PI / 3 * tan(i.point / 2) ** 2
    for _ in range(AGAIN):
        radius = i.radius - tip / 4 if i.how == RIM else i.radius
        tip = (moment / (drill.density * slender * radius)) ** (1 / 3)
    return Hole(drill.density * slender * tip**3, constant("", "", COARSE, 0.0), tip)
