"""Two flanks above and one below, cut along the axis, with the wires in them."""

from math import pi

from calc.core.drawing import Area, Drawing, Label, Line, arc, clip
from calc.core.result import say
from calc.core.working import Number
from calc.reference.standards.threads import HEIGHT, Thread


def wires_in_the_thread(thread: Thread, reading: Number, wire: Number, found: Number) -> Drawing:
    """The bolt's body is shortened, or little would be seen of the wires."""
    P, w = thread.P, float(wire)
    core = 1.6 * P  # drawn half thickness of the bolt at its pitch line
    # a wire of radius w/2 between flanks of 30°: (w/2)/sin 30° above the sharp groove's bottom
    centre = core - HEIGHT * P / 2 + w
    left, right, top = -2.4 * P, 2.4 * P, centre + w / 2
    circles = [arc(place, w / 2, 0, 2 * pi, 40) for place in ((0, centre), (P, centre), (P / 2, -centre))]
    return Drawing(
        "Three wires in the thread",
        say(
            "Two wires above and one below: reading {m} with wires of {w}, pitch diameter {d}.",
            m=reading,
            w=wire,
            d=found,
        ),
        (
            Area(clip(_bolt(P, core), left, -2 * core, right, 2 * core), "a"),
            *(shape for circle in circles for shape in (Area(circle, ""), Line(circle))),
            Line(((left - 0.3 * P, core), (right + 0.3 * P, core)), "centre"),
            Line(((left - 0.3 * P, -core), (right + 0.3 * P, -core)), "centre"),
            Line(((-1.2 * P, top), (2.2 * P, top)), "thin"),
            Line(((-1.2 * P, -top), (2.2 * P, -top)), "thin"),
            Label((-0.1 * P, top + 0.25 * P), say("M {m}", m=reading)),
            Label((left - 0.35 * P, core - 0.1 * P), "pitch line", "end"),
        ),
        "the bolt is drawn thinner than it is, wires and thread are to one scale",
    )


def _bolt(P: float, core: float) -> tuple:
    """Outline of the bolt over seven turns; its pitch lines lie `core` above and below the axis."""
    H, up = HEIGHT * P, []
    for i in range(-3, 4):
        x = i * P
        up += [
            (x - P / 2 + P / 16, core + 3 * H / 8),
            (x - P / 8, core - H / 4),
            (x + P / 8, core - H / 4),
            (x + P / 2 - P / 16, core + 3 * H / 8),
        ]
    down = [(x + P / 2, -y) for x, y in up]
    return (*up, *reversed(down))
