"""Connecting rods: which way they are wrong, where they are read, what a cut and a shell do."""

from __future__ import annotations

import math

from calc.core.drawing import Area, Drawing
from scripts.pictures.pen import (
    Shapes,
    arrow,
    bow,
    centre,
    disc,
    line,
    numbered,
    placed,
    rect,
    right,
    sketch,
    words,
    wrong,
)
from scripts.pictures.sheet import Sheet


def _front(long: float = 120, big: float = 34, small: float = 15) -> Shapes:
    """A rod from the front: big end on 0, 0, small end above it."""
    shank = ((-13, big), (-8, long - small), (8, long - small), (13, big))
    return (
        Area(shank, ""),
        rect(-big - 16, -13, -big + 4, 13),
        rect(big - 4, -13, big + 16, 13),
        disc((0, 0), big + 11),
        disc((0, 0), big),
        disc((0, long), small + 7),
        disc((0, long), small),
        line((-big - 16, 0), (-big, 0)),
        line((big, 0), (big + 16, 0)),
    )


def rod_directions(sheet: Sheet) -> Drawing:
    """Bend, twist and offset, each by its two bores."""

    def rod(foot: float, head: float, lean: float = 0.0) -> Shapes:
        """A rod from the side, mandrel below, arbor above as it lies."""
        arbor = (rect(-12, -10, 12, 10), rect(-42, -4, 42, 4), centre((-52, 0), (52, 0)))
        return (
            Area(((foot - 8, 16), (head - 6, 106), (head + 6, 106), (foot + 8, 16)), ""),
            rect(foot - 15, -17, foot + 15, 17),
            rect(-44, -7, 44, 7),
            centre((-54, 0), (54, 0)),
            *placed(arbor, head, 114, lean),
        )

    def named(x: float, name: str, seen: str, feature: str) -> Shapes:
        limit = sheet.tell(feature, "high", "{size} at most")
        return words(x, 42, name, seen, *limit, anchor="middle")

    crossed = (
        rect(-46, -7, 46, 7),
        centre((-54, 0), (54, 0)),
        placed((rect(-12, -10, 12, 10), rect(-42, -4, 42, 4), centre((-54, 0), (54, 0))), 0, 0, 16),
    )
    return sketch(
        "The three ways a rod is out of line; bend and twist are read over a length of arbor",
        "Three rods. Bend: seen from the side, the small-end arbor leans against the big-end mandrel. Twist:"
        " seen from above, along the rod, the arbor crosses the mandrel at an angle. Offset: both bores are"
        " parallel, but the small end stands to one side along the crank.",
        236,
        placed(
            (line((-56, 114), (56, 114), style="hidden"), rod(0, 0, 12), arrow((48, 112), (47, 118))), 62, 82
        ),
        named(62, "Bend", "bores lean", "rod.bend"),
        placed((crossed, arrow((52, 2), (50, 10))), 180, 130),
        words(180, 196, "seen from above,", "along the rod", anchor="middle"),
        named(180, "Twist", "bores cross", "rod.twist"),
        placed(
            (
                rod(-8, 10),
                line((-8, 20), (-8, 146), style="hidden"),
                line((10, 124), (10, 146), style="hidden"),
                arrow((-34, 140), (-13, 140)),
                arrow((36, 140), (15, 140)),
            ),
            298,
            82,
        ),
        named(298, "Offset", "not in line", "rod.offset"),
        sizes=sheet,
    )


def big_end_places(sheet: Sheet) -> Drawing:
    """Along the rod, and 60° to each side: never at the joint."""
    bore = 72.0

    def reading(degrees: float) -> Shapes:
        a = math.radians(degrees)
        dx, dy = (bore - 6) * math.cos(a), (bore - 6) * math.sin(a)
        return arrow((-dx, -dy), (dx, dy), double=True)

    def number(degrees: float, n: str) -> Shapes:
        a = math.radians(degrees)
        return numbered(40 * math.cos(a), 40 * math.sin(a), n)

    return sketch(
        "Three directions in a big end, none of them at the joint: its edges are broken, and the gauge"
        " drops in",
        "A big end from the front, cap below, bolted up. Readings run along the rod, A, and 60° to the right"
        " and to the left of that, B and C. A cross marks the joint between rod and cap, left and right: no"
        " place to read.",
        262,
        placed(
            (
                Area(
                    (
                        (-118, 24),
                        *bow((0, 0), 94, 165, 112),
                        (-26, 118),
                        (26, 118),
                        *bow((0, 0), 94, 68, 15),
                        (118, 24),
                        (118, -24),
                        *bow((0, 0), 94, -15, -165),
                        (-118, -24),
                    ),
                    "a",
                ),
                disc((0, 0), bore),
                line((-118, 0), (-bore, 0)),
                line((bore, 0), (118, 0)),
                Area(((bore - 1, 5), (bore + 5, 0), (bore - 1, -5)), ""),
                Area(((-bore + 1, 5), (-bore - 5, 0), (-bore + 1, -5)), ""),
                reading(90),
                reading(30),
                reading(150),
                number(90, "A"),
                number(30, "B"),
                number(150, "C"),
                words(0, 100, "rod", anchor="middle"),
                words(0, -87, "cap", anchor="middle"),
            ),
            180,
            136,
        ),
        line((107, 136), (60, 42), style="thin"),
        wrong(8, 28, "at the joint"),
        right(196, 28, "along the rod,", "and 60° each way"),
    )
