"""The speed at which the spring no longer holds the follower on its lobe."""

from typing import NamedTuple

from calc.core.kinds import RATIO
from calc.core.result import impossible
from calc.core.working import PI, Number, Value, constant, form, sqrt, step
from calc.formulas.lobe import bend, least_between, rise
from calc.reference import sources
from calc.stations.cam.valve_float.asked import In
from calc.stations.cam.valve_float.told import Out

FLANK = form(RATIO, 3)
HALF_WAY = 0.5  # of the flank: all three laws push the follower before it, and hold it back after it


class Leaving(NamedTuple):
    speed: Number
    margin: Number
    mass: Number
    lift: Number
    spring: Number
    inertia: Number
    load_wanted: Number


def felt_at_valve(
    valve: Value, retainer: Value, spring: Value, rocker: Value, pushrod: Value, lifter: Value, ratio: Value
) -> Value:
    """Mass that moves as if at the valve, kg: what moves on the pushrod's side by the ratio squared, a third
    of the spring."""
    return valve + retainer + spring / 3 + rocker + (pushrod + lifter) / ratio**2


def spring_at(share: Value, shut: Value, opened: Value) -> Value:
    """Spring's force at a share of the full lift, N."""
    return shut + (opened - shut) * share


def speed_at(force: Value, mass: Value, lift: Value, flank: Value, bent: Value) -> Value:
    """Speed of the crank, turns a second, at which a follower that is held back by `bent` (second derivative
    of the lobe's law, as a positive number) needs that force: the cam turns half as fast."""
    return flank / PI * sqrt(force / (mass * lift * bent))


def leaving(i: In) -> Leaving:
    if i.open_load <= i.seat_load:
        raise impossible(
            "open_load",
            "is {b}, no more than with the valve shut, {a}; give more",
            a=i.seat_load,
            b=i.open_load,
        )
    mass = Out.mass(
        felt_at_valve(i.valve_mass, i.retainer, i.spring, i.rocker, i.pushrod, i.lifter, i.ratio),
        sources.LEAVES_LOBE,
    )
    shut, opened = float(i.seat_load), float(i.open_load)

    def bears(x: float) -> float:
        held = -float(bend(i.law, x))
        return float(spring_at(float(rise(i.law, x)), shut, opened)) / held if held > 1e-9 else 1e12

    x = constant(
        "x", "Share of the flank at which it leaves, by search", FLANK, least_between(bears, HALF_WAY, 1.0)
    )
    share = step("s", "Share of the lift there", FLANK, rise(i.law, x), sources.LOBE_LAWS)
    bent = step("s_2", "How fast the lobe slows it there", FLANK, -bend(i.law, x), sources.LOBE_LAWS)
    lift = i.lobe_lift * i.ratio
    force = Out.spring(spring_at(share, i.seat_load, i.open_load))
    speed = Out.speed(speed_at(force, mass, lift, i.flank, bent), sources.LEAVES_LOBE)
    margin = Out.margin(speed / i.top_speed)
    inertia = Out.inertia(mass * lift * bent * (PI * i.top_speed / i.flank) ** 2)
    return Leaving(
        speed,
        margin,
        mass,
        Out.lift(lift * share),
        force,
        inertia,
        Out.load_wanted(i.open_load * (i.margin / margin) ** 2),
    )
