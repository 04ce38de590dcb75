"""Does it go in, and does it bear the pull and the torque?"""

from calc.core.conformance import past
from calc.core.result import Judged, say
from calc.core.working import Number
from calc.stations.shared.forms import COARSE
from calc.stations.shared.thread_sizes import length
from calc.stations.threads.sheet_insert.asked import COLLAR, RIVET, In
from calc.stations.threads.sheet_insert.made import Made

ENOUGH_PULL, ENOUGH_TORQUE = 2.0, 1.25  # over what is asked; common practice, no source


def verdict_on(i: In, made: Made, edge: Number, pull_share: Number, turn_share: Number) -> Judged:
    return (
        _does_not_fit(i, edge)
        or _gives_way(i, made)
        or _barely(made, pull_share, turn_share)
        or _holds(i, made, pull_share)
    )


def _does_not_fit(i: In, edge: Number) -> Judged | None:
    if i.way == RIVET and i.thickness < i.grip_least:
        return (
            "fail",
            say("Sheet too thin by {x} for the grip", x=length(i.grip_least - i.thickness, COARSE)),
            "The upset closes on nothing and the nut stays loose. Take one with a shorter grip.",
        )
    if i.way == RIVET and i.thickness > i.grip_most:
        return (
            "fail",
            say("Sheet too thick by {x} for the grip", x=length(i.thickness - i.grip_most, COARSE)),
            "The nut cannot fold behind it. Take one with a longer grip.",
        )
    if past(edge, i.edge):
        return (
            "fail",
            say("Too near the edge by {x}", x=length(edge - i.edge, COARSE)),
            say(
                "The sheet bulges or tears out. Keep {e} from centre to edge, or take a smaller thread.",
                e=edge,
            ),
        )
    return None


def _gives_way(i: In, made: Made) -> Judged | None:
    """What gives way is the sheet or, where it is the weaker, the machine screw."""
    if made.pull < i.pull:
        screw = made.screw is not None and made.pull >= made.screw[0]
        return (
            "fail",
            say(("Screw too weak" if screw else "Pulls out") + ": bears {p} of {f}", p=made.pull, f=i.pull),
            (
                "Take a larger thread, or more of them."
                if screw
                else "Take a larger thread, thicker sheet, or a plate behind it with a plain nut."
            ),
        )
    if made.turn < i.torque:
        screw = made.screw is not None and made.turn >= made.screw[1]
        return (
            "fail",
            say("Screw gives way at {t}" if screw else "Spins or strips at {t}", t=made.turn),
            "Less than it will be tightened with. Take a larger thread, "
            + ("or less torque." if screw else "a body that cannot turn, or less torque."),
        )
    return None


def _barely(made: Made, pull_share: Number, turn_share: Number) -> Judged | None:
    if pull_share < ENOUGH_PULL:
        return (
            "attention",
            say("Bears {s} times the pull only", s=pull_share),
            "An estimate wants twice. Try it on a scrap, or use two.",
        )
    if turn_share < ENOUGH_TORQUE:
        return (
            "attention",
            say("Torque near the limit of {t}", t=made.turn),
            "Try it on a scrap first, grease the screw, and tighten by hand.",
        )
    return None


def _holds(i: In, made: Made, pull_share: Number) -> Judged:
    return (
        "pass",
        say("Holds: {s} times the pull", s=pull_share),
        say(
            "{verb} {h}, take off the burr on both sides, and tighten to no more than {t}.",
            verb="Pierce the pilot hole of" if i.way == COLLAR else "Drill or punch",
            h=made.hole,
            t=i.torque,
        ),
    )
