"""What one lifter bore loses of the gallery's oil, to both of its ends."""

from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import Number, constant, greatest, step
from calc.formulas import annular_gap
from calc.reference import sources
from calc.stations.crankcase.lifter_gallery.asked import In
from calc.stations.crankcase.lifter_gallery.told import Out
from calc.stations.shared.forms import FINE, SIZE, TIMES
from calc.stations.shared.oil_at import DataSheet, oil_at

WIDEST = 0.02  # of the diameter: clearance up to which the gap counts as narrow


class Leak(NamedTuple):
    """As it is told; clearances on the diameter."""

    clearance: Number
    leak: Number
    share: Number
    to_cam: Number
    to_tube: Number
    alike_cam: Number
    alike_tube: Number
    every: Number
    aside: Number
    viscosity: Number
    widest: Number  # clearance at the wider end


def refuse_no_gap(i: In) -> None:
    for name, bore in (("gallery", i.gallery), ("cam_end", i.cam_end), ("tube_end", i.tube_end)):
        if bore <= i.lifter:
            raise impossible(
                name,
                "is {D}, not larger than the lifter, {d}, so that it does not go in; give more",
                D=bore,
                d=i.lifter,
            )
        if float(bore - i.lifter) > WIDEST * float(bore):
            raise impossible(
                name,
                "is {D}, far wider than the lifter of {d}; measure both again, and give less",
                D=bore,
                d=i.lifter,
            )
    if i.fair >= i.most:
        raise impossible(
            "fair",
            "is {a}, not less than that at which bearings go short, {b}; give less",
            a=i.fair,
            b=i.most,
        )


def leak_of(i: In) -> Leak:
    points = DataSheet(i.cool_temperature, i.cool_viscosity, i.warm_temperature, i.warm_viscosity)
    viscosity = oil_at(i.oil, i.oil_temperature, points, i.density, Out.viscosity).dynamic
    clearance = Out.clearance(i.gallery - i.lifter)
    radial = step("c_g", "Gap at the gallery, lifter in the middle", FINE, clearance / 2)
    ends = {
        mark: step(f"c_{mark}", f"Gap at the {words} end", FINE, (bore - i.lifter) / 2)
        for mark, words, bore in (("i", "cam's", i.cam_end), ("o", "pushrod's", i.tube_end))
    }
    offset = float(i.eccentricity) * min(float(c) for c in (radial, *ends.values()))
    even, flows, factors = {}, {}, {}
    for mark, length in (("i", i.cam_length), ("o", i.tube_length)):
        gap = step(
            f"c_{mark},even",
            "Even gap that leaks alike",
            FINE,
            annular_gap.alike(radial, ends[mark]),
            sources.ANNULAR_GAP,
        )
        factor = constant(
            f"k_{mark}",
            "Times as much, lifter aside",
            TIMES,
            annular_gap.aside(float(radial), float(ends[mark]), offset),
            sources.ANNULAR_GAP,
        )
        even[mark], factors[mark] = gap, factor
        flows[mark] = factor * annular_gap.leak(i.lifter, gap, length, viscosity, i.pressure, 0)
    to_cam = Out.to_cam(flows["i"], sources.ANNULAR_GAP)
    to_tube = Out.to_tube(flows["o"], sources.ANNULAR_GAP)
    leak = Out.leak(to_cam + to_tube)
    every = Out.every(i.bores * leak)
    return Leak(
        clearance,
        leak,
        Out.share(every / i.pump),
        to_cam,
        to_tube,
        Out.alike_cam(2 * even["i"]),
        Out.alike_tube(2 * even["o"]),
        every,
        Out.aside(leak / (to_cam / factors["i"] + to_tube / factors["o"])),
        viscosity,
        step("C_w", "Clearance at the wider end", SIZE, greatest(i.cam_end, i.tube_end) - i.lifter),
    )
