"""Crankcases: galleries, seats, saddles and their line, and the wall that a larger hole leaves."""

from __future__ import annotations

from calc.core.drawing import Area, Drawing
from scripts.pictures.pen import (
    Shapes,
    arrow,
    bow,
    centre,
    circle,
    curve,
    disc,
    line,
    note,
    numbered,
    placed,
    rect,
    right,
    sketch,
    turning,
    words,
    wrong,
)
from scripts.pictures.sheet import Sheet


def gallery_open(sheet: Sheet) -> Drawing:
    """A gallery brushed through, and one whose plug is left in."""

    def gallery(plugged: bool) -> Shapes:
        plug = (rect(-78, -7, -64, 7, "solid"),) if plugged else ()
        return (
            rect(-78, -30, 66, 30, "a"),
            rect(-78 if not plugged else -64, -6, 66, 6),
            rect(-10, 6, 0, 30),
            rect(34, 6, 44, 30),
            *plug,
        )

    brush = (
        line((-104, 0), (50, 0), style="thin"),
        *(line((x, -6), (x, 6)) for x in range(8, 50, 4)),
        arrow((-128, 12), (-100, 12)),
    )
    dirt = tuple(
        disc((x, y), 1.6, "solid")
        for x, y in ((-58, -3), (-54, 2), (-48, -1), (-50, -4), (-42, -4), (-58, 4), (-38, 1))
    )
    return sketch(
        "Plug out, and a brush right through: behind a plug no washing reaches",
        "A gallery in a case, cut along, twice. Right: its plug is out and a brush goes through from end"
        " to end. Wrong: the plug is left in, and grit lies behind it.",
        placed((gallery(False), brush), 176, 132),
        right(98, 80, "plug out, brushed through"),
        placed((gallery(True), dirt), 176, 28),
        note(300, 44, (128, 27), "grit", anchor="middle"),
        wrong(98, -24, "plug left in"),
    )


def seat_swept(sheet: Sheet) -> Drawing:
    """The seat swept from a bar in the saddles."""
    face = 128.0
    case = (
        rect(0, 60, 26, 104, "a"),
        rect(face - 20, 118, face, 176, "a"),
        rect(face - 20, -12, face, 46, "a"),
        rect(0, 150, face - 20, 176, "a"),
        rect(0, -12, face - 20, 14, "a"),
    )
    bar = (disc((0, 82), 15), rect(14, 78, face + 22, 86), rect(face + 18, 82, face + 24, 152))
    dial = (disc((face + 32, 152), 11), line((face + 21, 152), (face, 152)))
    return sketch(
        "Swept from a bar in the saddles: a seat is square to where the crank lies",
        "A case cut through, with a bar in its main saddle. An arm on the bar carries a dial gauge round"
        " the cylinder's seat, at eight places with the clock. Beside it the seat from the cylinder's"
        " side with its eight places numbered.",
        placed((case, bar, dial, turning((face + 26, 82), 40, 60, 10)), 24, 0),
        note(64, 118, (74, 82), "bar", anchor="middle"),
        placed(
            (
                circle((0, 0), 62),
                circle((0, 0), 50),
                *(
                    numbered(56 * x, 56 * y, n, 8)
                    for n, (x, y) in enumerate(
                        (
                            (0, 1),
                            (0.71, 0.71),
                            (1, 0),
                            (0.71, -0.71),
                            (0, -1),
                            (-0.71, -0.71),
                            (-1, 0),
                            (-0.71, 0.71),
                        ),
                        1,
                    )
                ),
            ),
            290,
            86,
        ),
        words(290, 6, "eight places,", "with the clock", anchor="middle"),
        sizes=sheet,
    )


def saddle_places(sheet: Sheet) -> Drawing:
    """Along the split beside the joint, across it, never in the joint."""
    R = 62.0

    def reading(x: float, y: float) -> Shapes:
        return arrow((-x, -y), (x, y), double=True)

    return sketch(
        "Across the split and along it beside the joint, never in the joint itself",
        "A main saddle seen along the crank, its joint upright. Reading 1 goes across the joint. Reading"
        " 2 goes along it, a little beside. A cross marks the joint itself, where the gauge drops in.",
        placed(
            (
                Area(((-110, -84), (0, -84), (0, -R), *bow((0, 0), R, 270, 90), (0, 84), (-110, 84)), "a"),
                Area(((110, -84), (0, -84), (0, -R), *bow((0, 0), R, -90, 90), (0, 84), (110, 84)), "b"),
                reading(R - 4, 0),
                placed(reading(R - 5, 0), 0, 0, 76),
                numbered(-34, 12, 1),
                numbered(22, 34, 2),
            ),
            132,
            92,
        ),
        wrong(196, 184, "in the joint"),
        line((132, 156), (192, 186), style="thin"),
        words(250, 120, "1 across"),
        words(250, 98, "2 along, a few", "degrees off", "the joint"),
        words(24, -6, "left half"),
        words(176, -6, "right half"),
    )


def bar_line(sheet: Sheet) -> Drawing:
    """The best line between the saddles' centres, and the line of the ends."""
    spots = ((-120, 0), (0, 30), (120, 6))

    def saddles(offset: float, tilt: float) -> Shapes:
        """Three webs with their centres, and a bar."""
        return (
            *(rect(x - 12, -26, x + 12, 48, "a") for x, _ in spots),
            *(rect(x - 12, y - 16, x + 12, y + 16) for x, y in spots),
            line((-146, offset - tilt), (146, offset + tilt), style="band"),
            *(disc((x, y), 4.5, "solid") for x, y in spots),
        )

    return sketch(
        "The bar in the best line, not simply through the two ends",
        "Three saddles with their centres drawn far out of line, twice. Right: the bar lies between them,"
        " so that the middle one is off by as much as the ends. Wrong: the bar goes through the end"
        " saddles, the middle one is off by twice as much, and all are bored larger for it.",
        placed(saddles(16.5, 3.6), 180, 150),
        right(60, 104, "all off by the same"),
        placed(saddles(3, 3.6), 180, 36),
        wrong(60, -12, "the middle one off by twice as much"),
        scale="deviations drawn far too large",
    )


def hole_wall(sheet: Sheet) -> Drawing:
    """The wall between hole and stud, on the middle of the studs and off it."""

    def seat(off: float) -> Shapes:
        studs = tuple(disc((i * 50, j * 50), 9) for i in (-1, 1) for j in (-1, 1))
        return (
            rect(-76, -72, 76, 72, "a"),
            *studs,
            disc((off, off), 50),
            curve((off, off), 42, 0, 360, "hidden"),
            centre((-64, 0), (64, 0)),
            centre((0, -64), (0, 64)),
        )

    return sketch(
        "The wall to a stud is what decides, and the hole is set by the studs",
        "A seat with a hole and four studs, twice. Right: the larger hole is on the middle of the studs"
        " and leaves the same wall to each. Wrong: it was set by the old hole and leaves almost none to"
        " one stud.",
        placed(seat(0), 88, 104),
        note(92, 188, (130, 146), "wall", anchor="middle"),
        right(10, 14, "by the studs"),
        placed(seat(8), 270, 104),
        note(274, 188, (314, 148), "no wall", anchor="middle"),
        wrong(192, 14, "by the old hole"),
    )


def seat_narrow(sheet: Sheet) -> Drawing:
    """A foot that stands on the seat all round, and one that hangs over its edge."""

    def foot(hole: float) -> Shapes:
        """Right half of a section: case below, cylinder above."""
        return (
            rect(hole, -52, 74, 0, "b"),
            Area(
                (
                    (hole - 5, -40),
                    (hole - 15, -40),
                    (hole - 15, 60),
                    (hole + 4, 60),
                    (hole + 4, 22),
                    (46, 22),
                    (46, 0),
                    (hole - 5, 0),
                ),
                "a",
            ),
        )

    return sketch(
        "The foot on its seat all round, with the studs' pull over metal",
        "A cylinder's foot on the case's seat, cut, twice. Right: the hole leaves a seat that is wide"
        " enough under the foot. Wrong: the hole is so large that the foot stands on a narrow edge and"
        " hangs over it.",
        placed(foot(16), 40, 70),
        note(118, 124, (70, 72), "seat", anchor="middle"),
        right(14, -4, "wide all round"),
        placed(foot(40), 220, 70),
        note(320, 124, (263, 71), "almost none", anchor="middle"),
        wrong(200, -4, "on an edge"),
    )
