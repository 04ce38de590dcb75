"""Does the valve stay clear of the piston, and what is done where it does not?"""

from calc.core.conformance import past
from calc.core.result import Judged, Text, say
from calc.core.working import Number, constant
from calc.declare.calculator import Limit
from calc.stations.cam.valve_to_piston.asked import LOBE, In
from calc.stations.cam.valve_to_piston.nearest import Nearest
from calc.stations.shared.forms import COARSE, TENTHS_OF_DEGREE

_MORE = say(
    "More room comes from valve pockets cut deeper, where the crown is thick enough, from cylinder shims, or"
    " from a cam timed so that this valve is farther from top dead centre. Then read it again."
)


def wanted(i: In) -> Number:
    """Never less than what is needed."""
    return i.needed if i.needed > i.wanted else i.wanted


def verdict_on(i: In, found: Nearest) -> Judged:
    return _hits(i, found) or _beside(i) or _look_again(i, found) or _clear(i, found)


def where(angle: Number | None) -> Text:
    """As one who turns the crank finds it."""
    if angle is None:
        return say("somewhere near top dead centre")
    size = constant("", "", TENTHS_OF_DEGREE, abs(float(angle)))
    return say("{a} {side} top dead centre", a=size, side="after" if float(angle) >= 0 else "before")


def _hits(i: In, found: Nearest) -> Judged | None:
    if found.running <= 0:
        return (
            "fail",
            say("It hits: {x} too little", x=constant("", "", COARSE, abs(float(found.running)))),
            say("Do not turn this engine by its starter. {more}", more=_MORE),
        )
    if past(i.needed, found.running):
        return (
            "fail",
            say("Too near: {m} of {n} running", m=found.running, n=i.needed),
            say(
                "It is least {at}. Read it again there. If it stays, do not run it. {more}",
                at=where(found.angle),
                more=_MORE,
            ),
        )
    return None


def _beside(i: In) -> Judged | None:
    if i.edge is not None and i.edge_needed is not None and past(i.edge_needed, i.edge):
        return (
            "fail",
            say("Too near beside: {e} of {n}", e=i.edge, n=i.edge_needed),
            "The valve's edge may touch the wall of its pocket. Open the pocket on that side, or take the"
            " right valve or piston; then lay clay in again.",
        )
    return None


def _look_again(i: In, found: Nearest) -> Judged | None:
    if found.last_row:
        return (
            "attention",
            "The least is the last reading: read on",
            "Beyond it the valve may come nearer still. Read a few angles more on that side, until the way"
            " grows again.",
        )
    if past(wanted(i), found.running):
        return (
            "attention",
            say("Little room: {m}, {n} wanted", m=found.running, n=wanted(i)),
            say(
                "It is least {at}. Read it again there, at every cylinder. It may run where valves and"
                " springs are sound and the engine is never turned too fast.",
                at=where(found.angle),
            ),
        )
    if i.edge is not None and i.edge_wanted is not None and past(i.edge_wanted, i.edge):
        return (
            "attention",
            say("Little room beside: {e}, {n} wanted", e=i.edge, n=i.edge_wanted),
            "See that the piston stands with its arrow the right way and its pocket under this valve. Then"
            " open the pocket on that side.",
        )
    return None


def _clear(i: In, found: Nearest) -> Judged:
    if found.angle is None:
        nearest = say("Clear: {m} left when running", m=found.running)
    else:
        nearest = say("Clear: {m} left {at}", m=found.running, at=where(found.angle))
    if i.how == LOBE:
        return (
            "pass",
            nearest,
            say(
                "The sum takes a smooth lobe: prove it once by clay or dial, on the worst cylinder,"
                " around {at}.",
                at=where(found.angle),
            ),
        )
    return (
        "pass",
        nearest,
        "Write it down by cylinder and valve. Read the other valve, and the other cylinders.",
    )


def limits_of(i: In, found: Nearest) -> tuple[Limit, ...]:
    limits = [
        Limit("the room to the piston", found.running, low=0.0),
        Limit("the room to the piston", found.running, low=i.needed),
        Limit("the room to the piston", found.running, low=wanted(i), level="attention"),
    ]
    if i.edge is not None and i.edge_needed is not None:
        limits.append(Limit("the room beside the edge", i.edge, low=i.edge_needed))
    if i.edge is not None and i.edge_wanted is not None:
        limits.append(Limit("the room beside the edge", i.edge, low=i.edge_wanted, level="attention"))
    return tuple(limits)
