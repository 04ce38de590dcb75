"""The joint, side by side."""

from calc.core.conformance import past
from calc.core.result import Table
from calc.core.working import constant
from calc.stations.heads.port_section.asked import In
from calc.stations.heads.port_section.joint import Joint
from calc.stations.shared.forms import COARSE


def side_by_side(i: In, joint: Joint) -> Table:
    def state(wider: float) -> str:
        return "fail" if past(-wider, i.most_step) else "attention" if past(wider, i.most_drop) else "pass"

    return Table(
        "The joint, side by side",
        ("Side", "Second opening wider by"),
        tuple((name, constant("", "", COARSE, wider)) for name, wider in joint.sides),
        tuple(state(wider) for _, wider in joint.sides),
    )
