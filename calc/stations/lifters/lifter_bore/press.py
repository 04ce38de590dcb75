"""What pressing the unit in does to unit and body: pressure, stress, and what of the clearances is left."""

from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import Number, constant, greatest, step
from calc.formulas import press_fit as fit
from calc.reference import sources
from calc.reference.materials import REFERENCE, Material
from calc.stations.lifters.lifter_bore.asked import PRESS, In
from calc.stations.lifters.lifter_bore.bore import Bore
from calc.stations.lifters.lifter_bore.told import Out
from calc.stations.shared.forms import FRICTION, SHARE, SIZE
from calc.stations.shared.ring_in_wall import (
    Joint,
    Part,
    compliance,
    poissons_ratio,
    ring_begins,
    stiffness,
    strength,
    wall_begins,
)


class Press(NamedTuple):
    joint: Joint
    pressure: Number
    body_used: Number
    unit_used: Number
    growth: Number
    closing: Number
    plunger_left: Number
    case_left: Number

    @property
    def worst_used(self) -> Number:
        """The greater of both shares of yield."""
        return constant("", "", SHARE, float(greatest(self.body_used, self.unit_used)))


def pressed_in(i: In, material: Material, unit: Material, bore: Bore) -> Press:
    """In the bore that is there once it is done, else in the one wanted; slipped in nothing presses."""
    as_it_is = i.fit_wanted == PRESS and bore.done
    size, words = (i.bore, "bore as it is") if as_it_is else (bore.target, "bore wanted")
    if i.fit_wanted == PRESS and size <= i.plunger_bore:
        raise impossible(
            "unit_outside",
            "is {D}, and in a bore of {b} nothing is left of its wall round the plunger's bore, {d}; give"
            " more",
            D=i.unit_outside,
            b=size,
            d=i.plunger_bore,
        )
    interference = step("δ", f"Interference in the {words}", SIZE, greatest(i.unit_outside - size, 0.0))
    shapes = (
        step("s_u", "Shape of the unit", FRICTION, fit.inner_shape(i.plunger_bore, size), sources.LAME),
        step("s_b", "Shape of the body", FRICTION, fit.outer_shape(size, bore.outside), sources.LAME),
    )
    ring, wall = Part(unit, "u", "unit"), Part(material, "b", "body")
    joint = Joint(ring, wall, i.plunger_bore, size, bore.outside, shapes)
    moduli = stiffness(ring), stiffness(wall)
    ratios = poissons_ratio(ring), poissons_ratio(wall, shape=FRICTION)
    pressure = Out.pressure(
        fit.contact_pressure(interference, size, compliance(shapes, moduli, ratios)), sources.LAME
    )
    body_yields, unit_yields = (
        strength(wall, material.yield_at(REFERENCE)),
        strength(ring, unit.compressive_yield_at(REFERENCE)),
    )
    body_used = Out.body_used(pressure / wall_begins(joint, body_yields), sources.MISES)
    unit_used = Out.unit_used(pressure / ring_begins(joint, unit_yields), sources.MISES)
    growth = Out.growth(fit.outer_outside_change(pressure, size, bore.outside, moduli[1]), sources.LAME)
    closing = Out.closing(-fit.inner_bore_change(pressure, i.plunger_bore, size, moduli[0]), sources.LAME)
    plunger_left = Out.plunger_left(i.plunger_bore - closing - i.plunger)
    case_left = Out.case_left(i.lifter_hole - i.body - growth)
    return Press(joint, pressure, body_used, unit_used, growth, closing, plunger_left, case_left)
