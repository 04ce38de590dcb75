"""Does the bolt break before one of the threads strips?"""

from calc.core.advice import at_least
from calc.core.conformance import past
from calc.core.result import Judged, say
from calc.core.working import Number
from calc.reference.standards.threads import Thread
from calc.stations.shared.forms import ROUGH
from calc.stations.threads.engagement.asked import In
from calc.stations.threads.engagement.forces import Forces


def verdict_on(i: In, thread: Thread, forces: Forces) -> Judged:
    which = "hole's" if forces.hole_strips <= forces.bolt_strips else "bolt's"
    need, longer = at_least(forces.wanted, ROUGH), _longer(which, thread, forces)
    hot = None if i.pull is None else _gives_way_hot(i.pull, which, longer, need, forces)
    return hot or _strips_first(which, longer, need, forces) or _breaks_first(need, forces)


def _longer(which: str, thread: Thread, forces: Forces) -> str:
    """What to do where a thread strips first; {w} is the length."""
    if which == "bolt's":
        return "Engage {w} or more."
    if float(forces.wanted) <= 2 * thread.d:
        return "Engage {w} or more, or fit a wire thread insert."
    return (
        "Length alone does not help, it would take {w}: fit a wire thread insert, a larger thread, or"
        " a weaker bolt by the maker's data."
    )


def _gives_way_hot(pull: Number, which: str, longer: str, need: Number, forces: Forces) -> Judged | None:
    if past(pull, forces.breaks):
        return (
            "fail",
            say("Bolt breaks hot: bears {b}", b=forces.breaks),
            say(
                "{p} pulls at it. Take a larger or a stronger bolt, or less preload if the maker allows it.",
                p=pull,
            ),
        )
    if past(pull, forces.strips):
        return (
            "fail",
            say(which.capitalize() + " thread strips hot: bears {f}", f=forces.strips),
            say("{p} pulls at it. " + longer, p=pull, w=need),
        )
    return None


def _strips_first(which: str, longer: str, need: Number, forces: Forces) -> Judged | None:
    if past(forces.yields, forces.used):
        return (
            "fail",
            say(which.capitalize() + " thread strips first, at {f}", f=forces.strips),
            say(
                "The bolt would not even yield. " + longer + " Do not tighten it to the bolt's torque.",
                w=need,
            ),
        )
    if past(1, forces.used):
        return (
            "attention",
            say("Bolt may yield, then the " + which + " thread strips"),
            say(
                "No bolt of its class breaks before. Overtightened, the thread strips at {f}. " + longer,
                f=forces.strips,
                w=need,
            ),
        )
    if past(forces.strong, forces.hole_strips):
        return (
            "attention",
            say("May strip: a strong bolt bears {b}", b=forces.strong),
            say(
                "The hole's thread strips at {f}. The weakest bolt of the class breaks before, the strongest"
                " does not. " + longer,
                f=forces.hole_strips,
                w=need,
            ),
        )
    return None


def _breaks_first(need: Number, forces: Forces) -> Judged:
    return (
        "pass",
        (
            say("Bolt breaks first, at {f} to {s}", f=forces.breaks, s=forces.strong)
            if forces.strong > forces.breaks
            else say("Bolt breaks first, at {f}", f=forces.breaks)
        ),
        say("Thread is spared: a broken bolt can be replaced. {w} of full threads would be enough.", w=need),
    )
