"""What is to be known beside the verdict."""

from calc.core.result import Remark, note, warning
from calc.stations.heads.chamber_volume.asked import WANTED, In
from calc.stations.heads.chamber_volume.chambers import NOTHING, Chambers

# A liquid that warms by more had better be left to come to the head's warmth, K; common practice, no source.
MUCH = 2.0


def remarks_on(i: In, chambers: Chambers) -> tuple[Remark | None, ...]:
    return (
        note(
            "Read the burette at the bottom of its curve, eye level with it, before and after. Fill"
            " without a pause: spirit dries away meanwhile."
        ),
        (
            warning("One chamber alone does not show whether they are alike: fill the others too.")
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
