"""The stud and what it clamps, cut along it."""

from calc.core.drawing import Area, Dimension, Drawing, Line, box
from calc.core.result import say
from calc.stations.crankcase.stud_preload_hot.asked import In
from calc.stations.crankcase.stud_preload_hot.joint import Joint
from calc.stations.shared.drawings import on_both_sides


def section(i: In, joint: Joint) -> Drawing:
    """Case, cylinder and head one upon the other round the stud, cut; lengths and the stud to scale."""
    d, grip = float(i.shank), float(joint.grip)
    wide = max(3.2 * d, 0.16 * grip)
    hole = 0.62 * d
    heights = [0.0]
    for part in (i.case, i.cylinder, i.head):
        heights.append(heights[-1] + float(part))
    nut = 0.8 * d
    layers = [
        (box(hole, low, wide * size, high), hatch)
        for low, high, hatch, size in zip(heights, heights[1:], "aba", (1.25, 0.8, 1.0))
        if high > low
    ]
    return Drawing(
        "Stud and what it clamps",
        say(
            "Section along the stud: case {g}, cylinder {z}, head {k}; a stud of {d}.",
            g=i.case,
            z=i.cylinder,
            k=i.head,
            d=i.shank,
        ),
        (
            *on_both_sides(*layers),
            *on_both_sides((box(0.55 * d, -1.8 * d, 1.25 * wide, 0), "a")),
            Area(box(-d / 2, -1.5 * d, d / 2, grip + nut + 0.3 * d), "c"),
            Area(box(-0.95 * d, grip, 0.95 * d, grip + nut), "solid"),
            Line(((0, -2.3 * d), (0, grip + nut + d)), "centre"),
            *(
                Dimension((1.25 * wide, low), (1.25 * wide, high), n, away * wide, name)
                for low, high, n, name, away in zip(
                    heights,
                    heights[1:],
                    (i.case, i.cylinder, i.head),
                    ("L_g", "L_z", "L_k"),
                    (-1.1, -0.5, -0.5),
                )
                if high > low + 0.04 * grip
            ),
            Dimension((-1.25 * wide, 0), (-1.25 * wide, grip), joint.grip, 0.5 * wide, "L"),
        ),
        "widths of what is clamped are not to scale",
    )
