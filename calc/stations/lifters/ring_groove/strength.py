"""How the ring sits in its groove, and what ring, groove and lip bear."""

from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import PI, Number, constant, least, sqrt, step
from calc.reference import sources
from calc.reference.materials import MATERIALS, REFERENCE
from calc.stations.lifters.ring_groove.asked import In
from calc.stations.lifters.ring_groove.told import Out
from calc.stations.shared.forms import MPA, NEWTON

RING, GROOVE, LIP = "the ring", "the groove's wall", "the lip"  # what may give way, in words


class Seat(NamedTuple):
    """`overhang` is what stands out of the groove, `lip_ratio` the lip in depths of the groove."""

    depth: Number
    lip_ratio: Number
    wall: Number
    overhang: Number
    play: Number


class Strength(NamedTuple):
    """Thrust that each of the three bears, and the least of them.

    `thrust` is the load with its blows, `used` its share of what is borne.
    """

    ring: Number
    groove: Number
    lip: Number
    capacity: Number
    weakest: str
    thrust: Number
    used: Number


def annulus(inner: Number, outer: Number) -> Number:
    """Area between two diameters, m²."""
    return PI / 4 * (outer**2 - inner**2)


def refuse_no_groove(i: In) -> None:
    """Raises where the sizes together make no ring in a groove."""
    if i.bore >= i.groove:
        raise impossible("groove", "is {g}, not larger than the bore, {d}; give more", g=i.groove, d=i.bore)
    if i.groove >= i.body:
        raise impossible("groove", "is {g}, through the body's outside, {o}; give less", g=i.groove, o=i.body)
    if 2 * i.breadth >= i.groove:
        raise impossible(
            "breadth",
            "is {e}, half of the groove's {g} or more, so that the ring has no hole; give less",
            e=i.breadth,
            g=i.groove,
        )
    if i.ring >= i.width:
        raise impossible(
            "ring", "is {s}, and does not go into a groove of {m}; give less", s=i.ring, m=i.width
        )
    if i.least_play >= i.most_play:
        raise impossible(
            "most_play", "is {b}, not more than the least, {a}; give more", a=i.least_play, b=i.most_play
        )


def seat_and_strength_of(i: In) -> tuple[Seat, Strength]:
    depth = Out.depth((i.groove - i.bore) / 2)
    bears = _strength_of(i)
    seat = Seat(
        depth,
        Out.lip_ratio(i.lip / depth),
        Out.wall((i.body - i.groove) / 2),
        Out.overhang(i.breadth - depth),
        Out.play(i.width - i.ring),
    )
    return seat, bears


def _strength_of(i: In) -> Strength:
    body = MATERIALS[i.body_material]
    pressed = constant(
        "R_e",
        "Yield stress of the body, pressed",
        MPA,
        body.compressive_yield_at(REFERENCE),
        sources.MATERIALS,
    )
    pulled = constant("R_p", "Yield stress of the body, pulled", MPA, body.yield_20, sources.MATERIALS)
    ring = Out.ring_capacity(PI * i.bore * i.ring * i.ring_shear / i.ring_safety, sources.SNAP_RING)
    groove = Out.groove_capacity(annulus(i.bore, i.groove) * pressed / i.groove_safety, sources.SNAP_RING)
    lip = Out.lip_capacity(PI * i.groove * i.lip * pulled / sqrt(3) / i.groove_safety, sources.MISES)
    capacity = Out.capacity(least(ring, groove, lip))
    weakest = min(zip((ring, groove, lip), (RING, GROOVE, LIP)), key=lambda pair: float(pair[0]))[1]
    thrust = step("F_k", "Load with its blows", NEWTON, i.impact * i.load)
    return Strength(ring, groove, lip, capacity, weakest, thrust, Out.used(thrust / capacity))
