"""Do the bolts bear it without yield, and does the cap stay shut?"""

from calc.core.conformance import past
from calc.core.result import Judged, say
from calc.core.working import Number
from calc.stations.rods.rod_bolt.asked import TORQUE, In
from calc.stations.rods.rod_bolt.clamp import Clamp
from calc.stations.rods.rod_bolt.tightening import Tightening
from calc.stations.shared.bolts import TARGET


def verdict_on(i: In, made: Tightening, clamp: Clamp, used: Number) -> Judged:
    return _fails(clamp, used) or _to_look_at(i, clamp, used) or _not_the_engines(i) or _holds(i, made, clamp)


def _fails(clamp: Clamp, used: Number) -> Judged | None:
    if past(used, 1):
        return (
            "fail",
            say("Bolt yields: {u} at the high end", u=used),
            (
                "Less torque, or a stronger bolt as the maker allows. A bolt that was pulled so far is not"
                " used again."
            ),
        )
    if not past(clamp.margin, 1):
        return (
            "fail",
            say("Cap lifts from {n} on", n=clamp.opens),
            "Do not run it so fast. More preload needs a stronger bolt; a lighter piston helps as much.",
        )
    return None


def _to_look_at(i: In, clamp: Clamp, used: Number) -> Judged | None:
    if past(used, TARGET):
        return (
            "attention",
            say("Near yield: {u} at the high end", u=used),
            (
                "It holds with nothing to spare. Tighten by stretch, or with a wrench that was checked, and"
                " new bolts each time."
            ),
        )
    if past(i.least_margin, clamp.margin):
        return (
            "attention",
            say("Little clamp: {m} times the pull", m=clamp.margin),
            say(
                "{w} times is wanted. An overspeed would open it: from {n} on the cap lifts.",
                w=i.least_margin,
                n=clamp.opens,
            ),
        )
    return None


def _not_the_engines(i: In) -> Judged | None:
    """A torque outside of what the engine's sheet allows."""
    if i.known != TORQUE:
        return None
    if i.least_torque is not None and past(i.least_torque, i.torque):
        bound, words = i.least_torque, "at least"
    elif i.most_torque is not None and past(i.torque, i.most_torque):
        bound, words = i.most_torque, "at most"
    else:
        return None
    return (
        "attention",
        say("Not the engine's torque: {T}, {least} " + words, T=i.torque, least=bound),
        (
            "The bolt bears it and the cap stays shut, by the friction taken. Set the torque that its"
            " sheet allows, unless bolt or nut are others and their maker says so."
        ),
    )


def _holds(i: In, made: Tightening, clamp: Clamp) -> Judged:
    return (
        "pass",
        say("Holds {m} times the pull at {n}", m=clamp.margin, n=i.speed),
        say(
            "Tighten both in turn, in two steps. Expect {low} to {high}, and about {s} of stretch.",
            low=made.low,
            high=made.high,
            s=made.stretch,
        ),
    )
