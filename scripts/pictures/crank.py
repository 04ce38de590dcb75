"""Crankshafts: how the bow is read, what can still be ground, fillets, oil holes, and a longer stroke."""

from __future__ import annotations

import math

from calc.core.drawing import Area, Drawing, Points
from scripts.pictures.pen import (
    Shapes,
    arrow,
    bow,
    centre,
    circle,
    disc,
    line,
    note,
    placed,
    rect,
    right,
    sketch,
    turning,
    words,
    wrong,
)
from scripts.pictures.sheet import Sheet
from scripts.pictures.tools import dial


def crank_in_blocks(sheet: Sheet) -> Drawing:
    """End mains in V-blocks, the dial over the centre main; and the tip over an oil hole."""

    def journal(x: float) -> Shapes:
        return (rect(x - 16, -14, x + 16, 14),)

    def throw(x: float, way: int) -> Shapes:
        low, high = (-22, 46) if way > 0 else (-46, 22)
        return (
            rect(x - 20, low, x - 13, high),
            rect(x + 13, low, x + 20, high),
            rect(x - 13, way * 24 - 10 * way, x + 13, way * 24 + 10 * way),
        )

    def block(x: float) -> Shapes:
        return (
            Area(
                (
                    (x - 18, -62),
                    (x + 18, -62),
                    (x + 18, -14),
                    (x + 10, -14),
                    (x, -22),
                    (x - 10, -14),
                    (x - 18, -14),
                ),
                "b",
            ),
        )

    shaft = (
        throw(-74, 1),
        throw(-38, -1),
        throw(38, -1),
        throw(74, 1),
        journal(-112),
        journal(0),
        journal(112),
        centre((-140, 0), (140, 0)),
    )
    tip = (line((0, 14), (0, 62)), *dial(0, 80, 18, 20))

    def end(turn: float) -> Shapes:
        """The centre main from its end, its oil hole turned so far from the dial's tip."""
        a = math.radians(90 + turn)
        return (
            disc((0, 0), 34, "a"),
            line((0, 0), (34 * math.cos(a), 34 * math.sin(a)), style="hidden"),
            disc((34 * math.cos(a), 34 * math.sin(a)), 5, "solid"),
            line((0, 34), (0, 54)),
            *dial(0, 68, 14, 20),
        )

    return sketch(
        "End mains in the blocks, the dial upright on the centre main, clear of the oil hole",
        "Above, a crank from the side: its end mains lie in V-blocks, a dial stands upright on the centre"
        " main, and a stop keeps the crank from walking. Below, the centre main from its end, twice. Right:"
        " the dial's tip stands beside the oil hole. Wrong: it stands over the oil hole.",
        placed((block(-112), block(112), shaft, tip, rect(134, -20, 142, 20, "b")), 176, 226),
        note(318, 272, (314, 246), "stop", anchor="middle"),
        placed((end(70), turning((0, 0), 44, 160, 20, double=False)), 88, 62),
        right(8, 8, "beside the hole"),
        placed(end(0), 264, 62),
        wrong(190, 8, "over the hole"),
    )


def circle_in_worn_journal(sheet: Sheet) -> Drawing:
    """What the micrometer reads, and the circle that is left about the old axis."""
    radius, worn = 58.0, 16.0

    def outline() -> Points:
        points = []
        for k in range(90):
            t = 2 * math.pi * k / 90
            r = radius - worn * max(0.0, math.sin(t)) ** 2
            points.append((r * math.cos(t), r * math.sin(t)))
        return tuple(points)

    journal = (Area(outline(), "a"), centre((-72, 0), (72, 0)), centre((0, -72), (0, 66)))
    least = 2 * radius - worn
    return sketch(
        "Worn on one side: the circle that is left is smaller than the micrometer says",
        "A journal from its end, worn flat at the top, twice. Right: the circle about the old axis just"
        " touches the worn side, and is smaller than the old journal by twice the wear. Wrong: a circle of"
        " the size that the micrometer reads reaches out over the worn side.",
        placed((journal, circle((0, 0), radius - worn, "band"), circle((0, 0), 2, "solid")), 88, 110),
        right(8, 18, "about its old axis,", "twice the wear goes"),
        placed((journal, circle((0, 0), least / 2, "band")), 268, 110),
        wrong(206, 18, "as it reads,", "dull at the top"),
        note(312, 184, (268, 110 + least / 2 - 3), "dull", anchor="middle"),
        scale="wear exaggerated",
    )


def fillets(sheet: Sheet) -> Drawing:
    """The corner between journal and cheek: round, sharp, and stepped."""

    def corner(outline: Points) -> Shapes:
        return (Area(((-34, -44), (60, -44), *outline, (-34, 72)), "a"),)

    good = ((60, 0), (26, 0), *bow((26, 26), 26, 270, 180), (0, 72))
    sharp = ((60, 0), (4, 0), *bow((4, 4), 4, 270, 180), (0, 72))
    step = ((60, 0), (26, 0), (26, 7), (20, 7), *bow((20, 27), 20, 270, 180), (0, 72))
    return sketch(
        "The fillet runs into journal and cheek without a corner or a step",
        "The corner between journal and cheek, cut, three times. Right: one round runs from the journal"
        " into the cheek. Wrong: the corner is sharp, and a crack starts in it. Wrong: the journal was"
        " ground lower than the fillet, and a step is left beside it.",
        placed(corner(good), 60, 92),
        right(2, 28, "round"),
        words(19, 14, *sheet.tell("crank.fillet", "nominal", "of {size}")),
        placed((corner(sharp), line((1, 1), (-14, -16)), line((-14, -16), (-12, -26))), 180, 92),
        wrong(130, 28, "sharp,", "it cracks"),
        placed(corner(step), 300, 92),
        wrong(250, 28, "a step", "left beside it"),
        sizes=sheet,
        scale="not to scale",
    )


def oil_hole_edges(sheet: Sheet) -> Drawing:
    """A journal's oil hole, cut: rounded, as the wheel left it, and a saucer."""

    round_edge = ((19, 0), *bow((19, -9), 9, 90, 180))
    sharp = ((10, 0),)
    saucer = ((44, 0), (26, -5), (14, -12), (10, -20))

    def both(edge: Points) -> Shapes:
        out = Area(((10, -52), (52, -52), (52, 0), *edge), "a")
        return (out, Area(tuple((-x, y) for x, y in out.points), "a"), centre((0, -60), (0, 14)))

    return sketch(
        "Round every oil hole's edge again: no more than the edge",
        "An oil hole in a journal, cut, three times. Right: its edge is rounded all round. Wrong: the edge"
        " is sharp as the wheel left it, and scrapes the shell. Wrong: too much was taken off, and a saucer"
        " eats into the bearing.",
        placed(both(round_edge), 60, 108),
        right(2, 34, "rounded"),
        placed(both(sharp), 180, 108),
        wrong(130, 34, "sharp,", "it scrapes"),
        placed(both(saucer), 300, 108),
        wrong(250, 34, "a saucer,", "oil runs off"),
    )


def offset_journal(sheet: Sheet) -> Drawing:
    """The new journal within the old one, further out; and one that reaches past it."""

    def throw(off: float, small: float) -> Shapes:
        return (
            disc((0, -66), 30, "b"),
            circle((0, 0), 42, "hidden"),
            disc((0, off), small, "a"),
            centre((-54, 0), (54, 0)),
            centre((0, -102), (0, 58)),
            line((-14, off), (14, off), style="thin"),
        )

    return sketch(
        "The new journal lies within the old one, and its outer side still cleans up",
        "A throw from its end, the main journal below, the old rod journal dashed, twice. Right: the"
        " smaller new journal lies further out within the old one, with a little to clean up on the outer"
        " side. Wrong: it lies so far out that it reaches past the old journal, where there is no metal.",
        placed(throw(9, 30), 88, 146),
        note(142, 208, (88, 186.5), "cleans up", anchor="middle"),
        right(8, 24, "within the old"),
        placed((throw(17, 30), line((-16, 44), (16, 44))), 268, 146),
        note(318, 208, (272, 190), "no metal", anchor="middle"),
        wrong(206, 24, "past its side"),
    )


def stroke_moves(sheet: Sheet) -> Drawing:
    """A throw at the top, before and after: the crown rises by half of the longer stroke."""

    def cylinder(rise: float, shim: float) -> Shapes:
        top = 118.0
        return (
            rect(-40, 40 + shim, -30, top + shim, "a"),
            rect(30, 40 + shim, 40, top + shim, "a"),
            *((rect(-46, 40, -30, 40 + shim, "solid"), rect(30, 40, 46, 40 + shim, "solid")) if shim else ()),
            rect(-29, 70 + rise, 29, 108 + rise),
            disc((0, 84 + rise), 5),
            Area(((-5, rise), (-3, 80 + rise), (3, 80 + rise), (5, rise)), ""),
            disc((0, rise), 9, "a"),
            line((0, -40), (0, rise), style="thin"),
            disc((0, -40), 12, "b"),
            line((-46, top + shim), (46, top + shim), style="thin"),
        )

    return sketch(
        "Half of the longer stroke shows at the crown: a shim under the cylinder gives it back",
        "A piston at the top of its stroke, three times. First as it was, its crown a little below the"
        " cylinder's end. Wrong, with the longer throw: the crown stands out of the cylinder. Right, with a"
        " shim under the cylinder: the crown is as far below as before, and the cylinder's end is further"
        " out.",
        placed(cylinder(0, 0), 60, 92),
        words(60, 20, "as it was", anchor="middle"),
        placed((cylinder(16, 0), arrow((50, 108), (50, 124))), 180, 92),
        wrong(112, 20, "stands out"),
        placed(cylinder(16, 16), 300, 92),
        right(252, 20, "shimmed"),
        scale="rise exaggerated",
    )
