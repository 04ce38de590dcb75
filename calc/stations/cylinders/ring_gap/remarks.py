"""What is said beside the verdict of a piston's rings."""

from calc.core.result import Remark, note, warning
from calc.stations.cylinders.ring_gap.asked import In
from calc.stations.cylinders.ring_gap.ring import Rings

WORN = 0.02e-3  # m: from here on it matters where in the bore the gap was read


def remarks_on(i: In, rings: Rings) -> tuple[Remark | None, ...]:
    elsewhere = i.smallest is not None and float(i.bore) - float(i.smallest) > WORN
    unread = [r.name for r in rings.each if r.side is None]
    return (
        warning(
            "The gap was read where the bore is worn. Where it is smallest, the ends are {g} apart, and"
            " that is"
            " what is judged.",
            g=rings.gap,
        )
        if elsewhere
        else None,
        note(
            "In the worn part the widest gap is {t}: π times the wear of the bore is added there. New"
            " rings do not close that: judge the bore by itself.",
            t=rings.top,
        )
        if i.largest is not None and float(i.largest) - float(i.bore) > WORN
        else None,
        note("Side clearance was not read of: {n}.", n=", ".join(unread)) if unread else None,
        note(
            "Where neither engine nor rings come with a gap, 3.5 to 4.5 thousandths of a millimetre for each"
            " millimetre of bore are common practice; no source."
        ),
    )
