"""Balancing what turns: the part turned on its arbor, marks over the joints, and where metal may come off."""

from __future__ import annotations

import math

from calc.core.drawing import Drawing
from scripts.pictures.pen import (
    Shapes,
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


def _round(angle: float, radius: float) -> tuple[float, float]:
    return (radius * math.cos(math.radians(angle)), radius * math.sin(math.radians(angle)))


def turned_on_arbor(sheet: Sheet) -> Drawing:
    """The same wheel twice on an arbor that is itself out: its mark goes round, the arbor's stays."""

    def wheel(turn: float) -> Shapes:
        mark = _round(90 + turn, 62)
        return (
            disc((0, 0), 66, "a"),
            disc((0, 0), 20),
            line(_round(90 + turn, 52), _round(90 + turn, 66), style="outline"),
            disc(_round(35 + turn, 50), 5, "solid"),
            line(mark, _round(90 + turn, 72)),
            circle((0, 0), 8),
            disc(_round(0, 13), 3, "solid"),
            centre((-76, 0), (76, 0)),
            centre((0, -76), (0, 76)),
        )

    return sketch(
        "Turned by half a turn: the part's heavy spot goes with its mark, the arbor's stays",
        "A flywheel from its end on an arbor, twice. On the left its mark is at the top and its heavy spot at"
        " the upper right. On the right the wheel alone was turned by half a turn: mark and heavy spot are"
        " below and to the left, while the arbor's own heavy spot stays on the right.",
        placed(wheel(0), 88, 104),
        placed(wheel(180), 272, 104),
        turning((180, 104), 12, 150, 30, double=False),
        words(88, 200, "first reading", anchor="middle"),
        words(272, 200, "wheel turned, arbor left", anchor="middle"),
        note(180, 14, (101, 104), "the arbor's own", anchor="middle"),
        note(
            180,
            36,
            (88 + 50 * math.cos(math.radians(35)), 104 + 50 * math.sin(math.radians(35))),
            "the wheel's",
            anchor="middle",
        ),
        scale="not to scale",
    )


def marks_over_joints(sheet: Sheet) -> Drawing:
    """Crank, flywheel and cover in line: one stroke over both joints; and without."""

    def set_of(marked: bool) -> Shapes:
        joints = ((-10, 4, 52), (-10, 4, 53), (28, 50, 66), (28, 50, 67)) if marked else ()
        strokes = tuple(line((a, y), (b, y)) for a, b, y in joints)
        return (
            rect(-74, -18, -4, 18, "b"),
            rect(-16, -52, -4, 52, "b"),
            rect(-4, -78, 36, 78, "a"),
            rect(36, -70, 58, 70, "c"),
            centre((-84, 0), (72, 0)),
            *strokes,
        )

    return sketch(
        "A stroke over each joint, so that all goes together as it was balanced",
        "Crank flange, flywheel and clutch cover from the side, twice. Right: a stroke was scribed over the"
        " joint of flange and flywheel and over that of flywheel and cover. Wrong: no marks, and the cover"
        " can go on in another place.",
        placed(set_of(True), 96, 100),
        placed(set_of(False), 276, 100),
        note(14, 188, (92, 152), "crank to wheel"),
        note(128, 206, (134, 167), "wheel to cover"),
        right(40, 4, "marked first"),
        wrong(220, 4, "goes on anyhow"),
        scale="not to scale",
    )


def where_metal_comes_off(sheet: Sheet) -> Drawing:
    """The engine's side of a flywheel: holes in the thick of the rim, not beside bolts nor at the root."""

    def wheel(holes: Shapes) -> Shapes:
        bolts = tuple(circle(_round(30 + 60 * k, 28), 5) for k in range(6))
        return (
            disc((0, 0), 74),
            disc((0, 0), 66, "a"),
            disc((0, 0), 12),
            circle((0, 0), 44, "hidden"),
            *bolts,
            *holes,
        )

    good = (disc(_round(62, 55), 5, "solid"), disc(_round(86, 55), 5, "solid"))
    bad = (disc(_round(60, 28), 5, "solid"), disc(_round(20, 69), 5, "solid"))
    return sketch(
        "Two shallow holes in the thick of the rim are better than one deep one",
        "The engine's side of a flywheel, twice. Right: two shallow holes beside each other in the thick of"
        " the rim. Wrong: one hole between the bolts, where the wheel carries its load, and one under the"
        " ring gear.",
        placed(wheel(good), 88, 112),
        placed(wheel(bad), 272, 112),
        right(10, 8, "thick of the rim"),
        wrong(196, 8, "bolts, ring gear"),
        note(180, 200, (88 + _round(62, 55)[0], 112 + _round(62, 55)[1]), "shared", anchor="middle"),
        scale="not to scale",
    )
