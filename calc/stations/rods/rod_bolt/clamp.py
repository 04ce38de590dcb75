"""What pulls at the cap at top dead centre, and what is left of the preload to hold it shut."""

from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import Number, greatest, sqrt, step
from calc.formulas import rod_load
from calc.reference import sources
from calc.stations.rods.rod_bolt.asked import In
from calc.stations.rods.rod_bolt.told import M_S2, Out
from calc.stations.shared.forms import KILONEWTON


class Pull(NamedTuple):
    """Of the piston and all that hangs on the rod's half of the big end: `whole`, and on each bolt."""

    acceleration: Number
    whole: Number
    each: Number


class Clamp(NamedTuple):
    """For each bolt: the least preload that presses cap on rod, what the pull takes off it, and what is left
    then. `margin` is the first over the second; at the speed `opens` nothing is left."""

    held: Number
    off: Number
    margin: Number
    left: Number
    opens: Number


def refuse_what_cannot_turn(i: In) -> None:
    if i.throw >= i.rod_length:
        raise impossible(
            "throw",
            "is {r}, not shorter than the rod, {l}, so that the crank could not turn; give less",
            r=i.throw,
            l=i.rod_length,
        )
    if i.cap >= i.big_end:
        raise impossible(
            "cap", "weighs {c}, not less than the big end with it, {b}; give less", c=i.cap, b=i.big_end
        )
    if float(i.bolts) % 1:
        raise impossible("bolts", "is no whole number; give 2, 3 or 4")


def pull_at_top(i: In) -> Pull:
    pin = step(
        "a_c",
        "Acceleration of the crankpin",
        M_S2,
        rod_load.pin_acceleration(i.throw, i.speed),
        sources.SLIDER_CRANK,
    )
    piston = Out.acceleration(rod_load.top_acceleration(pin, i.throw, i.rod_length), sources.SLIDER_CRANK)
    whole = Out.load(
        rod_load.joint_pull(i.piston_mass + i.small_end, i.big_end - i.cap, piston, pin), sources.SLIDER_CRANK
    )
    return Pull(piston, whole, Out.load_bolt(whole / i.bolts))


def clamp_left(i: In, low: Number, pull: Number) -> Clamp:
    """`low` is the least preload, `pull` that on each bolt."""
    held = step("F_H", "Preload that presses cap on rod, at least", KILONEWTON, greatest(low - i.crush, 0.0))
    off = step("F_O", "What the pull takes off it", KILONEWTON, (1 - i.joint_share) * pull, sources.VDI_2230)
    margin = Out.margin(held / off, sources.VDI_2230)
    left = Out.clamp(greatest(held - off, 0.0), sources.VDI_2230)
    opens = Out.speed_open(i.speed * sqrt(margin), sources.SLIDER_CRANK)
    return Clamp(held, off, margin, left, opens)
