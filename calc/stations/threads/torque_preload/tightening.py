"""The torque and the preload that go together, as meant and at both ends of the friction's band."""

from typing import NamedTuple

from calc.core.working import Number
from calc.reference import sources
from calc.stations.shared.bolts import Levers, Turned, levers, rough_end, slippery_end
from calc.stations.threads.torque_preload.asked import TORQUE, In
from calc.stations.threads.torque_preload.told import Out


class Tightening(NamedTuple):
    torque: Number
    preload: Number
    low: Number
    high: Number
    meant: Levers
    rough: Levers
    slippery: Levers


def tightening(i: In, turned: Turned) -> Tightening:
    meant, rough, slippery = (
        levers(turned, 1.0),
        rough_end(turned, i.spread),
        slippery_end(turned, i.spread),
    )
    if i.known == TORQUE:
        torque = Out.torque(i.torque)
        preload = Out.preload(torque / meant.nut, sources.ISO_16047)
    else:
        preload = Out.preload(i.wanted)
        torque = Out.torque(preload * meant.nut, sources.ISO_16047)
    low = Out.low(torque / rough.nut, sources.ISO_16047)
    high = Out.high(torque / slippery.nut, sources.ISO_16047)
    return Tightening(torque, preload, low, high, meant, rough, slippery)
