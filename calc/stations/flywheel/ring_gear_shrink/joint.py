"""Heat for the fit, and the grip of two rings that spin."""

from typing import NamedTuple

from calc.core.kinds import DENSITY, RATIO
from calc.core.result import impossible
from calc.core.working import Number, constant, form, step
from calc.formulas import press_fit as fit
from calc.formulas import rotating_disc
from calc.reference import sources
from calc.reference.materials import MATERIALS, Material, OutsideTable
from calc.stations.flywheel.ring_gear_shrink.asked import In
from calc.stations.flywheel.ring_gear_shrink.told import Out
from calc.stations.shared.forms import COARSE, CONTACT, DEGREES_C, MPA, SIZE, TIMES
from calc.stations.shared.growth import growth, reference_temperature
from calc.stations.shared.own_material import own_grade
from calc.stations.shared.ring_in_wall import Part, poissons_ratio, stiffness


class Joint(NamedTuple):
    interference: Number
    heat: Number
    left: Number
    remaining: Number
    worst_hoop: Number
    strength: Number
    told: tuple[Number, ...]


def refuse_impossible(i: In) -> None:
    if i.hub >= i.seat:
        raise impossible("hub", "is {a}, not less than the seat, {b}; give less", a=i.hub, b=i.seat)
    if i.root <= i.seat or i.root <= i.bore:
        raise impossible("root", "is {a}, not more than the seat, {b}; give more", a=i.root, b=i.seat)
    if i.outside < i.root:
        raise impossible(
            "outside", "is {a}, less than under the teeth, {b}; give {b} or more", a=i.outside, b=i.root
        )
    if i.low > i.high:
        raise impossible("low", "is {a}, more than the most, {b}; give less", a=i.low, b=i.high)


def joint_of(i: In) -> Joint:
    disc, gear = (own_grade(MATERIALS[id], row) for id, row in zip((i.material, i.gear_material), i.own))
    interference = Out.interference(i.seat - i.bore)
    heat = _heat(i, disc, gear, interference)
    inner, outer = Part(disc, "f", "flywheel"), Part(gear, "g", "ring gear")
    E_f, E_g, nu_f, nu_g = stiffness(inner), stiffness(outer), poissons_ratio(inner), poissons_ratio(outer)
    shape = step("s_g", "Shape of the ring gear", TIMES, fit.outer_shape(i.seat, i.root), sources.LAME)
    compliance = fit.compliance(fit.inner_shape(i.hub, i.seat), shape, E_f, nu_f, E_g, nu_g)
    pressure = Out.pressure(fit.contact_pressure(interference, i.seat, compliance), sources.LAME)
    hoop = Out.hoop(pressure * shape, sources.LAME)
    moved, pull = _spun(i, disc, gear, (E_f, E_g, nu_f, nu_g))
    lost = Out.lost(moved, sources.FLAT_DISC)
    pressure_left = Out.pressure_left(
        fit.contact_pressure(interference - lost, i.seat, compliance), sources.LAME
    )
    remaining = step("δ_r", "Interference at the highest speed", COARSE, interference - lost)
    left = Out.left(pressure_left / pressure if float(pressure) > 0 else 0.0)
    hoop_left = Out.hoop_left(pressure_left * shape + pull, sources.FLAT_DISC)
    torque, rest = (
        output(fit.holding_torque(p, i.friction, i.seat, i.width), sources.FRICTION_HOLD)
        for output, p in ((Out.torque, pressure_left), (Out.torque_rest, pressure))
    )
    strength = constant("R_g", "Yield of the ring gear", MPA, gear.yield_20, sources.MATERIALS)
    told = (heat, interference, pressure, hoop, lost, pressure_left, left, hoop_left, torque, rest)
    return Joint(interference, heat, left, remaining, max(hoop, hoop_left, key=float), strength, told)


def _heat(i: In, disc: Material, gear: Material, interference: Number) -> Number:
    """Where the ring gear's bore stands over the seat by the clearance wanted; sizes are those at 20 °C."""
    cold = growth(
        disc, i.flywheel_temperature, reference_temperature(), "f", "flywheel", "flywheel_temperature"
    )
    strain = step(
        "ε_g",
        "Growth that the ring gear needs",
        form(RATIO, 5),
        fit.outer_strain_for_clearance(interference, i.clearance, i.bore, cold * i.seat / i.bore),
        sources.THERMAL,
    )
    try:
        found = gear.temperature_for(strain)
    except OutsideTable:
        raise impossible(
            "clearance",
            "is {c} over an interference of {d}, which no heat that this material is held for gives;"
            " give less",
            c=i.clearance,
            d=interference,
        ) from None
    return Out.heat(
        constant("T_g", "Ring gear at that growth", DEGREES_C, found, sources.MATERIALS), sources.THERMAL
    )


def _spun(
    i: In, disc: Material, gear: Material, of: tuple[Number, Number, Number, Number]
) -> tuple[Number, Number]:
    """What the highest speed takes of the interference, and the pull of the spinning ring gear itself.
    Its teeth
    fill half of their ring, and hang on it as dead weight."""
    E_f, E_g, nu_f, nu_g = of
    rho_f = constant("ρ_f", "Density of the flywheel", form(DENSITY, 0), disc.density, sources.MATERIALS)
    rho_g = constant("ρ_g", "Density of the ring gear", form(DENSITY, 0), gear.density, sources.MATERIALS)
    a, b, c, d = i.hub / 2, i.seat / 2, i.root / 2, i.outside / 2
    rim = step(
        "σ_f",
        "Hoop stress at the seat, flywheel alone",
        CONTACT,
        rotating_disc.flat_rim_hoop(a, b, rho_f, i.speed, nu_f),
        sources.FLAT_DISC,
    )
    teeth = step(
        "p_t",
        "Pull of the teeth",
        CONTACT,
        rotating_disc.dead_weight(c, d, 0.5, rho_g, i.speed),
        sources.FLAT_DISC,
    )
    pull = step(
        "σ_g",
        "Hoop stress in the ring gear's bore, alone",
        CONTACT,
        rotating_disc.flat_bore_hoop(b, c, rho_g, i.speed, nu_g) + 2 * teeth * c**2 / (c**2 - b**2),
        sources.FLAT_DISC,
    )
    return step("w", "Bore runs from seat by", SIZE, i.seat * (pull / E_g - rim / E_f)), pull
