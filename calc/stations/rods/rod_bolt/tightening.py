"""The preload that torque or stretch makes, and how far it may be off."""

from typing import NamedTuple

from calc.core.working import Number, constant
from calc.reference import sources
from calc.stations.rods.rod_bolt.asked import TORQUE, In
from calc.stations.rods.rod_bolt.bolt import Bolt
from calc.stations.rods.rod_bolt.stretching import stretch_a_newton
from calc.stations.rods.rod_bolt.told import Out
from calc.stations.shared.bolts import levers, rough_end, slippery_end
from calc.stations.shared.forms import SHARE

# Of the preload: what a stretch read to a hundredth leaves open; common practice, no source.
STRETCH_SPREAD = 0.05


class Tightening(NamedTuple):
    """`twisting` is the torque in the thread for each unit of preload where it twists the bolt most."""

    preload: Number
    low: Number
    high: Number
    torque: Number
    stretch: Number
    twisting: Number


def tightening(i: In, bolt: Bolt) -> Tightening:
    meant = levers(bolt.turned)
    give = stretch_a_newton(i, bolt)
    if i.known == TORQUE:
        preload = Out.preload(i.torque / meant.nut, sources.ISO_16047)
        rough, slippery = rough_end(bolt.turned, i.spread), slippery_end(bolt.turned, i.spread)
        low = Out.low(i.torque / rough.nut, sources.ISO_16047)
        high = Out.high(i.torque / slippery.nut, sources.ISO_16047)
        twisting = slippery.thread
    else:
        preload = Out.preload(i.stretch / give, sources.BOLT_SPRINGS)
        # the pull is told, so a rough thread only adds to the twist
        twisting = rough_end(bolt.turned, i.spread).thread
        doubt = constant("w_L", "Stretch may be read wrong by", SHARE, STRETCH_SPREAD, sources.PRACTICE)
        low, high = Out.low(preload * (1 - doubt)), Out.high(preload * (1 + doubt))
    torque = Out.torque(preload * meant.nut, sources.ISO_16047)
    stretch = Out.stretch(preload * give, sources.BOLT_SPRINGS)
    return Tightening(preload, low, high, torque, stretch, twisting)
