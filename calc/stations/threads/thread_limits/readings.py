"""Measured diameters against their limits."""

from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import Number
from calc.reference.standards.threads import Thread
from calc.stations.shared.thread_sizes import NOTHING, length
from calc.stations.threads.thread_limits.asked import BOLT, HOLE, In
from calc.stations.threads.thread_limits.zone import Sizes


class Reading(NamedTuple):
    words: str
    read: Number
    low: Number
    high: Number
    part: str

    @property
    def by(self) -> float:
        """How far it lies outside, m; less than nothing within."""
        return max(float(self.low) - float(self.read), float(self.read) - float(self.high))

    @property
    def out(self) -> bool:
        return self.by > NOTHING

    @property
    def way(self) -> str:
        return (
            "small" if float(self.low) - float(self.read) > float(self.read) - float(self.high) else "large"
        )

    @property
    def can_be_cut(self) -> bool:
        return (self.part, self.way) in ((BOLT, "large"), (HOLE, "small"))


def readings_of(i: In, thread: Thread, basic: tuple[float, float], sizes: Sizes) -> list[Reading]:
    """Of crest and pitch diameter, whose basic sizes are those; refuses what is no such thread."""
    for field, read, size in (("crest_read", i.crest_read, basic[0]), ("pitch_read", i.pitch_read, basic[1])):
        if read is not None and abs(float(read) - size) > 0.4 * thread.P:
            raise impossible(
                field,
                "is {read}, far from the {basic} of {thread}; measure again, or choose the thread that it"
                " belongs to",
                read=read,
                basic=length(size),
                thread=thread.words,
            )
    found = []
    if i.crest_read is not None:
        crest = "Outside" if i.part == BOLT else "Bore"
        found.append(Reading(crest, i.crest_read, sizes.crest_low, sizes.crest_high, i.part))
    if i.pitch_read is not None:
        found.append(Reading("Pitch diameter", i.pitch_read, sizes.pitch_low, sizes.pitch_high, i.part))
    return found
