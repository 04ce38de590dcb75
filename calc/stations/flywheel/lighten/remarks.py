"""What is said beside the verdict on a lightened flywheel."""

from calc.core.result import Remark, note, warning
from calc.core.working import constant
from calc.stations.flywheel.lighten.asked import In
from calc.stations.flywheel.lighten.cuts import Cut
from calc.stations.flywheel.lighten.sums import Sums
from calc.stations.flywheel.lighten.verdict import Found
from calc.stations.shared.forms import SHARE

UNLIKE = (
    0.08  # share by which scales and section may differ: holes, chamfers and teeth are not in the section
)


def remarks_on(i: In, cuts: list[Cut], sums: Sums, found: Found) -> tuple[Remark | None, ...]:
    apart = float(sums.section_mass) / float(i.mass) - 1
    engine = any(c.side == "engine" for c in cuts)
    faced = any(c.side == "clutch" and float(c.outer) > float(i.lining_inside) for c in cuts)
    return (
        warning(
            "By the section that was typed it weighs {s}, and the balance says {m}, {p} apart: look for"
            " a slip in"
            " a diameter or a thickness.",
            s=sums.section_mass,
            m=i.mass,
            p=constant("", "", SHARE, abs(apart)),
        )
        if abs(apart) > UNLIKE
        else None,
        note(
            "A cut on the clutch's side that reaches the friction face or the cover's face moves the"
            " clutch step:"
            " both faces are cut alike, see the calculator for it."
        )
        if faced
        else None,
        note("No seat of a ring gear is told, so nothing is said about cuts under it.")
        if i.seat is None
        else None,
        note("The depth for the inertia wanted needs a cut on the engine's side: type where it is to lie.")
        if i.wanted is not None and not engine
        else None,
        warning(
            "The inertia wanted is above what the other cuts leave, so that this cut would have to add"
            " metal: make"
            " the others shallower."
        )
        if float(sums.depth) < 0
        else None,
        note(
            "Mass counts by the square of its distance from the axis: a gram at the rim is worth four"
            " halfway in."
        ),
    )
