"""What is to be known beside the verdict."""

from calc.core.result import Remark, note
from calc.stations.heads.seat_cut.seated import Seated


def remarks_on(valve: Seated) -> tuple[Remark | None, ...]:
    return (
        note(
            "Angles are counted from the plane square to the stem: 30° is flat, 60° steep. Where a cutter"
            " is marked from the stem, 30° and 60° change places."
        ),
        (
            note(
                "A new ring: the rise is counted from the valve lying on the uncut ring. Measure the stem"
                " height like that, so that it can be judged, or go by the valve's edge, {z} below the"
                " ring's face.",
                z=valve.valve_depth,
            )
            if not valve.judged
            else None
        ),
        (
            note(
                "Valve and seat have different angles: they touch on a line, at {d}, and the other edge"
                " of the band stands {g} open. Do not lap that away.",
                d=valve.touch,
                g=valve.gap,
            )
            if valve.gap > 0
            else None
        ),
    )
