"""What is said beside the verdict of a rod that was read for bend and twist."""

from calc.core.result import Remark, note, warning
from calc.core.working import Number, constant
from calc.stations.rods.rod_align.asked import In
from calc.stations.rods.rod_align.verdict import good
from calc.stations.shared.forms import SIZE


def remarks_on(i: In, over: Number, gauge: Number, lean: Number) -> tuple[Remark | None, ...]:
    """`gauge` is the gauge's own error over the span, the larger of the two planes'."""
    return (
        (
            note(
                "Without a reading of the rod turned end for end, the gauge's own error counts as the rod's."
            )
            if i.bend_turned is None or i.twist_turned is None
            else None
        ),
        (
            warning(
                "The gauge itself is out by {o} over the span: have it put right, or always read both ways.",
                o=constant("", "", SIZE, abs(float(gauge))),
            )
            if abs(float(gauge)) > float(good(i.bend_new, i.bend_worn) * i.span / over)
            else None
        ),
        (
            note(
                "Whether both ends are in line was not read: a rod can be straight and yet stand beside"
                " its place."
            )
            if i.offset is None
            else None
        ),
        (
            warning("No limit is known for ends out of line: {o} is not judged.", o=i.offset)
            if i.offset is not None and i.offset_worn is None
            else None
        ),
        note("Bend makes the piston lean by {s} along the crank; twist does not, it turns the pin.", s=lean),
    )
