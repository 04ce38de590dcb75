"""What a tap makes of a drilled hole."""

from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import Number
from calc.formulas.screw_threads import FULL_CUT, FULL_FORMED, share_of_thread
from calc.reference.standards.threads import Limits, Thread, internal
from calc.stations.shared.thread_sizes import NOTHING, least_and_most, length, pair
from calc.stations.threads.tap_drill.asked import CUT, FORMED, In

# Common practice, no source: a formed crest is not full, so its bore may be as wide as in the loose class.
FORMED_CLASS = "7H"


class Tapping(NamedTuple):
    """A tap of that kind, its thread, and the limits by which the hole is judged."""

    kind: str
    thread: Thread
    hole: Limits

    @property
    def full(self) -> float:
        """What a thread of 100 % takes off the diameter, over the pitch."""
        return FULL_CUT if self.kind == CUT else FULL_FORMED

    def share_of(self, drill: float) -> float:
        """Share of thread that a drill, m, leaves."""
        return float(share_of_thread(self.thread.d, self.thread.P, drill, self.full))

    def bore_of(self, drill: float) -> float:
        """Bore that the tap leaves of a hole drilled so, m."""
        if self.kind == CUT:
            return drill
        return self.thread.d - FULL_CUT * self.thread.P * self.share_of(drill)

    def within(self, drill: float) -> bool:
        """Does the bore keep to its class?"""
        low, high = least_and_most(self.hole.minor)
        return low - NOTHING <= self.bore_of(drill) <= high + NOTHING


def tapping_of(i: In) -> Tapping:
    thread, hole, _ = pair(i.size, i.fit)
    if i.tap == FORMED and thread.system == "metric":
        hole = internal(thread, FORMED_CLASS)
    return Tapping(i.tap, thread, hole)


def refuse_other_hole(own: Number, thread: Thread) -> None:
    """A hole that is none for that thread."""
    low, high = thread.d - 1.4 * thread.P, thread.d - 0.2 * thread.P
    if not low <= float(own) < high:
        raise impossible(
            "own",
            "is {own}, no hole for {thread}; give {low} to {high}, or choose the thread that it belongs to",
            own=own,
            thread=thread.words,
            low=length(low),
            high=length(high),
        )
