"""The stem in the guide: what the bore comes to, the clearance cold and hot, and how far the valve rocks."""

from typing import NamedTuple

from calc.core.working import Number, greatest, step
from calc.formulas import press_fit as fit
from calc.formulas.rocking import rocking_factor
from calc.reference import sources
from calc.stations.heads.guide_fit.asked import In
from calc.stations.heads.guide_fit.sizes import Sizes
from calc.stations.heads.guide_fit.told import Out
from calc.stations.shared.forms import SIZE, TIMES
from calc.stations.shared.ring_in_wall import bore_moved, compliance
from calc.stations.shared.sleeve import Grip


class Clearance(NamedTuple):
    closing: Number  # of the bore, when pressed in
    pressed: Number  # bore then
    stock: Number  # left to ream, negative where the bore is too large already
    to_ream: Number
    cold: Number
    thin: Number  # shape of the guide as reamed
    running: Number
    first: Number  # while the stem alone is hot
    factor: Number  # rocking over clearance
    rocking: Number  # that the cold clearance gives
    by_rocking: Number  # clearance that the rocking shows
    judged: Number  # the larger of the two
    apart: Number  # how far these two differ


def stem_in_guide(i: In, sizes: Sizes, grip: Grip, stem_growth: Number, guide_growth: Number) -> Clearance:
    joint, bore = grip.joint, sizes.bore
    closing = Out.closing(
        -fit.inner_bore_change(grip.pressure, joint.bore, joint.size, grip.cold.moduli[0]), sources.LAME
    )
    pressed = Out.bore_pressed(i.supplied_bore - closing if sizes.new else bore)
    stock = sizes.ream - pressed
    to_ream = Out.to_ream(greatest(stock, 0.0))
    cold = Out.clearance(bore - i.stem)
    thin, opening = _opens_again(grip, bore)
    stem_hot = step("d_hot", "Stem, running", SIZE, i.stem * (1 + stem_growth), sources.THERMAL)
    running = Out.clearance_hot(bore * (1 + guide_growth) + opening - stem_hot, sources.THERMAL)
    first = Out.clearance_first(bore - stem_hot, sources.THERMAL)
    factor = step(
        "k_r", "Rocking over clearance", TIMES, rocking_factor(i.dial_height, i.guide_length), sources.ROCKING
    )
    rocking = Out.rocking(cold * factor, sources.ROCKING)
    shown = cold if i.rocking is None or sizes.new else i.rocking / factor
    by_rocking = Out.clearance_rocking(shown, sources.ROCKING)
    return Clearance(
        closing,
        pressed,
        stock,
        to_ream,
        cold,
        thin,
        running,
        first,
        factor,
        rocking,
        by_rocking,
        judged=step("c_j", "The larger of the two clearances", SIZE, greatest(cold, by_rocking)),
        apart=step("Δc", "The two clearances differ by", SIZE, abs(cold - by_rocking)),
    )


def _opens_again(grip: Grip, bore: Number) -> tuple[Number, Number]:
    """Shape of the guide as reamed, and how far its bore opens again when it runs. Reamed it is a thinner
    guide: its bore moves with the change of grip as that one's does."""
    thin = step(
        "s_g,r", "Shape of the guide, as reamed", TIMES, fit.inner_shape(bore, grip.joint.size), sources.LAME
    )
    reamed = grip.joint._replace(bore=bore, shapes=(thin, grip.joint.shapes[1]))
    cold, hot = (
        bore_moved(
            f"u_{letter}",
            f"Bore of the reamed guide moved by its grip{when}",
            reamed,
            heat.interference,
            compliance(reamed.shapes, heat.moduli, grip.ratios),
            heat.moduli[0],
        )
        for letter, when, heat in (("c", "", grip.cold), ("h", ", running", grip.hot))
    )
    return thin, step("ΔD_hot", "Bore opens again, running, by", SIZE, hot - cold)
