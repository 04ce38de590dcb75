"""The stresses of the section at its highest speed."""

from typing import NamedTuple

from calc.core.kinds import DENSITY, MODULUS, RATIO
from calc.core.result import impossible
from calc.core.working import Number, constant, form, greatest, sqrt
from calc.formulas import rotating_disc
from calc.reference import sources
from calc.reference.materials import MATERIALS
from calc.stations.flywheel.section import Ring
from calc.stations.flywheel.spin_stress.asked import In
from calc.stations.flywheel.spin_stress.told import Out
from calc.stations.shared.forms import CONTACT, MPA, ROUGH, SIZE


class Found(NamedTuple):
    disc: rotating_disc.Disc
    told: tuple[Number, ...]
    peak: Number
    mean: Number
    margin: Number
    factor: Number
    hole: Number
    strength: Number


def found_in(i: In, rings: list[Ring]) -> Found:
    """All stresses at the highest speed that was told."""
    grade = MATERIALS[i.material]
    density = i.density or constant("ρ", "Density", form(DENSITY, 0), grade.density, sources.MATERIALS)
    strength = i.strength or constant("σ_u", "Tensile strength", MPA, grade.ultimate, sources.MATERIALS)
    modulus = constant("E", "Stiffness", form(MODULUS, 0), grade.E, sources.MATERIALS)
    poisson = constant("ν", "Poisson's ratio", form(RATIO, 2), grade.nu, sources.MATERIALS)
    disc = rotating_disc.spinning(
        [(float(r.inner) / 2, float(r.outer) / 2, float(r.thickness)) for r in rings],
        *map(float, (density, i.speed, modulus, poisson)),
    )
    first, last, most = disc.at(disc.steps[0][0], 0), disc.at(disc.steps[-1][1]), disc.greatest_hoop()
    peak = Out.peak(_by_rings("σ_1", "Greatest hoop stress", most.hoop), sources.STEPPED_DISC)
    peak_at = Out.peak_at(constant("D_1", "Where it stands", ROUGH, 2 * most.radius))
    bore = Out.bore(_by_rings("σ_2", "Hoop stress at the bore", first.hoop), sources.STEPPED_DISC)
    rim = Out.rim(_by_rings("σ_3", "Hoop stress at the outside", last.hoop), sources.STEPPED_DISC)
    hole = _at_the_holes(i, rings, disc, peak)
    steps = [(r.inner / 2, r.outer / 2, r.thickness) for r in rings]
    mean = Out.mean(rotating_disc.mean_hoop(steps, density, i.speed), sources.HALVES)
    factor = Out.factor(strength / greatest(peak, hole))
    burst = Out.burst(i.speed * sqrt(strength / mean), sources.MEAN_HOOP)
    margin = Out.margin(burst / i.speed)
    a, b = rings[0].inner / 2, rings[-1].outer / 2
    flat = Out.flat(
        rotating_disc.flat_bore_hoop(a, b, density, i.speed, poisson)
        if a > 0
        else rotating_disc.solid_middle(b, density, i.speed, poisson),
        sources.FLAT_DISC,
    )
    growth = Out.growth(constant("u", "Outside moves by, ring by ring", SIZE, 2 * last.growth))
    told = (peak, peak_at, hole, bore, rim, mean, factor, burst, margin, flat, growth)
    return Found(disc, told, peak, mean, margin, factor, hole, strength)


def _by_rings(symbol: str, label: str, value: float) -> Number:
    return constant(symbol, f"{label}, ring by ring", CONTACT, value, sources.STEPPED_DISC)


def _at_the_holes(i: In, rings: list[Ring], disc: rotating_disc.Disc, peak: Number) -> Number:
    """At the edge of the innermost holes; where none are told, of one in the worst place."""
    if i.circle is None:
        return Out.hole(3 * peak, sources.KIRSCH)
    if not rings[0].inner < i.circle < rings[-1].outer:
        raise impossible(
            "circle",
            "is {d}, where the section from {a} to {b} has no metal; give a circle between them, or none",
            d=i.circle,
            a=rings[0].inner,
            b=rings[-1].outer,
        )
    there = disc.at(float(i.circle) / 2)
    one, two = max(there.hoop, there.radial), min(there.hoop, there.radial)
    first = _by_rings("σ_4", "The greater stress where the holes are", one)
    second = _by_rings("σ_5", "The lesser stress there", two)
    return Out.hole(rotating_disc.at_a_hole(first, second), sources.KIRSCH)
