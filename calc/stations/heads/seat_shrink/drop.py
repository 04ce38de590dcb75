"""How hot the head must be for the ring to drop in, with what clearance it does, and when it sticks."""

from typing import NamedTuple

from calc.core.kinds import EXPANSION
from calc.core.working import Number, Value, constant, form, greatest, least, step
from calc.formulas import press_fit as fit
from calc.reference import sources
from calc.reference.materials import COLDEST, REFERENCE, Material, OutsideTable
from calc.stations.heads.seat_shrink.asked import In
from calc.stations.heads.seat_shrink.told import Out
from calc.stations.shared.forms import DEGREES_C, STRAIN
from calc.stations.shared.growth import growth, reference_temperature


class Fitting(NamedTuple):
    """Ring and pocket as plain numbers, m, to ask for other heats than those that were given."""

    ring: Material
    head: Material
    pocket: float
    grip: float
    clearance: float

    def head_for(self, ring_at: Number | float) -> float:
        """Head temperature needed with the ring at any temperature, K."""
        grown = self.ring.strain_at(ring_at)
        strain = max(fit.outer_strain_for_clearance(self.grip, self.clearance, self.pocket, grown), 0.0)
        return float(fit.temperature_for(strain, mean_alpha_for(self.head, strain), REFERENCE))


class Drop(NamedTuple):
    """`wanted` is the growth that the pocket needs, `most` that which it has at its limit; `heated` the head
    as the ring goes in."""

    grip: Number
    wanted: Number
    needed: Number
    margin: Number
    most: Number
    clearance_limit: Number
    heated: Number
    clearance_in: Number
    may_cool: Number
    may_warm: Number


def drop_in(i: In, ring: Material, head: Material) -> Drop:
    """Where the head would get too hot, the ring goes in with the head at its limit."""
    reference = reference_temperature()
    grip = Out.interference(i.ring_outside - i.pocket_bore)
    ring_growth = growth(ring, i.ring_temperature, reference, "r", "ring as it goes in", "ring_temperature")
    wanted = step(
        "ε_h",
        "Growth that the pocket needs",
        STRAIN,
        greatest(fit.outer_strain_for_clearance(grip, i.clearance, i.pocket_bore, ring_growth), 0.0),
        sources.THERMAL,
    )
    needed = Out.head_temperature(
        temperature_at(head, wanted, reference, "h", "head at that heat"), sources.THERMAL
    )
    margin = Out.margin(i.head_limit - needed)
    most = growth(head, i.head_limit, reference, "h,max", "pocket at the limit", "head_limit")
    clearance_limit = Out.clearance_limit(
        -fit.interference_at(grip, i.pocket_bore, ring_growth, most), sources.THERMAL
    )
    heated = step(
        "T_in", "Head as the ring goes in, at its limit at most", DEGREES_C, least(needed, i.head_limit)
    )
    grown = step("ε_in", "Growth of the pocket as the ring goes in", STRAIN, least(wanted, most))
    clearance_in = Out.clearance_in(
        -fit.interference_at(grip, i.pocket_bore, ring_growth, grown), sources.THERMAL
    )
    head_sticks = step(
        "ε_h,s",
        "Growth of the pocket at which the ring sticks",
        STRAIN,
        ring_growth + grip / i.pocket_bore,
        sources.THERMAL,
    )
    may_cool = Out.head_may_cool(
        heated - temperature_at(head, head_sticks, reference, "h,s", "head as the ring sticks")
    )
    ring_sticks = step(
        "ε_r,s",
        "Growth of the ring at which it sticks",
        STRAIN,
        grown - grip / i.pocket_bore,
        sources.THERMAL,
    )
    may_warm = Out.ring_may_warm(
        temperature_at(ring, ring_sticks, reference, "r,s", "ring as it sticks") - i.ring_temperature
    )
    return Drop(grip, wanted, needed, margin, most, clearance_limit, heated, clearance_in, may_cool, may_warm)


def temperature_at(material: Material, strain: Number, reference: Number, letter: str, words: str) -> Value:
    """Temperature at which a part has grown so much from the reference; `letter` and `words` name it as
    `growth` does."""
    alpha = constant(
        f"α_{letter}",
        f"Mean expansion of the {words}",
        form(EXPANSION, 1),
        mean_alpha_for(material, strain),
        sources.MATERIALS,
    )
    return fit.temperature_for(strain, alpha, reference)


def mean_alpha_for(material: Material, strain: Number | float) -> float:
    """Mean coefficient that goes with a free strain, 1/K; past either end of the material's table that of the
    end."""
    try:
        return material.mean_alpha(material.temperature_for(strain))
    except OutsideTable:
        return material.mean_alpha(material.hottest if float(strain) > 0 else COLDEST)
