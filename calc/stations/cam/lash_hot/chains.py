"""Two chains of free growth, from the cam to the rocker shaft and from the seat to the tip, closed at the
rocker."""

from typing import NamedTuple

from calc.core.working import Number, Value, greatest, step
from calc.formulas.press_fit import free_strain
from calc.reference import sources
from calc.reference.materials import MATERIALS
from calc.stations.cam.lash_hot.asked import In
from calc.stations.cam.lash_hot.told import Out
from calc.stations.shared.forms import COARSE, STRAIN
from calc.stations.shared.growth import growth, reference_temperature

LIFTER = "forged-steel"


class Lash(NamedTuple):
    running: Number
    frost: Number
    cold: Number
    train: Number
    stem: Number


def lash_after(lash: Value, train: Value, stem: Value, ratio: Value) -> Value:
    """Lash at the valve, m: `train` is what the shaft goes from the lifter more than the pushrod follows,
    `stem` what the tip rises over the shaft."""
    return lash + train * ratio - stem


def lash_of(i: In) -> Lash:
    running, frost = (
        _chains(i, mark, words, heats)
        for mark, words, heats in (("", "running", None), ("f", "in frost", i.frost))
    )
    train, stem = (
        Out.train(running[0], sources.VALVE_TRAIN_GROWTH),
        Out.stem(running[1], sources.VALVE_TRAIN_GROWTH),
    )
    hot = Out.running(lash_after(i.lash, train, stem, i.ratio))
    cold = Out.frost(lash_after(i.lash, *frost, i.ratio))
    wanted = Out.cold(greatest(i.lash + i.least - hot, i.lash - cold, 0 * i.lash))
    return Lash(hot, cold, wanted, train, stem)


def _chains(i: In, mark: str, words: str, all_at: Number | None) -> tuple[Number, Number]:
    """Both chains' growth, each part at its own heat, or all at one."""
    reference = reference_temperature()

    def strain(id: str, heat: Number, letter: str, name: str, field: str) -> Number:
        t, blame = (heat, field) if all_at is None else (all_at, "frost")
        return growth(MATERIALS[id], t, reference, letter + mark, f"{name}, {words}", blame)

    case = strain(i.case_material, i.case_temperature, "c", "case", "case_temperature")
    barrel = strain(i.cylinder_material, i.cylinder_temperature, "z", "cylinder", "cylinder_temperature")
    top = strain(i.head_material, i.head_temperature, "h", "head", "head_temperature")
    stem = strain(i.valve_material, i.valve_temperature, "v", "valve", "valve_temperature")
    body = strain(LIFTER, i.rod_temperature, "l", "lifter and cam", "rod_temperature")
    rod = step(
        f"ε_p{mark}",
        f"Growth of the pushrod, {words}",
        STRAIN,
        free_strain(i.pushrod_expansion, i.rod_temperature if all_at is None else all_at, reference),
        sources.THERMAL,
    )
    carried = step(
        f"g_t{mark}",
        f"Shaft goes from the lifter more than the pushrod follows, {words}",
        COARSE,
        i.case_length * case + i.cylinder * barrel + i.head * top - i.lifter * body - i.pushrod * rod,
    )
    risen = step(
        f"g_v{mark}",
        f"Stem's tip rises over the shaft, {words}",
        COARSE,
        i.valve_length * stem - i.beside * top,
    )
    return carried, risen
