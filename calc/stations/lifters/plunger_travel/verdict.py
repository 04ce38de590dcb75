"""Does the plunger stay off both its stops, and what puts it there?"""

from calc.core.conformance import past
from calc.core.result import Judged, Text, say
from calc.stations.lifters.plunger_travel.asked import In
from calc.stations.lifters.plunger_travel.travel import Left, Pushrod, length


def verdict_on(i: In, left: Left, rod: Pushrod) -> Judged:
    return (
        _on_a_stop(i, left, rod)
        or _near_a_stop(i, left, rod)
        or (
            "pass",
            say("Stays off both stops: {a}, {b} left", a=left.top, b=left.bottom),
            "The pushrod that you have will do: fit it, and order no other. Measure every valve: seats,"
            " tips and stands differ.",
        )
    )


def _on_a_stop(i: In, left: Left, rod: Pushrod) -> Judged | None:
    if not past(i.travel, i.preload):
        return (
            "fail",
            "Stands on its lower stop, cold",
            say(
                "There it holds the valve open, and the valve burns. How much too long the rod is does not"
                " show: measure again with a pushrod of {L}.",
                L=rod.wanted,
            ),
        )
    if left.top <= 0:
        return (
            "fail",
            say("Reaches the upper stop: {x} short", x=length(-float(left.top))),
            say("There it takes up no lash and ticks. {cure}", cure=_cure(i, left, rod)),
        )
    if left.bottom <= 0:
        return (
            "fail",
            say("Reaches the lower stop: {x} short", x=length(-float(left.bottom))),
            say("There it holds the valve open, and the valve burns. {cure}", cure=_cure(i, left, rod)),
        )
    return None


def _near_a_stop(i: In, left: Left, rod: Pushrod) -> Judged | None:
    for words, room, least in (("upper", left.top, i.least_top), ("lower", left.bottom, i.least_bottom)):
        if past(least, room):
            return (
                "attention",
                say(f"Near the {words} stop: {{x}} left", x=room),
                say("Measure again. {cure}", cure=_cure(i, left, rod)),
            )
    return None


def _cure(i: In, left: Left, rod: Pushrod) -> Text:
    if left.preload_least > left.preload_most:
        return say(
            "No pushrod serves: {s} of travel is too little for what moves. Take a unit with more travel, or"
            " a pushrod that grows as the case does.",
            s=i.travel,
        )
    if float(rod.shim) > 0:
        return say(
            "A pushrod of {L} brings it to the middle, or shims of {t} under the rocker stand.",
            L=rod.wanted,
            t=rod.shim,
        )
    return say("A pushrod of {L} brings it to the middle.", L=rod.wanted)
