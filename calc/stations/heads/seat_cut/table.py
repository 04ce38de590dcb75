"""The cuts in their order."""

from calc.core.result import Table, say
from calc.stations.heads.seat_cut.asked import In
from calc.stations.heads.seat_cut.cuts import Cuts


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
