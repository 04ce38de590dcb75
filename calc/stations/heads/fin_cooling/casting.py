"""One casting: how well its fins work, and what it sheds to air that warms along the way."""

from typing import NamedTuple

from calc.core.kinds import CONDUCTIVITY, DENSITY, SPECIFIC_HEAT
from calc.core.working import Number, constant, form, step
from calc.formulas.fins import fin_area, fin_efficiency, fin_number, overall_efficiency, warmed
from calc.reference import sources
from calc.reference.materials import MATERIALS
from calc.stations.heads.fin_cooling.asked import CASTINGS, In
from calc.stations.heads.fin_cooling.told import FACE, PERK, OfOne
from calc.stations.shared.forms import FRICTION

AIR_DENSITY = constant(
    "ρ", "Density of air, 50 °C at sea level", form(DENSITY, 3), 1.093, sources.COOLING_AIR
)
AIR_HEAT = constant("c_p", "Specific heat of air", form(SPECIFIC_HEAT, 0), 1007.0, sources.COOLING_AIR)


class Fins(NamedTuple):
    """A row of the grid."""

    number: Number
    thickness: Number
    length: Number
    gap: Number

    @property
    def plain(self) -> tuple[float, float, float, float]:
        return float(self.number), float(self.thickness), float(self.length), float(self.gap)


class Casting(NamedTuple):
    """Per kelvin: what fins and wall would shed to air that stays cold, what that air takes up per kelvin of
    its own rise, and what is shed over the entering air."""

    fins: Fins
    coefficient: Number
    conductivity: Number
    efficiency: Number
    overall: Number
    area: Number
    effective: Number
    to_cold_air: Number
    air_takes: Number
    per_kelvin: Number
    heat: Number
    warmer: Number


def casting_of(
    i: In, n: int, row: tuple, coefficient: Number, alloy: str, streams: Number, out: OfOne
) -> Casting:
    """The casting number `n`, from 1."""
    fins, who = Fins(*row), CASTINGS[n - 1].lower()
    k = constant(
        f"k_{n}",
        f"Conductivity, {who}",
        form(CONDUCTIVITY, 0),
        MATERIALS[alloy].conductivity,
        sources.MATERIALS,
    )
    each = step(
        f"A_f{n}",
        f"Area of one fin, {who}",
        FACE,
        fin_area(fins.thickness, fins.length, i.width),
        sources.FINS,
    )
    area = out.area(fins.number * (each + fins.gap * i.width), sources.FINS)
    x = step(
        f"x_{n}",
        f"m·L_c of a fin, {who}",
        FRICTION,
        fin_number(coefficient, k, fins.thickness, fins.length),
        sources.FINS,
    )
    efficiency = out.efficiency(fin_efficiency(x), sources.FINS)
    overall = out.overall(overall_efficiency(efficiency, fins.number * each, area), sources.FINS)
    effective = out.effective(overall * area, sources.FINS)
    to_cold_air = step(f"G_{n}", f"Heat shed per kelvin, {who}", PERK, coefficient * effective, sources.FINS)
    takes, per_kelvin = _to_warming_air(i, n, fins, to_cold_air, streams)
    heat = out.heat(per_kelvin * i.hotter)
    warmer = out.warmer(heat / takes, sources.COOLING_AIR)
    return Casting(
        fins,
        coefficient,
        k,
        efficiency,
        overall,
        area,
        effective,
        to_cold_air,
        takes,
        per_kelvin,
        heat,
        warmer,
    )


def _to_warming_air(i: In, n: int, fins: Fins, to_cold_air: Number, streams: Number) -> tuple[Number, Number]:
    """What the air takes up per kelvin of its own rise, and what is shed to it per kelvin over the entering
    air."""
    who = CASTINGS[n - 1].lower()
    takes = step(
        f"C_{n}",
        f"Heat that the air of {who} takes up per kelvin of its rise",
        PERK,
        air_takes(fins, i.speed, streams),
        sources.COOLING_AIR,
    )
    per_kelvin = step(
        f"K_{n}",
        f"Heat shed per kelvin over the entering air, {who}",
        PERK,
        warmed(to_cold_air, takes),
        sources.COOLING_AIR,
    )
    return takes, per_kelvin


def air_takes(fins: Fins, speed: Number, streams: Number) -> Number:
    """What the air between the fins takes up per kelvin of its own rise, W/K."""
    return AIR_DENSITY * AIR_HEAT * speed * (fins.number * fins.gap * fins.length * streams)
