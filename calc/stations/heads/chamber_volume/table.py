"""Each chamber by itself, after the cut."""

from calc.core.conformance import past
from calc.core.result import Table
from calc.core.working import constant
from calc.stations.heads.chamber_volume.asked import In
from calc.stations.heads.chamber_volume.chambers import NOTHING, Chamber, Chambers
from calc.stations.heads.chamber_volume.told import CC, CC_FINE


def chamber_by_chamber(i: In, chambers: Chambers) -> Table:
    def row(c: Chamber) -> tuple:
        short = float(chambers.target - c.volume)
        return (
            c.name,
            constant("", "", CC, float(c.volume)),
            constant("", "", CC_FINE, short) if short > NOTHING else "–",
            constant("", "", CC, float(c.volume - i.wanted)),
            c.read,
        )

    def state(c: Chamber) -> str:
        if past(i.low, c.volume) or past(c.volume, i.high):
            return "fail"
        return "attention" if past(chambers.largest - c.volume, i.most_spread) else "pass"

    return Table(
        "Chamber by chamber",
        ("Chamber", "After the cut", "Grind out", "Off the volume wanted", "As read"),
        tuple(map(row, chambers.each)),
        tuple(map(state, chambers.each)),
    )
