"""Section through cylinder, piston at the top of its stroke, and chamber: to scale, chamber and crown as
round caps of their volumes."""

import math

from calc.core.drawing import Area, Dimension, Drawing, Label, Line, box
from calc.core.result import say
from calc.formulas.round_cap import cap_depth
from calc.stations.cylinders.compression.asked import In
from calc.stations.cylinders.compression.volumes import Volumes
from calc.stations.shared.drawings import cap, on_both_sides


def over_the_piston(i: In, v: Volumes) -> Drawing:
    """The cylinder's face at height 0."""
    r, deck, step = float(i.bore) / 2, float(i.deck), max(float(i.step_depth or 0.0), 0.0)
    mouth = float(i.step_across) / 2 if step else r
    out, deep, thick = 1.22 * max(r, mouth), 0.62 * r, 0.17 * r
    roof = cap(r, cap_depth(float(i.chamber), math.pi * r * r))
    top = step + max(y for _, y in roof) + 0.16 * r
    land = r - float(i.land_clearance) / 2
    crown = cap(land, math.copysign(cap_depth(abs(float(v.crown)), math.pi * land**2), float(v.crown)))
    head = (
        (-out, step),
        (-mouth, step) if step else (-r, 0.0),
        *((x, y + step) for x, y in roof),
        (out, step),
        (out, top),
        (-out, top),
    )
    piston = (*((x, y - deck) for x, y in crown), (land, -deep), (-land, -deep))
    return Drawing(
        "What is left over the piston",
        say(
            "Section through the cylinder, the piston at the top of its stroke: {t} of deck below the"
            " cylinder's face, the chamber of {b} above it, {v} left in all.",
            t=i.deck,
            b=i.chamber,
            v=v.left,
        ),
        (
            Area(head, "a"),
            *(on_both_sides((box(mouth, 0.0, out, step), "a")) if step else ()),
            *on_both_sides((box(r, -1.1 * deep, r + thick, 0.0), "b")),
            Area(piston, "c"),
            Line(((0, -1.15 * deep), (0, top + 0.08 * r)), "centre"),
            Dimension((-r, -1.1 * deep), (r, -1.1 * deep), i.bore, -0.14 * r, "D"),
            Label((0, 0.45 * (top - 0.16 * r)), say("chamber {v}", v=i.chamber)),
            Label((1.45 * r, -0.45 * deep), say("deck {t}", t=i.deck), target=(0.8 * r, -deck / 2)),
            Label((0, -0.7 * deep), say("crown {v}", v=v.crown)),
        ),
        say("to scale, chamber and crown drawn as round caps"),
    )
