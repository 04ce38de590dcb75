"""Does the insert go in, and does the metal round it hold the stud?"""

from math import floor
from typing import NamedTuple

from calc.core.conformance import past
from calc.core.result import Judged, Text, say
from calc.stations.shared.forms import COARSE
from calc.stations.shared.thread_sizes import length
from calc.stations.threads.insert_install.asked import BLIND, In
from calc.stations.threads.insert_install.depths import Depths
from calc.stations.threads.insert_install.edge import Edge
from calc.stations.threads.insert_install.hole import Hole
from calc.stations.threads.insert_install.strength import Strength

DEEPEST = 1.0  # pitches under the face: deeper, and the stud's first turns hold nothing


class Planned(NamedTuple):
    hole: Hole
    depths: Depths
    edge: Edge
    strength: Strength


def verdict_on(i: In, planned: Planned) -> Judged:
    hole, depths, edge, strength = planned
    return (
        _no_room(i, hole, depths, edge)
        or _too_weak(strength)
        or _barely_strong(i, strength)
        or _barely_room(i, depths, edge)
        or _goes_in(i, hole, strength)
    )


def _no_room(i: In, hole: Hole, depths: Depths, edge: Edge) -> Judged | None:
    if depths.setting < 0:
        return (
            "fail",
            say("Stands {x} above the face", x=length(abs(depths.setting), COARSE)),
            (
                "Set it a quarter to one pitch under the face, or the joint is clamped on the insert and"
                " pulls it out."
            ),
        )
    if past(0.0, depths.left):
        if i.way == BLIND:
            headline, do = "Breaks through by {x}", "Do not drill. {shorter}"
        else:
            headline, do = "Stands out below by {x}", "Take a shorter one. {shorter}"
        return (
            "fail",
            say(headline, x=length(abs(depths.left), COARSE)),
            say(do, shorter=_shorter(i, hole, depths)),
        )
    if past(edge.least, i.edge):
        return (
            "fail",
            say("Too near the edge by {x}", x=length(edge.least - i.edge, COARSE)),
            say(
                "The wall would bulge or crack. {least} is needed: move the hole, take an insert with a"
                " smaller outside, or have metal built up.",
                least=edge.least,
            ),
        )
    return None


def _shorter(i: In, hole: Hole, depths: Depths) -> Text | str:
    """The longest insert that would leave enough under it, in quarters of a diameter."""
    floor_wanted = float(i.floor_least) if i.way == BLIND else 0.0
    longest = floor((float(i.length) - (floor_wanted - float(depths.left)) / float(hole.nominal)) * 4) / 4
    if longest < 1:
        return "No insert of one diameter or more goes in here."
    return say("An insert of {q} diameters would do.", q=f"{longest:g}")


def _too_weak(strength: Strength) -> Judged | None:
    if not past(1, strength.safety):
        return None
    pull, force = strength.pull, strength.force
    return (
        "fail",
        say(
            "Pulls out: bears {p} of {f}",
            p=pull.held_to(float(force), None),
            f=force.held_to(None, float(pull)),
        ),
        "Take a longer insert, one with a larger outside, or less preload if the maker allows it.",
    )


def _barely_strong(i: In, strength: Strength) -> Judged | None:
    if not past(i.safety_least, strength.safety):
        return None
    return (
        "attention",
        say("Bears {s} times the stud's pull only", s=strength.safety),
        say(
            "{w} times is wanted of {f}, the most it pulls. A longer insert, or a larger outside, gives"
            " more.",
            w=i.safety_least,
            f=strength.force,
        ),
    )


def _barely_room(i: In, depths: Depths, edge: Edge) -> Judged | None:
    if i.way == BLIND and past(i.floor_least, depths.left):
        return (
            "attention",
            say("Only {x} left under the hole", x=length(depths.left, COARSE)),
            (
                "Drill to a stop, and look for an oil way behind it. A bottoming tap with a shorter lead"
                " leaves more."
            ),
        )
    if past(edge.wished, i.edge):
        return (
            "attention",
            say("Near the edge: {e}", e=i.edge),
            say(
                "It will do, but {w} is better in light metal. Use a sharp tap, and no driver that spreads"
                " the insert.",
                w=edge.wished,
            ),
        )
    if not 0.25 <= i.under <= DEEPEST:
        return (
            "attention",
            say("Insert's top {s} under the face", s=depths.setting),
            (
                "Common practice is a quarter to one pitch: higher, and it can rise into the joint; deeper,"
                " and metal above it carries nothing."
            ),
        )
    return None


def _goes_in(i: In, hole: Hole, strength: Strength) -> Judged:
    return (
        "pass",
        say("Goes in, bears {s} times the stud's pull", s=strength.safety),
        say(
            "Drill {d}, square to the face, to {how}; countersink, tap with the insert's own tap, blow out,"
            " and set it.",
            d=hole.drill,
            how="a stop" if i.way == BLIND else "the far side",
        ),
    )
