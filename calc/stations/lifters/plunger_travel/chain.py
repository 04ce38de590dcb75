"""What the growth of the valve train does to a plunger."""

from typing import NamedTuple

from calc.core.working import Number, step
from calc.formulas.press_fit import free_strain
from calc.reference import sources
from calc.reference.materials import MATERIALS
from calc.stations.lifters.plunger_travel.asked import In
from calc.stations.lifters.plunger_travel.told import Out
from calc.stations.shared.forms import COARSE, STRAIN
from calc.stations.shared.growth import growth, reference_temperature


class Movement(NamedTuple):
    """What the plunger is pressed in more running and while warming up, and what it is pressed in then."""

    change: Number
    early: Number
    running: Number
    warming: Number


def pressed_in(
    rods: Number | float, tip: Number | float, ratio: Number | float, stand: Number | float
) -> Number | float:
    """What the plunger is pressed in more, m.

    Growth of cam, lifter and pushrod, and of the tip over the shaft through the rocker, less that of what
    carries the shaft. `tip` is how far the stem's tip rises over the rocker shaft, `ratio` the rocker's valve
    side over its other.
    """
    return rods + tip / ratio - stand


def movement_of(i: In) -> Movement:
    reference = reference_temperature()
    case, barrel, top, stem = (
        growth(MATERIALS[material], temperature, reference, letter, words, field)
        for material, temperature, letter, words, field in (
            (i.case_material, i.case_temperature, "c", "case", "case_temperature"),
            (i.cylinder_material, i.cylinder_temperature, "z", "cylinder", "cylinder_temperature"),
            (i.head_material, i.head_temperature, "h", "head", "head_temperature"),
            (i.valve_material, i.valve_temperature, "v", "valve", "valve_temperature"),
        )
    )
    body = growth(
        MATERIALS["forged-steel"], i.rod_temperature, reference, "l", "cam and lifter", "rod_temperature"
    )
    rod = step(
        "ε_p",
        "Growth of the pushrod",
        STRAIN,
        free_strain(i.pushrod_expansion, i.rod_temperature, reference),
        sources.THERMAL,
    )
    rods = step("g_p", "Pushrod, lifter and cam grow by", COARSE, i.pushrod * rod + i.lifter * body)
    tip = step("g_v", "Stem's tip rises over the rocker shaft by", COARSE, i.valve_length * (stem - top))
    above = step("g_h", "Cylinder and head grow by", COARSE, i.cylinder * barrel + i.head * top)
    stand = step("g_c", "All that carries the rocker shaft grows by", COARSE, i.case_length * case + above)
    change = Out.change(pressed_in(rods, tip, i.ratio, stand), sources.VALVE_TRAIN_GROWTH)
    early = step(
        "Δ_warm",
        "Pressed in more while warming up, by",
        COARSE,
        pressed_in(0.0, tip, i.ratio, above),
        sources.VALVE_TRAIN_GROWTH,
    )
    return Movement(change, early, Out.running(i.preload + change), Out.warming(i.preload + early))
