"""How far the pressure plate follows the faces, and what that does to its force."""

from typing import NamedTuple

from calc.core.kinds import MODULUS, RATIO
from calc.core.result import impossible
from calc.core.working import Number, constant, form, greatest, least, step
from calc.formulas import coned_disc
from calc.reference import sources
from calc.stations.flywheel.clutch_step.asked import BELOW, COILS, In
from calc.stations.flywheel.clutch_step.told import Out
from calc.stations.shared.forms import COARSE, NEWTON


class Clutch(NamedTuple):
    step: Number
    off: Number  # how far the friction face lies too deep, less than nothing where too high
    cut_cover: Number
    cut_face: Number
    apart: Number
    left: Number
    change: Number
    told: tuple[Number, ...]


def refuse_impossible(i: In) -> None:
    if i.low >= i.high:
        raise impossible("low", "is {a}, not less than the most, {b}; give less", a=i.low, b=i.high)
    if i.lining_inside >= i.lining_outside:
        raise impossible(
            "lining_inside",
            "is {a}, not less than its outside, {b}; give less",
            a=i.lining_inside,
            b=i.lining_outside,
        )
    if i.cover != COILS and i.inside >= i.outside:
        raise impossible(
            "inside", "is {a}, not less than where it presses, {b}; give less", a=i.inside, b=i.outside
        )


def clutch_of(i: In) -> Clutch:
    readings = [row[0] for row in i.steps]
    mean = Out.step(sum(readings, 0) / len(readings))
    apart = Out.apart(greatest(*readings) - least(*readings))
    wanted = step("h_w", "Step wanted, the middle of its limits", COARSE, (i.low + i.high) / 2)
    off = step("x", "Friction face too deep by", COARSE, mean - wanted if i.lies == BELOW else wanted - mean)
    cut_cover, cut_face = Out.cut_cover(greatest(off, 0.0)), Out.cut_face(greatest(-off, 0.0))
    left = Out.left(i.thickness - cut_face)
    before, after = _forces(i, off)
    change = Out.change((after - before) / before)
    radius = Out.radius((i.lining_outside + i.lining_inside) / 4, sources.EVEN_WEAR)
    torque = Out.torque(2 * i.friction * after * radius, sources.EVEN_WEAR)
    told = (mean, cut_cover, cut_face, apart, left, before, after, change, radius, torque)
    return Clutch(mean, off, cut_cover, cut_face, apart, left, change, told)


def _forces(i: In, off: Number) -> tuple[Number, Number]:
    """Clamp load with the step wanted and with that which was read: the plate follows the friction face,
    and the
    spring opens by as much."""
    if i.cover == COILS:
        source = sources.COILS_OPEN
        before = Out.before(i.springs * i.load, source)
        after = i.springs * (i.load - i.rate * off)
    else:
        source = sources.CONED_DISC
        E = constant("E", "Stiffness of spring steel", form(MODULUS, 0), 206e9, sources.MATERIALS)
        nu = constant("ν", "Poisson's ratio", form(RATIO, 2), 0.3, sources.MATERIALS)
        disc = i.outside, i.inside, i.thick, i.cone
        flat, open_ = (
            step(symbol, words, NEWTON, coned_disc.force(*disc, pressed, E, nu), source)
            for symbol, words, pressed in (
                ("F_d", "Coned disc, as new", i.flattened),
                ("F_x", "Coned disc, with this step", i.flattened - off),
            )
        )
        if flat <= 0:
            raise impossible(
                "flattened", "is {f}, at which this disc would not press; read it again", f=i.flattened
            )
        before = Out.before(flat if i.clamp is None else i.clamp, source)
        after = before * open_ / flat
    if before <= 0 or after <= 0:
        raise impossible(
            "cover",
            "has springs that would not clamp at all with this step; give the sizes and loads of those"
            " fitted",
        )
    return before, Out.after(after, source)
