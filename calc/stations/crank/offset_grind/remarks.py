"""What is said beside the verdict of a longer stroke: all that moves with it."""

from calc.core.conformance import past
from calc.core.result import Remark, note, warning
from calc.core.working import constant
from calc.stations.crank.offset_grind.asked import In
from calc.stations.crank.offset_grind.verdict import Found
from calc.stations.shared.forms import COARSE


def remarks_on(i: In, found: Found) -> tuple[Remark | None, ...]:
    return (
        note(
            "The longer stroke moves no pushrod. A shim under the cylinders does: the heads stand out by"
            " {z}, so pushrods and their tubes want as much more.",
            z=found.shim,
        ),
        note(
            "The piston comes down {r} further, too: look for room between skirt and cheeks, and that the"
            " pin's bore and the skirt stay in the cylinder.",
            r=found.shim,
        ),
        note("Grind all four alike, then balance the crank again with its flywheel: the pins are lighter."),
        note(
            "{s} come off the inner side. A journal that was hardened has no hard skin left there: it is"
            " hardened again before it is finished, as the crank's maker says.",
            s=found.inner_stock,
        ),
        (
            warning(
                "Without a shim the crown would stand {over} out of the cylinder: it strikes the head.",
                over=constant("", "", COARSE, -float(found.deck)),
            )
            if past(0.0, found.deck)
            else None
        ),
        (
            warning(
                "The room of the rods to case and cam was not read: each throw takes {r} of it. Try it with"
                " clay, all the way round.",
                r=found.shim,
            )
            if found.room is None
            else None
        ),
        (
            warning("No limit is known for the room of the rods: {q} is not judged.", q=found.room)
            if found.room is not None and i.room_least is None
            else None
        ),
        (
            warning("No limit is known for a pin out of its angle: {e} is not judged.", e=found.turned)
            if i.index_most is None and float(found.turned)
            else None
        ),
    )
