"""The stem's tip from above, and how far the contact runs across it."""

from calc.core.drawing import Circle, Drawing, Label, Line
from calc.core.result import say
from calc.stations.cam.pushrod_length.asked import In
from calc.stations.cam.pushrod_length.needed import Needed

STEM = 0.008  # m: a usual stem; only its outline hangs on it


def tips(i: In, found: Needed) -> Drawing | None:
    read = [rod for rod in found.rods if rod.shut is not None and rod.opened is not None]
    if not read:
        return None
    shapes: list = []
    for n, rod in enumerate(read):
        x, y = (n % 4) * 2.1 * STEM, -(n // 4) * 2.1 * STEM
        left = x - STEM / 2
        shapes += [
            Circle((x, y), STEM / 2, ""),
            *(
                Line(((left + float(at), y - 0.25 * STEM), (left + float(at), y + 0.25 * STEM)), style)
                for at, style in ((rod.shut, "outline"), (rod.opened, "hidden"))
                if at is not None
            ),
            Label((x, y - 0.8 * STEM), rod.name),
        ]
    return Drawing(
        "Contact on each tip, shut; dashed, at full lift",
        say("The rocker's shaft lies to the left. The largest run is {c}.", c=found.run),
        tuple(shapes),
        say("tips drawn {d} wide", d="8 mm"),
    )
