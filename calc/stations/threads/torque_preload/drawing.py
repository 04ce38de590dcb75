"""Preload over torque, with the band that friction leaves open."""

from calc.core.drawing import Axis, Plot, Series
from calc.core.result import say
from calc.core.working import Number
from calc.stations.shared.forms import KILONEWTON, TIGHTENING
from calc.stations.threads.torque_preload.tightening import Tightening


def preload_over_torque(made: Tightening, most: Number) -> Plot:
    """`most` is the preload that uses 90 % of yield."""
    at, limit = float(made.torque), float(most)
    end = min(max(1.3 * at, 1.15 * limit * float(made.slippery.nut)), 4 * at)

    def line(lever: Number) -> tuple:
        return ((0.0, 0.0), (end, end / float(lever)))

    return Plot(
        "Preload over torque",
        say(
            "{T} makes {F}, between {l} and {h} as friction falls.",
            T=made.torque,
            F=made.preload,
            l=made.low,
            h=made.high,
        ),
        Axis("Torque", TIGHTENING),
        Axis("Preload", KILONEWTON),
        (
            Series("", line(made.meant.nut)),
            Series("rough", line(made.rough.nut), "dashed"),
            Series("slippery", line(made.slippery.nut), "dashed"),
            Series("90 % of yield", ((0.0, limit), (end, limit)), "limit"),
        ),
        ((at, float(made.preload), "yours"),),
    )
