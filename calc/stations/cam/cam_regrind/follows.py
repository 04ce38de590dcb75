"""What follows in the engine from a lobe on another circle, and which calculator tells it."""

from calc.core.conformance import past
from calc.core.result import Table
from calc.core.working import Number
from calc.stations.cam.cam_regrind.asked import HYDRAULIC, In
from calc.stations.cam.cam_regrind.ground import Ground
from calc.stations.cam.cam_regrind.verdict import ends, valve_most


def what_follows(i: In, found: Ground) -> Table:
    low, high = ends(i)
    hydraulic = i.lifters == HYDRAULIC
    rows = (
        ("Lifter stands nearer the cam by", found.make_up, "Pushrod length", ""),
        ("Lash opens, before it is set, by", found.lash, "Lash, cold and running", ""),
        (
            "Plunger pressed in" if hydraulic else "Adjuster off its middle",
            found.stands,
            "Plunger in its travel" if hydraulic else "Pushrod length",
            _state(found.stands, low, high),
        ),
        ("Lobe lifts", found.lift, "A lobe from its lifts", _state(found.lift, i.lift_low, i.lift_high)),
        (
            "Valve opens",
            found.valve_lift,
            "Rocker: lift and sweep",
            _state(found.valve_lift, None, valve_most(i)),
        ),
        ("Springs pressed farther by", found.more, "Valve springs; Valve float", ""),
        ("Valve nearer to the piston by, at most", found.more, "Valve to piston", ""),
        ("Rocker's half lift lower by", found.half, "Rocker: lift and sweep", ""),
        ("Opening and closing", "read anew", "Valve timing; Timing the cam by the wheel", ""),
    )
    return Table(
        "What follows",
        ("What", "Then", "Told by"),
        tuple(row[:3] for row in rows),
        tuple(row[3] for row in rows),
    )


def _state(number: Number, low: Number | None, high: Number | None) -> str:
    """Of a row that the sheet judges; the others are judged by their own calculators."""
    if low is None and high is None:
        return ""
    out = low is not None and past(low, number) or high is not None and past(number, high)
    return "attention" if out else "pass"
