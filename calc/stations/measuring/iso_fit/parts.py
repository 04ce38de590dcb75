"""Parts as measured against their limits, and what can be done about one that is out of them."""

from calc.core.result import Table, Text, say
from calc.core.working import Number
from calc.stations.measuring.iso_fit.limits import NOTHING, Fit, Limits, length


class Part:
    """A measured part against its limits: out of them or not, which way, by how much, curable by a cut?"""

    def __init__(self, name: str, read: Number, limits: Limits):
        self.name, self.read, self.low, self.high = name, read, limits.low, limits.high
        under, over = float(self.low) - float(read), float(read) - float(self.high)
        self.out = max(under, over) > NOTHING
        self.way, by = ("small", under) if under > over else ("large", over)
        self.by = length(by)
        self.can_be_cut = (name, self.way) in (("Hole", "small"), ("Shaft", "large"))

    def remedy(self, fit: Fit) -> Text:
        """What can be done: metal comes off, it does not come back."""
        to_limits = sorted(abs(float(self.read) - float(limit)) for limit in (self.low, self.high))
        if self.can_be_cut:
            return say(
                "Open it by {a} to {b}." if self.name == "Hole" else "Take {a} to {b} off its diameter.",
                a=length(to_limits[0]),
                b=length(to_limits[1]),
            )
        mate, sign = ("shaft", -1) if self.name == "Hole" else ("hole", 1)
        a, b = sorted(float(self.read) + sign * float(gap) for gap in (fit.tightest, fit.loosest))
        return say(
            "What is gone is gone. A {mate} of {a} to {b} would give {fit} with it; ask whether that may be"
            " fitted.",
            mate=mate,
            a=length(a),
            b=length(b),
            fit=fit.name,
        )


def play(gap: float) -> Text:
    """A clearance in words: play, or grip."""
    return say("{g} play" if gap >= 0 else "{g} grip", g=length(abs(gap)))


def part_by_part(parts: list[Part]) -> Table:
    return Table(
        "Your parts",
        ("Part", "May be", "Is", ""),
        tuple(
            (
                part.name,
                say("{a} to {b}", a=part.low, b=part.high),
                part.read,
                say("too {way} by {by}", way=part.way, by=part.by) if part.out else "in limits",
            )
            for part in parts
        ),
        tuple("fail" if part.out else "pass" for part in parts),
    )
