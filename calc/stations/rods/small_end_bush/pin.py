"""The bore that the bush is honed to, and the pin's clearance in it, cold and running."""

from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import Number, greatest, step
from calc.formulas import press_fit as fit
from calc.reference import sources
from calc.stations.rods.small_end_bush.asked import In
from calc.stations.rods.small_end_bush.told import Out
from calc.stations.shared.forms import TIMES
from calc.stations.shared.ring_in_wall import bore_moved, compliance
from calc.stations.shared.sleeve import Grip


class Pin(NamedTuple):
    """`hone` is the bore wanted, `bore` that which is there or will be; `stock` what is still to come off,
    less than nothing where the bore is too large already."""

    hone: Number
    bore: Number
    closing: Number
    pressed: Number
    stock: Number
    to_hone: Number
    wall: Number
    clearance: Number
    running: Number

    @property
    def tightest(self) -> tuple[Number, str]:
        """The lesser of both clearances, and when it is that."""
        return min((self.clearance, "cold"), (self.running, "when running"), key=lambda pair: float(pair[0]))


def refuse_impossible_bores(i: In, hone: Number) -> None:
    """Raises where a clearance is wanted that no fresh bush may have, or a bore leaves nothing of the
    bush."""
    if i.honed is None and i.wanted_clearance > i.most_clearance:
        raise impossible(
            "wanted_clearance",
            "is {w}, more than a fresh bush may have, {m}; give less",
            w=i.wanted_clearance,
            m=i.most_clearance,
        )
    for size, name, words in (
        (i.supplied_bore, "supplied_bore", "is"),
        (i.honed, "honed", "is"),
        (hone, "pin", "needs a bore of"),
    ):
        for other, of in ((i.bush_outside, "the bush's outside"), (i.rod_bore, "the rod's bore")):
            if size is not None and size >= other:
                raise impossible(
                    name, words + " {s}, not smaller than " + of + ", {o}; give less", s=size, o=other
                )


def pin_in_bush(i: In, hone: Number, grip: Grip, bush_growth: Number, pin_growth: Number) -> Pin:
    """Honed it is a thinner bush than was pressed in: its bore moves with the change of grip as that one's
    does."""
    bore = hone if i.honed is None else i.honed
    closing = Out.closing(
        -fit.inner_bore_change(grip.pressure, i.supplied_bore, i.rod_bore, grip.cold.moduli[0]), sources.LAME
    )
    pressed = Out.bore_pressed(i.supplied_bore - closing)
    stock = hone - pressed
    to_hone = Out.to_hone(greatest(stock, 0.0))
    wall = Out.wall((i.rod_bore - bore) / 2)
    clearance = Out.clearance(bore - i.pin)
    thin = step("s_b,h", "Shape of the bush, honed", TIMES, fit.inner_shape(bore, i.rod_bore), sources.LAME)
    honed = grip.joint._replace(bore=bore, shapes=(thin, grip.joint.shapes[1]))
    cold, hot = (
        bore_moved(
            f"u{tag}",
            f"Bore of the honed bush moved by its grip{words}",
            honed,
            heat.interference,
            compliance(honed.shapes, heat.moduli, grip.ratios),
            heat.moduli[0],
        )
        for tag, words, heat in (("_c", "", grip.cold), ("_h", ", running", grip.hot))
    )
    running = Out.clearance_hot(
        bore * (1 + bush_growth) + (hot - cold) - i.pin * (1 + pin_growth), sources.PIN_CLEARANCE
    )
    return Pin(hone, bore, closing, pressed, stock, to_hone, wall, clearance, running)
