"""The bar on its rolls."""

import math

from calc.core.drawing import Area, Dimension, Drawing, Label, Line, arc, box
from calc.core.result import say
from calc.core.working import Number


def bar_on_blocks(length: Number, stack: Number, angle_set: Number) -> Drawing:
    """The bar on its rolls, one of them on blocks, to scale."""
    L, a = float(length), float(angle_set)
    roll, thick = L * 0.07, L * 0.1
    cos, sin = math.cos(a), math.sin(a)

    def at(along: float, up: float) -> tuple[float, float]:
        return along * cos - up * sin, roll + along * sin + up * cos

    bar = (
        at(-roll, roll * 0.7),
        at(L + roll, roll * 0.7),
        at(L + roll, roll * 0.7 + thick),
        at(-roll, roll * 0.7 + thick),
    )
    ends = at(0, 0), at(L, 0)
    h = L * sin
    return Drawing(
        "Sine bar",
        say(
            "A bar of {L} between its rolls, {h} of blocks under one of them, stands at {a}.",
            L=length,
            h=stack,
            a=angle_set,
        ),
        (
            Area(bar, "", "cut"),
            *(Line(arc(c, roll, 0, 2 * math.pi), "outline") for c in ends),
            *((Area(box(L * cos - roll * 1.3, 0, L * cos + roll * 1.3, h), "a"),) if h > L * 0.002 else ()),
            Line(((-roll * 2, 0), (L * 1.6, 0)), "outline"),
            Line(ends, "centre"),
            Line(((0, roll), (L * 0.45, roll)), "thin"),
            Line(arc((0, roll), L * 0.4, 0, a), "thin"),
            Label((L * 0.3, roll * 0.35), say("α {a}", a=angle_set)),
            Dimension(*ends, length, thick * 1.9, "L"),
            Dimension((L * cos + roll * 1.3, h), (L * cos + roll * 1.3, 0), stack, L * 0.08, "h"),
        ),
    )
