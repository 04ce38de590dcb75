"""Does this cam stand where the engine's data want it?"""

import math

from calc.core.conformance import past
from calc.core.result import Judged, Remark, note, say
from calc.core.working import Number, constant
from calc.declare.calculator import Limit
from calc.stations.cam.valve_timing.asked import In
from calc.stations.cam.valve_timing.timing import Timing
from calc.stations.shared.forms import TENTHS_OF_DEGREE


def verdict_on(i: In, t: Timing) -> Judged:
    intake = _off(t.in_centre, i.intake_low, i.intake_high)
    exhaust = _off(t.ex_centre, i.exhaust_low, i.exhaust_high)
    both = "Read wheel and dead centre again. If it stays, "
    if intake and exhaust and intake == -exhaust:
        late = intake > 0
        return (
            "attention",
            say(
                "Cam {way}: intake at {c}, exhaust at {e}",
                way="late" if late else "early",
                c=t.in_centre,
                e=t.ex_centre,
            ),
            both + "both lobes are off the same way: the gear is a tooth out, or its key or dowel is moved."
            " A whole tooth shows as far more than a few degrees. Until the valves are proved clear of the"
            " pistons it is not turned by the starter.",
        )
    for off, name, centre, low, high in (
        (intake, "Intake", t.in_centre, i.intake_low, i.intake_high),
        (exhaust, "Exhaust", t.ex_centre, i.exhaust_low, i.exhaust_high),
    ):
        if off:
            return (
                "attention",
                say(f"{name} centre at {{c}}, {{l}} to {{h}} told", c=centre, l=low, h=high),
                both + "it is another cam, or one reground to another separation: turning it in its gear does"
                " not bring both right. Prove the valves clear of the pistons before it runs.",
            )
    return (
        "pass",
        say("Timed: intake centre {c}, exhaust {e}", c=t.in_centre, e=t.ex_centre),
        "Turn the engine twice by hand and read one event again. Then prove the valves clear of the pistons.",
    )


def _off(centre: Number, low: Number, high: Number) -> int:
    """1 where a centre lies past its highest, −1 where below its lowest."""
    return 1 if past(centre, high) else -1 if past(low, centre) else 0


def limits_of(i: In, t: Timing) -> tuple[Limit, ...]:
    return (
        Limit("the intake centre", t.in_centre, i.intake_low, i.intake_high, "attention"),
        Limit("the exhaust centre", t.ex_centre, i.exhaust_low, i.exhaust_high, "attention"),
    )


def remarks_on(i: In, t: Timing) -> tuple[Remark | None, ...]:
    apart = float(t.overlap)
    return (
        note(
            "All counts at one lift of the lifter. Write that lift beside the events: at another the same cam"
            " has other ones."
        )
        if i.checking is None
        else note("All is told at {h} of lift. At another lift the same cam has other events.", h=i.checking),
        note(
            "There is no overlap at this lift: both valves are less open than that for {s}.",
            s=constant("", "", TENTHS_OF_DEGREE, -apart),
        )
        if apart < -math.radians(0.05)
        else None,
        note(
            "The separation is told at the cam, all else at the crank, which turns twice as far. A cam moved"
            " in its gear changes all four events alike, and neither separation nor overlap."
        ),
    )
