"""A half-shell in its seat, one end flush, the other standing proud, drawn larger."""

import math

from calc.core.drawing import Area, Drawing, Label, Line, arc, box
from calc.core.result import say
from calc.core.working import Number


def seat(housing: Number, wall: Number, proud: Number, wall_round: Number) -> Drawing:
    R, w, a = float(housing) / 2, float(wall), float(proud)
    outer = R + min(float(wall_round), 0.8 * R)
    times = max(1, math.floor(0.12 * R / abs(a))) if abs(a) > 1e-7 else 1
    top = a * times
    lower = (*arc((0, 0), R, -math.pi, 0), *reversed(arc((0, 0), R - w, -math.pi, 0)))
    return Drawing(
        "Shell in its seat, one end flush",
        say(
            "Half a housing of {D} with a shell of {w} pressed home: left flush with the joint, right it"
            " stands {a} proud.",
            D=housing,
            w=wall,
            a=proud,
        ),
        (
            Area((*arc((0, 0), outer, -math.pi, 0), *reversed(arc((0, 0), R, -math.pi, 0))), "a"),
            Area(lower, "b"),
            Area(box(R - w, min(top, 0.0), R, max(top, 0.0)), "b"),
            Line(((-1.15 * outer, 0), (1.15 * outer, 0)), "centre"),
            Label((0.35 * R, 0.3 * R), say("{a} proud", a=proud), target=(R - w / 2, max(top, 0.0))),
            Label((-0.6 * R, 0.3 * R), "flush", target=(-R + w / 2, 0.0)),
        ),
        say("what stands proud drawn {n} times as high", n=str(times)),
    )
