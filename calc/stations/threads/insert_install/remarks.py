"""What is said beside the verdict of a thread insert."""

from calc.core.result import Remark, note, warning
from calc.core.working import constant
from calc.reference.materials import MATERIALS
from calc.stations.shared.clamped import grows_more
from calc.stations.shared.forms import DEGREES_C
from calc.stations.threads.insert_install.asked import UNTOLD, WIRE, In


def remarks_on(i: In) -> tuple[Remark | None, ...]:
    return (
        note("The insert's own data sheet comes before these sizes: makers' inserts of one thread differ."),
        (
            note(
                "A wire insert's outside follows from the stud's thread: the thread chosen for a solid"
                " one was not used."
            )
            if i.kind == WIRE and i.outside != UNTOLD
            else None
        ),
        _creeps(i),
        grows_more(i.clamped, i.hot, i.hot_force),
        (
            warning(
                "A solid insert is stiffer than a wire one and needs its holes square: set it under a"
                " drill press or a bush."
            )
            if i.kind != WIRE
            else None
        ),
    )


def _creeps(i: In) -> Remark | None:
    metal = MATERIALS[i.parent]
    creeps = metal.limit_temperature
    if i.parent != "mg-az91" or creeps is None or float(i.temperature) < creeps - 1e-9:
        return None
    return warning(
        "A stressed thread in {name} creeps from {t} on: expect to tighten it again, and keep the"
        " preload low.",
        name=metal.name,
        t=constant("", "", DEGREES_C, creeps),
    )
