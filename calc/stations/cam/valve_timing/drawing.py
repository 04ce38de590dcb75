"""The timing as a diagram: one turn of the crank from dead centre to dead centre, both valves on it."""

import math

from calc.core.drawing import Circle, Drawing, Label, Line, Shape, arc
from calc.core.result import say
from calc.core.working import Number
from calc.stations.cam.valve_timing.timing import Timing

OUTER, INNER = 40e-3, 32e-3  # any: a diagram has no size


def _at(crank: float) -> float:
    """Direction on the paper of a crank angle after top dead centre: up, and on with the clock."""
    return math.pi / 2 - crank


def _span(radius: float, opens: float, closes: float, style: str) -> tuple[Shape, ...]:
    a, b = _at(opens), _at(closes)
    ends = [
        Line(((0.0, 0.0), (1.1 * radius * math.cos(x), 1.1 * radius * math.sin(x))), "thin") for x in (a, b)
    ]
    return (Line(arc((0.0, 0.0), radius, b, a, 72), style), *ends)


def _label(crank: float, words: str, number: Number) -> Label:
    x, y = math.cos(_at(crank)), math.sin(_at(crank))
    anchor = "start" if x > 0 else "end"
    far = 1.22 * OUTER
    return Label((far * x, far * y), say(f"{words} {{n}}", n=number), anchor)


def diagram(t: Timing) -> Drawing:
    io, ic = -float(t.in_opens), math.pi + float(t.in_closes)
    eo, ec = math.pi - float(t.ex_opens) - 2 * math.pi, float(t.ex_closes)
    return Drawing(
        "Timing, as the crank turns with the clock",
        say(
            "Intake opens {io} before top dead centre and closes {ic} after bottom dead centre; exhaust opens"
            " {eo} before bottom dead centre and closes {ec} after top dead centre.",
            io=t.in_opens,
            ic=t.in_closes,
            eo=t.ex_opens,
            ec=t.ex_closes,
        ),
        (
            Circle((0.0, 0.0), 1.08 * OUTER, style="hidden"),
            Line(((0.0, -1.2 * OUTER), (0.0, 1.2 * OUTER)), "centre"),
            *_span(OUTER, io, ic, "outline"),
            *_span(INNER, eo, ec, "band"),
            Label((0.0, 1.42 * OUTER), "top dead centre"),
            Label((0.0, -1.42 * OUTER), "bottom dead centre"),
            Label((0.45 * OUTER, 0.12 * OUTER), "intake"),
            Label((-0.42 * OUTER, 0.12 * OUTER), "exhaust"),
            _label(ic, "closes", t.in_closes),
            _label(eo, "opens", t.ex_opens),
            _label(io - 0.12, "opens", t.in_opens),
            _label(ec + 0.12, "closes", t.ex_closes),
        ),
    )
