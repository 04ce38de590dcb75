"""Clamp between cap and rod, for each bolt, over the speed."""

from calc.core.drawing import Axis, Plot, Series
from calc.core.result import say
from calc.core.working import Number
from calc.stations.rods.rod_bolt.clamp import Clamp
from calc.stations.shared.forms import KILONEWTON, TURNS


def clamp_over_speed(expected: Number, clamp: Clamp, speed: Number) -> Plot:
    """`expected` is the preload that presses cap on rod as it was meant."""
    held, off, top = float(clamp.held), float(clamp.off), float(speed)
    end = max(1.15 * top, min(1.1 * float(clamp.opens), 3 * top))

    def line(start: float) -> tuple:
        speeds = [end * i / 40 for i in range(41)]
        return tuple((n, start - off * (n / top) ** 2) for n in speeds)

    return Plot(
        "Clamp over speed",
        say(
            "{c} of clamp are left for each bolt at the highest speed, {m} times what opens the joint.",
            c=clamp.left,
            m=clamp.margin,
        ),
        Axis("Speed", TURNS),
        Axis("Clamp for each bolt", KILONEWTON),
        (
            Series("", line(held)),
            Series("expected", line(float(expected)), "dashed"),
            Series("cap lifts below", ((0.0, 0.0), (end, 0.0)), "limit"),
        ),
        ((top, held - off, "yours, at least"),),
    )
