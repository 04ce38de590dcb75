"""The wheel with its four readings, top dead centre and the lobe's centre."""

import math

from calc.core.drawing import Circle, Drawing, Label, Line, arc
from calc.core.result import say
from calc.stations.cam.cam_phase.asked import In
from calc.stations.cam.cam_phase.phase import Phase

RADIUS = 40e-3  # any: the wheel has no size


def wheel(i: In, p: Phase) -> Drawing:
    top = float(p.top)

    def at(reading: float, radius: float) -> tuple[float, float]:
        """Top dead centre up, the wheel's numbers on with the clock."""
        a = math.pi / 2 - (reading - top)
        return radius * math.cos(a), radius * math.sin(a)

    side = 1 if i.valve == "intake" else -1
    middle = top + side * float(p.centre)
    marks = (
        (float(i.stop_before), "stop"),
        (float(i.stop_after), "stop"),
        (float(i.opening), "opens"),
        (float(i.closing), "closes"),
    )
    opens = math.pi / 2 - (float(i.opening) - top)
    open_for = (float(i.closing) - float(i.opening)) % (2 * math.pi)
    return Drawing(
        "The wheel, top dead centre up",
        say(
            "Top dead centre stands at {t} of the wheel, the lobe's centre {c} from it, {w} wanted.",
            t=p.top,
            c=p.centre,
            w=i.wanted,
        ),
        (
            Circle((0.0, 0.0), RADIUS, style="outline"),
            Line(((0.0, 0.0), (0.0, 1.15 * RADIUS)), "centre"),
            Line(arc((0.0, 0.0), 0.8 * RADIUS, opens - open_for, opens, 72), "thin"),
            *(Line((at(x, 0.9 * RADIUS), at(x, 1.1 * RADIUS))) for x, _ in marks),
            *(Label(at(x, 1.3 * RADIUS), words) for x, words in marks),
            Line(((0.0, 0.0), at(middle, RADIUS)), "band"),
            Label(at(middle, 0.6 * RADIUS), p.centre),
            Label((0.0, 1.5 * RADIUS), "top dead centre"),
        ),
    )
