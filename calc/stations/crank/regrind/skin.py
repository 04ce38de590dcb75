"""What grinding leaves of the hardened layer, and what it makes of the fillets."""

from calc.core.conformance import past
from calc.core.working import Number, greatest, least, step
from calc.reference import sources
from calc.stations.crank.regrind.asked import In
from calc.stations.crank.regrind.lot import GRIND, Lot
from calc.stations.crank.regrind.told import Out
from calc.stations.shared.forms import COARSE, SIZE


def ground_off(i: In, mains: Lot, pins: Lot) -> Number:
    """What is gone of one side since it was new, where most is: half the undersize, and of bowed mains that
    are ground half the dial's reading beside."""
    off_main = (mains.undersize + i.bow) / 2 if mains.state == GRIND else mains.undersize / 2
    return Out.depth(greatest(off_main, pins.undersize / 2), sources.OLD_AXIS)


def hardened_left(i: In, off: Number) -> Number | None:
    """Depth of hardened layer left where so much is gone of a side; None where nobody knows how deep it
    was."""
    if i.hard_depth is None:
        return None
    return step("h_l", "Hardened layer left, least", COARSE, i.hard_depth - off)


def largest_fillet(i: In, mains: Lot, pins: Lot) -> Number | None:
    """The largest radius that can be ground without touching the cheek: a fillet of r whose journal goes down
    by h may become r + h and still leave the cheek where the old one left it. None where the old one was not
    read, or nothing is ground."""
    depths = [
        (min((j.largest for j in lot.each), key=float) - lot.aim) / 2 for lot in (mains, pins) if lot.ground
    ]
    if i.fillet is None or not depths:
        return None
    return step(
        "r_most", "Largest fillet that cleans up", SIZE, i.fillet + least(*depths), sources.FILLET_RISE
    )


def fillet_out(i: In) -> bool:
    """Is the radius on the wheel none that the crank may have?"""
    if i.wheel is None:
        return False
    small = i.fillet_low is not None and past(i.fillet_low, i.wheel)
    return small or i.fillet_high is not None and past(i.wheel, i.fillet_high)
