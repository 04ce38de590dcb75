"""The pull at which the parent's thread shears, and the most that the stud pulls: slippery and hot."""

from typing import NamedTuple

from calc.core.working import Number, constant, step
from calc.formulas.screw_threads import SHEAR_SHARE, hole_shear_area
from calc.reference import sources
from calc.reference.materials import MATERIALS, REFERENCE
from calc.stations.shared.clamped import hot_preload
from calc.stations.shared.forms import KILONEWTON, MPA, SIZE
from calc.stations.threads.insert_install.asked import In
from calc.stations.threads.insert_install.hole import Hole
from calc.stations.threads.insert_install.told import Out


class Strength(NamedTuple):
    area: Number
    pull: Number
    force: Number
    safety: Number


def strength_of(i: In, hole: Hole, length: Number) -> Strength:
    """`length` is that on which threads are whole."""
    major_least = step("D_t,min", "Insert's outside, least", SIZE, hole.major - hole.play_major, sources.H28)
    pitch_most = step(
        "D_2,max", "Hole's pitch diameter, most", SIZE, hole.pitch_diameter + hole.play_pitch, sources.H28
    )
    area = Out.area(hole_shear_area(hole.pitch, length, major_least, pitch_most), sources.H28)
    pull = Out.pull(area * _shear_running(i), sources.H28)
    slippery = step(
        "F_s", "Preload where the thread is slippery", KILONEWTON, i.slip * i.preload, sources.PRACTICE
    )
    force = Out.force(hot_preload(i.preload, i.clamped, i.hot, i.hot_force, slippery), sources.PRACTICE)
    return Strength(area, pull, force, Out.safety(pull / force))


def _shear_running(i: In) -> Number:
    """Shear strength of the parent at running temperature: it falls with heat as its yield does."""
    metal = MATERIALS[i.parent]
    ultimate = constant(
        "R_m", f"Tensile strength of the {metal.name}", MPA, metal.ultimate, sources.MATERIALS
    )
    hot, cold = (
        constant(f"R_{mark}", f"Its yield stress, {words}", MPA, metal.yield_at(at), sources.MATERIALS)
        for mark, words, at in (("hot", "running", i.temperature), ("20", "at 20 °C", REFERENCE))
    )
    return step("τ", "Its shear strength, running", MPA, SHEAR_SHARE * ultimate * hot / cold, sources.H28)
