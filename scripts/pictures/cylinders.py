"""Cylinders and rings: how a barrel is held and read, what a hone leaves, how a ring is gapped."""

from __future__ import annotations

import math

from calc.core.drawing import Area, Drawing, Shape
from scripts.pictures.pen import (
    Shapes,
    arrow,
    centre,
    curve,
    line,
    note,
    numbered,
    placed,
    rect,
    right,
    sketch,
    words,
    wrong,
)
from scripts.pictures.sheet import Sheet


def _barrel(bore: float = 34, high: float = 96, lean: float = 0.0) -> Shapes:
    """A cut barrel, its seat at 0; `lean` makes the bore's walls bulge inwards in the middle."""
    found = []
    for side in (-1, 1):
        wall = [(side * bore, -16), (side * (bore - lean), high / 2), (side * bore, high)]
        out = [
            (side * (bore + 8), high),
            (side * (bore + 8), high - 12),
            *(
                (side * (bore + (22 if k % 2 else 8)), high - 16 - 8 * n - (0 if k in (0, 1) else 3))
                for n in range(8)
                for k in (0, 1, 3, 2)
            ),
            (side * (bore + 16), 8),
            (side * (bore + 16), 0),
            (side * (bore + 7), 0),
            (side * (bore + 7), -16),
        ]
        found.append(Area((*wall, *out), "a"))
    return (*found, centre((0, -24), (0, high + 22)))


def cylinder_held(sheet: Sheet) -> Drawing:
    """Held down over its whole length, or squeezed at its fins."""
    plate = tuple(rect(side * 34, 96, side * 84, 110, "b") for side in (-1, 1))
    base = tuple(rect(side * 42, -22, side * 84, 0, "b") for side in (-1, 1))
    studs = tuple(
        (rect(side * 70 - 3, -14, side * 70 + 3, 122), rect(side * 70 - 8, 110, side * 70 + 8, 118, "solid"))
        for side in (-1, 1)
    )
    jaws = tuple(
        (rect(side * 58, 30, side * 78, 66, "b"), arrow((side * 84, 48), (side * 78, 48))) for side in (-1, 1)
    )
    return sketch(
        "Held as the engine holds it, the bore has the shape that it runs with",
        "A barrel cut through, twice. Right: it stands on a base with the case's hole, a plate in place of"
        " the head is drawn down on it by studs and nuts. Wrong: a vice squeezes it at its fins, and the"
        " bore bulges inwards.",
        placed((base, _barrel(), plate, studs), 92, 74),
        right(12, 26, "plate and nuts,", "base with the hole"),
        placed((_barrel(lean=6), jaws), 270, 74),
        wrong(190, 26, "squeezed at its", "fins: round no more"),
    )


def cylinder_places(sheet: Sheet) -> Drawing:
    """Three heights, two directions, and the ridge."""
    high, r = 120, 46
    worn = tuple(
        Area(
            (
                (side * r, -10),
                (side * r, 40),
                (side * (r + 7), 104),
                (side * (r + 7), 108),
                (side * r, 112),
                (side * r, high),
                (side * (r + 22), high),
                (side * (r + 22), -10),
            ),
            "a",
        )
        for side in (-1, 1)
    )
    heights = tuple(
        (arrow((-r - 4, y), (r + 4, y), double=True), numbered(0, y + 12, n))
        for n, y in ((1, 98), (2, 60), (3, 8))
    )
    above = (
        curve((0, 0), 34, 0, 360),
        curve((0, 0), 46, 0, 360),
        arrow((-34, 0), (34, 0), double=True),
        arrow((0, -34), (0, 34), double=True),
    )
    return sketch(
        "Three heights, two directions, below the ridge",
        "Left: a worn bore cut through, wide at the top below an unworn ridge. Gauge places: 1 just below the"
        " ridge, 2 in the middle, 3 at the bottom below the rings. Right: the bore from above, read across"
        " the pin and along it.",
        placed((worn, heights, centre((0, -20), (0, high + 10))), 90, 44),
        note(166, 158, (138, 160), "ring ridge"),
        placed(above, 278, 84),
        words(330, 80, "across"),
        words(278, 138, "along the pin", anchor="middle"),
        words(278, 22, "from above", anchor="middle"),
        words(90, 10, "3: below the rings", anchor="middle"),
    )


def hone_hatch(sheet: Sheet) -> Drawing:
    """The angle that opens towards the circumference: right, and too flat."""

    def hatched(angle: float) -> Shapes:
        w, h, slope = 64.0, 46.0, math.tan(math.radians(angle / 2))
        found: list[Shape] = [rect(-w, -h, w, h)]
        for sign in (1, -1):
            for n in range(-14, 15):
                offset = n * 14.0
                ends = [(x, offset + sign * slope * x) for x in range(-64, 65)]
                inside = [p for p in ends if abs(p[1]) <= h]
                if len(inside) > 2:
                    found.append(line(inside[0], inside[-1], style="thin"))
        return tuple(found)

    return sketch(
        "The angle is the one that opens towards the circumference",
        "The bore's wall laid flat, twice, the circumference from left to right. Right: scratches cross at 50"
        " degrees. Wrong: they cross at 20 degrees and lie nearly round the bore.",
        placed(hatched(50), 88, 96),
        right(24, 30, "the angle", "of the sheet"),
        placed(hatched(20), 268, 96),
        wrong(204, 30, "too flat: it holds", "too much oil"),
    )


def ring_square(sheet: Sheet) -> Drawing:
    """A ring pushed down square with a piston, in the least worn part; or aslant, higher up."""

    def bore() -> Shapes:
        return tuple(
            Area(
                (
                    (side * 40, 0),
                    (side * 40, 40),
                    (side * 47, 100),
                    (side * 40, 112),
                    (side * 58, 112),
                    (side * 58, 0),
                ),
                "a",
            )
            for side in (-1, 1)
        )

    piston = (rect(-38, 28, 38, 84, "b"), arrow((0, 124), (0, 88)))
    return sketch(
        "The gap is read below where the rings run, the ring pushed down square",
        "A worn bore cut through, twice. Right: a piston turned upside down pushes the ring down square to"
        " the bottom, where the bore is not worn. Wrong: the ring lies aslant in the worn part further up.",
        placed((bore(), piston, rect(-40, 20, 40, 26, "solid")), 90, 60),
        right(20, 26, "square, at the", "bottom"),
        placed((bore(), placed(rect(-44, -3, 44, 3, "solid"), 0, 84, 9)), 270, 60),
        wrong(200, 26, "aslant, where it", "is worn"),
    )


def ring_filed(sheet: Sheet) -> Drawing:
    """The file moves inwards, from the face to the back; and the gaps stand apart."""
    ring = (curve((0, 0), 56, 98, 442), curve((0, 0), 44, 100, 440))
    ends = tuple(
        line(
            (44 * math.cos(math.radians(a)), 44 * math.sin(math.radians(a))),
            (56 * math.cos(math.radians(b)), 56 * math.sin(math.radians(b))),
        )
        for a, b in ((100, 98), (80, 82))
    )
    return sketch(
        "Inwards only: from the face to the back",
        "A ring from above, twice, a file between its ends. Right: an arrow moves the file inwards, from the"
        " outside to the middle. Wrong: it is drawn outwards and leaves a burr on the face, which scores"
        " the bore.",
        placed((ring, ends, rect(-3, 40, 3, 78), arrow((14, 82), (14, 46))), 90, 96),
        right(40, 22, "inwards"),
        placed((ring, ends, rect(-3, 40, 3, 78), arrow((14, 46), (14, 82))), 270, 96),
        wrong(206, 22, "outwards: a burr", "on the face"),
    )
