"""What is said beside the verdict of saddles that may be line-bored."""

from calc.core.conformance import past
from calc.core.result import Remark, note, warning
from calc.core.working import constant
from calc.stations.crankcase.line_bore.asked import LEAST, In
from calc.stations.crankcase.line_bore.gears import Gears
from calc.stations.crankcase.line_bore.saddles import Saddles
from calc.stations.crankcase.line_bore.size import BORE, Size
from calc.stations.shared.forms import SIZE

WORTH = 0.002e-3  # m: what another place of the bar saves is told from here on


def remarks_on(i: In, saddles: Saddles, size: Size, gears: Gears) -> tuple[Remark | None, ...]:
    return (
        note(
            "A saddle whose centre is off the line by some amount must grow by twice that before it cleans"
            " up: the line decides, not only the size."
        ),
        _another_bar(i, saddles),
        _old_distance(i, saddles, size, gears),
        _cut(i, saddles),
        warning(
            "A line hone follows the line that it finds: it makes size and finish, not a straighter line."
        )
        if size.state == BORE and float(saddles.farthest) > float(i.line_new)
        else None,
        note(
            "Its shells are {o} larger outside. Ream the dowel holes and the oil holes' countersinks again"
            " where the cut took them.",
            o=size.oversize,
        )
        if size.bored and float(size.oversize) > float(size.now)
        else None,
        note("Backlash, then: {j}.", j=gears.then) if gears.then is not None and size.bored else None,
    )


def _another_bar(i: In, saddles: Saddles) -> Remark | None:
    if i.bar == LEAST or saddles.wasted < WORTH:
        return None
    return note(
        "With the bar where least is cut, the saddles would clean up {g} smaller.",
        g=constant("", "", SIZE, saddles.wasted),
    )


def _old_distance(i: In, saddles: Saddles, size: Size, gears: Gears) -> Remark | None:
    """The bar through the end saddles leaves the crank where it was at the gears; it may reach the same
    size."""
    if (
        i.bar != LEAST
        or not size.bored
        or abs(float(gears.moved)) < WORTH
        or past(saddles.by_ends, size.high)
    ):
        return None
    return note(
        "A bar through the end saddles cleans them up at {d}, for the same shells, and leaves the crank where"
        " it was from the cam: the better choice where the backlash is right as it is.",
        d=saddles.by_ends,
    )


def _cut(i: In, saddles: Saddles) -> Remark | None:
    if not saddles.cut:
        return None
    return warning(
        "The cut takes {f} off every bore across the split, and nothing along it: the cam's bores and all"
        " else that lies on the joint must be opened again too. Crank and cam keep their distance, as both"
        " lie on the joint.",
        f=constant("", "", SIZE, float(i.cut_right + i.cut_left)),
    )
