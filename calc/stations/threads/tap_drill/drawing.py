"""Half of the tapped hole's profile, to scale, with the height that the drill leaves."""

from calc.core.drawing import Area, Drawing, Label, Line
from calc.core.result import say
from calc.core.working import Number
from calc.reference.standards.threads import HEIGHT, Thread


def section(thread: Thread, bore: Number, drill: Number) -> Drawing:
    P, r, top = thread.P, thread.d / 2, 0.75 * thread.P
    inner, H = float(bore) / 2, HEIGHT * P
    points: list[tuple[float, float]] = []
    for i in range(3):
        x = i * P
        # where the flank meets the bore, from the middle of the groove
        half = min(max((r + H / 8 - inner) / H * P / 2, P / 16), P / 2)
        points += [
            (x + P / 2 - half, inner),
            (x + P / 2 - P / 16, r),
            (x + P / 2 + P / 16, r),
            (x + P / 2 + half, inner),
        ]
    return Drawing(
        "Thread that the drill leaves",
        say(
            "Profile of the tapped hole, bore {b} from a drill of {d}; the broken line is the basic bore.",
            b=bore,
            d=drill,
        ),
        (
            Area(((0, inner), *points, (3 * P, inner), (3 * P, r + top), (0, r + top)), "a"),
            Line(((-0.2 * P, thread.minor / 2), (3.2 * P, thread.minor / 2)), "hidden"),
            Label((1.5 * P, thread.minor / 2 - 0.45 * P), say("bore {b}", b=bore)),
            Label((-0.25 * P, thread.minor / 2 - 0.06 * P), "basic bore", "end"),
        ),
    )
