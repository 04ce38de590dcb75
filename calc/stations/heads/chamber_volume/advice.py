"""Chamber by chamber, and what is to be known beside the verdict."""

from calc.core.conformance import past
from calc.core.result import Remark, Table, note, warning
from calc.core.working import constant
from calc.stations.heads.chamber_volume.asked import WANTED, In
from calc.stations.heads.chamber_volume.chambers import Chamber, Chambers
from calc.stations.heads.chamber_volume.told import CC, CC_FINE

NOTHING = 0.5e-8  # m³: less than this is not to be measured with a burette
MUCH = 2.0  # K: a liquid that warms by more had better be left to come to the head's warmth


def remarks_on(i: In, chambers: Chambers) -> tuple[Remark | None, ...]:
    return (
        note(
            "Read the burette at the bottom of its curve, eye level with it, before and after. Fill"
            " without a pause: spirit dries away meanwhile."
        ),
        (
            warning("One chamber alone says nothing of likeness: fill the others too.")
            if len(chambers.each) == 1
            else None
        ),
        (
            warning(
                "The liquid warmed by {t}, which was taken out. Better let head and liquid lie side by"
                " side until they are equally warm.",
                t=i.warming,
            )
            if abs(float(i.warming)) > MUCH
            else None
        ),
        (
            note(
                "A cut brings the cylinder and all the valve gear nearer: look at deck height, pushrods"
                " and manifold afterwards, and cut both heads alike."
            )
            if i.cut > 0
            else None
        ),
        (
            note(
                "Chambers larger than the volume wanted cannot be ground to it: the step would have to be"
                " cut by {t} for the largest.",
                t=chambers.cut_wanted,
            )
            if i.aim == WANTED and float(chambers.largest - i.wanted) > NOTHING
            else None
        ),
    )


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
