"""Mass and moment of inertia before and after, cut by cut."""

from typing import NamedTuple

from calc.core.kinds import DENSITY, VOLUME
from calc.core.result import impossible
from calc.core.working import Number, constant, form, step
from calc.formulas import turned_ring
from calc.reference import sources
from calc.reference.materials import MATERIALS
from calc.stations.flywheel.lighten.asked import GRAMS, TURNED, In
from calc.stations.flywheel.lighten.cuts import Cut, least_left
from calc.stations.flywheel.lighten.told import Out
from calc.stations.flywheel.section import Ring
from calc.stations.shared.forms import ROUGH


class Off(NamedTuple):
    """What one cut, or the holes, take off."""

    what: str
    mass: Number
    inertia: Number


class Sums(NamedTuple):
    each: list[Off]
    told: tuple[Number, ...]
    mass_left: Number
    inertia_left: Number
    inertia_off: Number
    inertia_before: Number
    share: Number
    mass_share: Number
    section_mass: Number
    depth: Number


def sums_of(i: In, rings: list[Ring], cuts: list[Cut]) -> Sums:
    density = constant("ρ", "Density", form(DENSITY, 0), MATERIALS[i.material].density, sources.MATERIALS)
    section_mass, inertia_section = _section(rings, density)
    known = i.inertia
    before = Out.inertia_before(
        inertia_section * i.mass / section_mass if known is None else known, sources.SHELLS
    )
    each = [_cut_off(cut, density) for cut in cuts] + _holes(i, rings, cuts, density)
    mass_off = Out.mass_off(sum((off.mass for off in each), 0), sources.SHELLS)
    inertia_off = Out.inertia_off(sum((off.inertia for off in each), 0), sources.SHELLS)
    _refuse_too_much(i, mass_off, inertia_off, before)
    mass_left, inertia_left = Out.mass_left(i.mass - mass_off), Out.inertia_left(before - inertia_off)
    mass_share, share = Out.mass_share(mass_off / i.mass), Out.inertia_share(inertia_off / before)
    depth = _depth_wanted(i, cuts, each, before, density)
    told = (mass_left, inertia_left, mass_off, inertia_off, mass_share, share, before)
    return Sums(
        each, told, mass_left, inertia_left, inertia_off, before, share, mass_share, section_mass, depth
    )


def _section(rings: list[Ring], density: Number) -> tuple[Number, Number]:
    masses, inertias = [], []
    for n, r in enumerate(rings, 1):
        a, b = _radii(f"s{n}", f"ring {n}", r.inner, r.outer)
        mass, inertia = (flat(a, b, r.thickness, density) for flat in FLAT)
        masses.append(step(f"m_s{n}", f"Ring {n}", GRAMS, mass, sources.SHELLS))
        inertias.append(step(f"J_s{n}", f"Inertia of ring {n}", TURNED, inertia, sources.SHELLS))
    return (
        Out.section_mass(sum(masses, 0), sources.SHELLS),
        step("J_s", "Moment of inertia by the section", TURNED, sum(inertias, 0), sources.SHELLS),
    )


def _cut_off(cut: Cut, density: Number) -> Off:
    mark = f"{cut.side[0]}{cut.name}"
    words = f"cut {cut.name} on the {cut.side}'s side"
    a, b = _radii(mark, words, cut.inner, cut.outer)
    if cut.inside is cut.outside:
        mass, inertia = (flat(a, b, cut.inside, density) for flat in FLAT)
    else:
        ends = cut.inside, cut.outside
        mass = turned_ring.ring_mass(a, b, *ends, density)
        inner, outer = turned_ring.weights(a, b)
        u = step(f"u_{mark}", f"Weight of its depth inside, {words}", CUBED, inner, sources.SHELLS)
        v = step(f"v_{mark}", f"Weight of its depth outside, {words}", CUBED, outer, sources.SHELLS)
        inertia = turned_ring.ring_inertia(a, b, *ends, u, v, density)
    return Off(
        words,
        step(f"m_{mark}", f"Taken off by {words}", GRAMS, mass, sources.SHELLS),
        step(f"J_{mark}", f"Inertia of {words}", TURNED, inertia, sources.SHELLS),
    )


FLAT = (turned_ring.flat_mass, turned_ring.flat_inertia)
CUBED = form(VOLUME, 1)


def _radii(mark: str, words: str, inner: Number, outer: Number) -> tuple[Number, Number]:
    return (
        step(f"a_{mark}", f"Inner radius of {words}", ROUGH, inner / 2),
        step(f"b_{mark}", f"Outer radius of {words}", ROUGH, outer / 2),
    )


def _holes(i: In, rings: list[Ring], cuts: list[Cut], density: Number) -> list[Off]:
    asked = {"holes": i.holes, "hole": i.hole, "circle": i.circle}
    if all(value is None for value in asked.values()):
        return []
    for name, value in asked.items():
        if value is None:
            raise impossible(name, "is empty while the other sizes of the holes are given; give it too")
    assert i.holes is not None and i.hole is not None and i.circle is not None
    if i.circle - i.hole < rings[0].inner or i.circle + i.hole > rings[-1].outer:
        raise impossible(
            "circle",
            "is {d}, where holes of this size do not lie within the section; give another circle",
            d=i.circle,
        )
    wall = least_left(rings, cuts, float(i.circle), float(i.circle))
    mass = step(
        "m_h",
        "Taken off by the holes",
        GRAMS,
        turned_ring.holes_mass(i.holes, i.hole, wall.thickness, density),
        sources.SHELLS,
    )
    inertia = turned_ring.holes_inertia(mass, i.circle, i.hole)
    return [Off("holes", mass, step("J_h", "Inertia of the holes", TURNED, inertia, sources.SHELLS))]


def _refuse_too_much(i: In, mass: Number, inertia: Number, before: Number) -> None:
    if mass >= i.mass:
        raise impossible(
            "mass", "is {m}, no more than the cuts take off, {o}; give what it weighs now", m=i.mass, o=mass
        )
    if inertia >= before:
        raise impossible(
            "inertia",
            "comes to {j}, no more than the cuts take off, {o}; give that of the whole flywheel",
            j=before,
            o=inertia,
        )
    if i.wanted is not None and i.wanted >= before:
        raise impossible(
            "wanted", "is {w}, not less than it has, {j}; give less than {j}", w=i.wanted, j=before
        )


def _depth_wanted(i: In, cuts: list[Cut], each: list[Off], before: Number, density: Number) -> Number:
    """How deep the first cut on the engine's side must be, flat, the others as they are, for the inertia
    wanted;
    with none wanted, for that of the cuts as they are. Nothing where there is no such cut."""
    first = next((n for n, cut in enumerate(cuts) if cut.side == "engine"), None)
    if first is None:
        return Out.depth_wanted(0.0)
    others = sum((off.inertia for n, off in enumerate(each) if n != first), 0)
    to_go = each[first].inertia if i.wanted is None else before - others - i.wanted
    cut = cuts[first]
    return Out.depth_wanted(
        turned_ring.depth_for_inertia(to_go, cut.inner, cut.outer, density), sources.SHELLS
    )
