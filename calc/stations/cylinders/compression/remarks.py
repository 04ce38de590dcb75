"""What is to be known beside the ratio."""

from calc.core.result import Remark, note, warning
from calc.core.working import constant
from calc.stations.cylinders.compression.asked import FILLED, KNOWN, In
from calc.stations.cylinders.compression.told import CC
from calc.stations.cylinders.compression.volumes import Volumes
from calc.stations.shared.forms import COARSE


def remarks_on(i: In, v: Volumes) -> tuple[Remark | None, ...]:
    bulk = constant("", "", CC, abs(float(v.crown)))
    return (
        warning(
            "The piston stands {t} proud of the cylinder's face: turn the crank by hand with the head on"
            " before anything else does, with clay on the crown.",
            t=constant("", "", COARSE, -float(i.deck)),
        )
        if i.deck < 0
        else None,
        warning(
            "The step is told as {d} across, no wider than the bore: it is measured at the head, where the"
            " cylinder's face comes to rest.",
            d=i.step_across,
        )
        if i.step_depth and i.step_across < i.bore
        else None,
        note("The crown is taken as a bowl of {v}, which makes the ratio lower.", v=bulk)
        if i.crown_by == KNOWN and v.crown < 0
        else None,
        note("By filling the crown is a " + ("dome" if v.crown > 0 else "bowl") + " of {v}.", v=bulk)
        if i.crown_by == FILLED
        else None,
        note(
            "The gas also fills {v} round the top land; with that the ratio is {e}. Makers do not count it,"
            " and it is not judged.",
            v=v.land,
            e=v.ratio_land,
        ),
    )
