"""Decks, crowns and a closed engine under air."""

from __future__ import annotations

import math

from calc.core.drawing import Area, Drawing
from scripts.pictures.pen import (
    arrow,
    centre,
    circle,
    disc,
    dot,
    line,
    numbered,
    placed,
    rect,
    right,
    ring,
    sketch,
    turning,
    words,
    wrong,
)
from scripts.pictures.sheet import Sheet


def deck_read(sheet: Sheet) -> Drawing:
    """Both ends of the pin's axis: there the piston does not rock."""

    def above(turn: float) -> object:
        marks = (dot((-44, 0), 4), dot((44, 0), 4))
        pin = (line((-50, -9), (50, -9), style="hidden"), line((-50, 9), (50, 9), style="hidden"))
        return (ring((0, 0), 68, 58, "a"), disc((0, 0), 55), pin, placed(marks, 0, 0, turn))

    def cut(lean: float, pin: object) -> object:
        piston = (rect(-54, -60, 54, -8, "c"), pin)
        bridge = (rect(-70, 3, 70, 10), rect(-42, -5, -38, 3, "solid"), rect(38, -5, 42, 3, "solid"))
        return (rect(-68, -66, -58, 2, "a"), rect(58, -66, 68, 2, "a"), placed(piston, 0, 0, lean), bridge)

    along = rect(-54, -42, 54, -26)
    return sketch(
        "Over the pin's axis, near both walls: there the piston does not rock",
        "A cylinder from above with its piston, and below it cut open with a bridge gauge on its face, twice."
        " Right: both readings lie over the pin's axis, at its ends. Wrong: they lie across the pin, about"
        " which the piston rocks, so that one is too deep and the other too shallow.",
        placed(above(0), 90, 254),
        placed(above(90), 270, 254),
        placed(cut(0, along), 90, 152),
        right(12, 62, "along the pin"),
        placed((cut(4, disc((0, -34), 8)), turning((0, -34), 34, 200, 160, double=False)), 270, 152),
        wrong(190, 62, "across the pin:", "it rocks"),
    )


def shims_pair(sheet: Sheet) -> Drawing:
    """The same under both, or the head stands on one."""

    def side(thick: float, other: float, lean: float, at: float) -> object:
        def barrel(x: float, shim: float) -> object:
            foot = rect(x - 26, 0, x + 26, shim, "solid") if shim else ()
            return (foot, rect(x - 22, shim, x + 22, shim + 66, "a"))

        return (
            rect(-76, -20, 76, 0, "b"),
            barrel(-38, thick),
            barrel(38, other),
            placed(rect(-72, 0, 72, 22, "a"), 0, at, lean),
        )

    return sketch(
        "The same shims under both cylinders of a head",
        "Two cylinders on the case with one head on both, twice. Right: shims of one thickness lie under"
        " both, and the head rests on both. Wrong: a thicker shim under the left one lifts it, and the head"
        " stands away from the right one.",
        placed(side(6, 6, 0, 72), 90, 74),
        right(12, 32, "alike under both"),
        placed((side(10, 0, -4.2, 71.6), arrow((60, 98), (46, 72))), 270, 74),
        wrong(190, 32, "unlike: it leaks", "at the lower one"),
        scale="shims exaggerated",
    )


def crown_filled(sheet: Sheet) -> Drawing:
    """Grease closes the land; and which sign a crown has."""

    def filled(grease: bool) -> object:
        crown = tuple((x, -52 - 10 * (1 - (x / 40) ** 2)) for x in range(-40, 41, 5))
        land = [rect(side * 52, -62, side * 57, -50, "solid") for side in (-1, 1)] if grease else ()
        gone = () if grease else (arrow((-54, -44), (-54, -86)), arrow((54, -44), (54, -86)))
        return (
            Area(((-57, 0), (-57, -52), *crown, (57, -52), (57, 0)), "", "liquid"),
            Area(((-52, -52), *crown, (52, -52), (52, -92), (-52, -92)), "c"),
            rect(-68, -98, -58, 0, "a"),
            rect(58, -98, 68, 0, "a"),
            rect(-76, 0, 12, 7),
            rect(26, 0, 76, 7),
            land,
            gone,
        )

    def crown(bow: float) -> object:
        top = tuple((x, bow * (1 - (x / 34) ** 2)) for x in range(-34, 35, 4))
        return (
            Area(((-42, -34), (-42, 0), *top, (42, 0), (42, -34)), "c"),
            line((-50, 0), (50, 0), style="hidden"),
        )

    return sketch(
        "Grease round the top land; a dome counts plus, a bowl minus",
        "A lowered piston under its plate, filled with liquid, twice. Right: grease closes the gap round the"
        " top land. Wrong: without it the liquid runs past the piston. Below, three crowns: a dome counts"
        " plus, a flat one nothing, a bowl minus.",
        placed(filled(True), 90, 268),
        right(12, 146, "land closed"),
        placed(filled(False), 270, 268),
        wrong(190, 146, "it runs past"),
        placed(crown(16), 62, 84),
        placed(crown(0), 180, 84),
        placed(crown(-16), 298, 84),
        words(62, 30, "dome: plus", anchor="middle"),
        words(180, 30, "flat: 0", anchor="middle"),
        words(298, 30, "bowl: minus", anchor="middle"),
    )


def crank_at_top(sheet: Sheet) -> Drawing:
    """In one line it holds still, off it the air turns it."""
    throw, long = 34.0, 104.0

    def engine(degrees: float) -> object:
        a = math.radians(degrees)
        x, y = throw * math.sin(a), throw * math.cos(a)
        top = y + math.sqrt(long**2 - x**2)
        off = math.degrees(math.atan2(-x, top - y))
        rod = placed((Area(((-7, 0), (-5, long), (5, long), (7, 0)), ""),), x, y, -off)
        turns = turning((0, 0), 48, 60, 0) if degrees else ()
        return (
            circle((0, 0), throw, "hidden"),
            line((0, 0), (x, y)),
            rod,
            disc((0, 0), 9),
            disc((x, y), 7),
            rect(-36, top - 8, 36, top + 26, "c"),
            disc((0, top), 5),
            rect(-48, 96, -38, 182, "a"),
            rect(38, 96, 48, 182, "a"),
            arrow((-16, 192), (-16, top + 32)),
            arrow((16, 192), (16, top + 32)),
            centre((0, -20), (0, 196)),
            turns,
        )

    return sketch(
        "Crank and rod in one line hold still; a little off, the air throws them round",
        "A piston under air with its rod and crank, twice. Right: crank and rod stand in one line, and the"
        " crank has nothing to turn it. Wrong: the crank stands a little off the top, and an arrow shows how"
        " the air turns it.",
        placed(engine(0), 90, 74),
        right(12, 18, "at the top"),
        placed(engine(24), 260, 74),
        wrong(190, 18, "off the top:", "it spins"),
    )


def leak_down_ways(sheet: Sheet) -> Drawing:
    """Where the air of a cylinder may come out."""

    def way(x: float, y: float, to: tuple[float, float], number: str, at: tuple[float, float]) -> object:
        return (*arrow((x, y), to), *numbered(*at, number))

    return sketch(
        "Five ways out, and each is heard in another place",
        "A cylinder lying, piston at the top, air let in at the plug hole from the right. Arrows show the"
        " ways out: 1 past the intake valve, 2 past the exhaust valve, 3 past the rings into the case and out"
        " of the oil filler, 4 into the neighbour on the same head, 5 at the joint of head and cylinder.",
        rect(20, 150, 92, 262, "b"),
        rect(34, 164, 92, 248),
        rect(50, 262, 66, 282),
        rect(92, 238, 216, 250, "a"),
        rect(92, 162, 216, 174, "a"),
        rect(148, 177, 206, 235, "c"),
        rect(216, 150, 288, 262, "a"),
        rect(216, 176, 240, 236),
        rect(240, 218, 256, 292),
        rect(240, 120, 256, 194),
        rect(240, 201, 300, 211),
        arrow((344, 206), (262, 206)),
        words(308, 216, "air"),
        way(246, 228, (248, 306), "1", (272, 306)),
        way(246, 184, (248, 106), "2", (272, 106)),
        way(206, 236, (120, 236), "3", (84, 290)),
        arrow((100, 206), (58, 206), (58, 300)),
        way(228, 168, (228, 128), "4", (206, 120)),
        way(216, 244, (216, 282), "5", (196, 284)),
        words(12, 78, "1  intake valve: carburettor"),
        words(12, 63, "2  exhaust valve: exhaust pipe"),
        words(12, 48, "3  rings: oil filler"),
        words(12, 33, "4  head: the neighbour's plug hole"),
        words(12, 18, "5  joint: bubbles"),
    )
