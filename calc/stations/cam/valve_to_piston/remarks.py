"""What is said beside the verdict of a valve that comes near the piston."""

from calc.core.result import Remark, note, warning
from calc.core.working import constant
from calc.stations.cam.valve_to_piston.asked import CLAY, LOBE, In
from calc.stations.cam.valve_to_piston.nearest import Nearest
from calc.stations.cam.valve_to_piston.verdict import where
from calc.stations.shared.forms import SIZE


def remarks_on(i: In, found: Nearest) -> tuple[Remark | None, ...]:
    return (
        note("It is not nearest at top dead centre but {at}.", at=where(found.angle))
        if found.angle is not None and float(found.angle) and not found.last_row
        else None,
        note(
            "Each degree that the cam is timed nearer to top dead centre for this valve takes {d}. After any"
            " change of timing, read it anew.",
            d=constant("", "", SIZE, found.degree),
        )
        if found.degree
        else None,
        note(
            "The lash, {s}, is taken off: it may close when hot, and then the valve opens by so much more.",
            s=i.lash_read,
        )
        if float(i.lash_read)
        else None,
        note(
            "A hydraulic lifter bleeds down under the dial's spring or the clay: put in a solid checking"
            " lifter, or what is read is too much."
        )
        if i.how != LOBE
        else None,
        note(
            "Turn the crank slowly, by hand, a whole cycle; grease valve and clay so that it does not stick,"
            " and cut it with a wet blade. Head nuts at full torque."
        )
        if i.how == CLAY
        else None,
        warning("No limit is known for the room beside the edge: {e} is not judged.", e=i.edge)
        if i.edge is not None and i.edge_needed is None
        else None,
        note("Room beside the valve's edge was not read: look for a pocket that is narrower than the valve.")
        if i.edge is None
        else None,
    )
