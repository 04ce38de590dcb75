"""The heat at which a head loses what its heat treatment gave it."""

from calc.core.result import Remark, warning
from calc.core.working import Number, constant
from calc.reference.materials import Material
from calc.stations.shared.forms import DEGREES_C


def loses_temper(head: Material, temperature: Number) -> Remark | None:
    """A warning where the head runs hotter than its alloy bears."""
    limit = head.limit_temperature
    if not limit or float(temperature) <= limit:
        return None
    return warning(
        "{name} begins to lose its temper above {t}.", name=head.name, t=constant("", "", DEGREES_C, limit)
    )
