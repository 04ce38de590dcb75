"""What is to be known beside the verdict."""

from calc.core.result import Remark, note, warning
from calc.stations.heads.port_section.asked import In
from calc.stations.heads.port_section.joint import Joint

BETWEEN = 0.05e-3  # m: so much more than on any side, and the worst step lies between the sides


def remarks_on(i: In, joint: Joint) -> tuple[Remark | None, ...]:
    worst = min(wider for _, wider in joint.sides)
    return (
        (
            warning(
                "The worst step, {f}, lies between the four sides, where the shapes differ: look at the"
                " drawing.",
                f=joint.facing,
            )
            if joint.facing > i.most_step and float(joint.facing) > -worst + BETWEEN
            else None
        ),
        note(
            "At mid stroke the gas goes about 1.6 times as fast as its mean, and faster still where the"
            " valve is not yet open."
        ),
        note(
            "Gas that leaves a smaller opening into a larger one passes the edge; the other way round it"
            " strikes it. So a step may only fall away."
        ),
        note("The gasket counts as well: its hole must be no smaller than both."),
    )
