"""Bearing shells: where their wall is read, how a dowel holds them, and what they show once they have run."""

from __future__ import annotations

from calc.core.drawing import Area, Drawing
from scripts.pictures.pen import (
    Shapes,
    arrow,
    bow,
    disc,
    line,
    note,
    numbered,
    placed,
    rect,
    right,
    ring,
    sketch,
    words,
    wrong,
)
from scripts.pictures.sheet import Sheet


def shell_wall_read(sheet: Sheet) -> Drawing:
    """Crown against end: beside the joint a shell is thinner on purpose."""

    def shell() -> Shapes:
        # the inside is struck from a centre higher up, so that the wall runs out towards the joint
        inside = bow((0, 9), 47, 349, 191)
        return (Area((*bow((0, 0), 60, 180, 360), *inside), "b"), line((-78, 0), (78, 0), style="thin"))

    crown = (arrow((0, -84), (0, -63)), arrow((0, -14), (0, -35)))
    end = (arrow((84, -14), (62, -14)), arrow((26, -14), (44, -14)))
    return sketch(
        "The wall is read in the middle of the arc",
        "A half shell from its end, twice, its wall running out towards both joints. Right: a ball"
        " micrometer's faces in the middle of the arc, at the crown. Wrong: beside the joint, where shells"
        " are thinner on purpose.",
        placed((shell(), crown), 90, 130),
        right(14, 30, "at the crown"),
        placed((shell(), end), 268, 130),
        wrong(196, 30, "beside the joint"),
        scale="thinning exaggerated",
    )


def shell_on_dowel(sheet: Sheet) -> Drawing:
    """A dowel that is too high dents the shell from behind."""

    def seat(high: float) -> Shapes:
        return (
            ring((0, 0), 70, 54, "a", 180, 360),
            ring((0, 0), 54, 42, "b", 180, 360),
            rect(-5, -66, 5, -54 + high, "solid"),
            line((-84, 0), (84, 0), style="thin"),
        )

    dent = Area(((-16, -39.0), (-7, -33), (7, -33), (16, -39.0), (7, -43), (-7, -43)), "b")
    return sketch(
        "A dowel goes into its hole and never against the lining",
        "A half shell in its seat from the end, twice, held by a dowel in the middle. Right: the dowel ends"
        " within the shell's wall, and the inside is round. Wrong: it stands too high and pushes the lining"
        " in, a tight spot on one side.",
        placed(seat(6), 90, 118),
        note(54, 134, (90, 70), "dowel below the lining", anchor="middle"),
        right(10, 24, "inside round"),
        placed((seat(14), dent), 268, 118),
        wrong(196, 24, "lining dented"),
        scale="dowel exaggerated",
    )


def shells_worn(sheet: Sheet) -> Drawing:
    """Four halves unrolled, each with the place where it is bright."""

    def half(x: float, y: float, number: int, *worn: Area, told: str) -> Shapes:
        return (
            rect(x, y, x + 150, y + 46),
            *placed(worn, x, y),
            disc((x + 75, y + 23), 3, "solid"),
            *numbered(x - 11, y + 23, number),
            *words(x + 75, y - 15, told, anchor="middle"),
        )

    return sketch(
        "Where a shell is bright tells what wore it",
        "Four half shells unrolled flat, their ends at the joint left and right, hatched where they are worn."
        " 1: evenly in the middle of the arc, as it should be. 2: along one edge, journal tapered or rod"
        " bent. 3: at both ends beside the joint, housing closed in or cap shifted. 4: one spot, dirt or a"
        " high dowel behind it.",
        half(26, 120, 1, rect(30, 4, 120, 42, "c"), told="middle: as it should be"),
        half(206, 120, 2, rect(4, 30, 146, 42, "c"), told="one edge: taper, bent rod"),
        half(
            26,
            40,
            3,
            rect(3, 4, 26, 42, "c"),
            rect(124, 4, 147, 42, "c"),
            told="at the joint: bore closed in",
        ),
        half(206, 40, 4, rect(100, 14, 122, 32, "c"), told="one spot: dirt behind it"),
    )
