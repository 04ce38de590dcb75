"""The cuts in their order, and what is to be known beside the verdict."""

from calc.core.result import Remark, Table, note, say
from calc.stations.heads.seat_cut.asked import In
from calc.stations.heads.seat_cut.cuts import Cuts
from calc.stations.heads.seat_cut.seated import Seated


def cut_by_cut(i: In, cuts: Cuts) -> Table:
    return Table(
        "Cuts, in this order",
        ("Cutter", "Angle", "Feed from first touch", "Cut until"),
        (
            ("Seat", i.seat_angle, cuts.seat_feed, "bright all round"),
            ("Upper", i.upper_angle, cuts.upper_feed, say("outer edge at {d}", d=cuts.outer)),
            ("Throat", i.throat_angle, cuts.throat_feed, say("inner edge at {d}", d=cuts.inner)),
        ),
    )


def remarks_on(valve: Seated) -> tuple[Remark | None, ...]:
    return (
        note(
            "Angles are counted from the plane square to the stem: 30° is flat, 60° steep. Where a cutter"
            " is marked from the stem, 30° and 60° change places."
        ),
        (
            note(
                "A new ring: the rise is counted from the valve lying on it uncut. Measure the stem"
                " height so, for it to be judged, or go by the valve's edge, {z} below the ring's face.",
                z=valve.valve_depth,
            )
            if not valve.judged
            else None
        ),
        (
            note(
                "Valve and seat have unlike angles: a line carries, at {d}, and the other edge of the"
                " band stands {g} open. Do not lap it away.",
                d=valve.touch,
                g=valve.gap,
            )
            if valve.gap > 0
            else None
        ),
    )
