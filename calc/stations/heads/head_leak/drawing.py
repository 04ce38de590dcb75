"""The pressure over the test, drawn."""

from calc.core.drawing import Axis, Plot, Points, Series
from calc.core.result import say
from calc.core.working import Number
from calc.formulas import leak as gas
from calc.stations.heads.head_leak.asked import In
from calc.stations.heads.head_leak.leak import Leak
from calc.stations.heads.head_leak.told import KPA, WHOLE_SECONDS, kpa


def pressure_plot(i: In, found: Leak) -> Plot:
    """Pressure over time: as this leak lets it fall, as one at the limit would, and what was read."""
    p_1, p_2, t, v = map(float, (i.start, i.end, i.time, i.volume))

    def falling(rate: Number) -> Points:
        flow = float(rate) / p_1
        return tuple(
            (x, float(gas.difference_after(p_1, flow, v, x))) for x in (t * n / 24 for n in range(25))
        )

    drift = p_1 - p_2 - float(found.loss)
    return Plot(
        "Pressure over the test",
        say(
            "A leak of {q} would take it from {a} to {b}; {c} was read.",
            q=found.leak,
            a=i.start,
            b=kpa(falling(found.at_start)[-1][1]),
            c=i.end,
        ),
        Axis("Time", WHOLE_SECONDS),
        Axis("Pressure from the room's", KPA),
        (
            Series("this leak" if drift else "", falling(found.at_start)),
            Series("leak at the limit", falling(found.limit_rate), "limit"),
            *((Series("temperature alone", ((0.0, p_1), (t, p_1 - drift)), "dashed"),) if drift else ()),
        ),
        ((t, p_2, "read"),),
    )
