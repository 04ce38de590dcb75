"""Guides: where stem and bore are read, how an old one leaves and a new one starts."""

from __future__ import annotations

from calc.core.drawing import Area, Drawing
from calc.core.result import say
from scripts.pictures.pen import (
    Shapes,
    arrow,
    both_sides,
    bow,
    centre,
    disc,
    line,
    numbered,
    placed,
    rect,
    right,
    sketch,
    turning,
    words,
    wrong,
)
from scripts.pictures.sheet import Sheet, practice


def guide_places(sheet: Sheet) -> Drawing:
    """Three heights, in the rocker's direction and across it; a guide wears oval and bell-mouthed."""
    return sketch(
        "A guide wears wide at its ends, and oval in the rocker's direction",
        say(
            "Left, a worn guide cut along its axis, wider at both ends than in the middle, with readings"
            " {end} from each end and in the middle. Right, its bore from above, worn oval: A in the"
            " rocker's direction, B across it.",
            end=practice("5 mm"),
        ),
        placed(
            (
                both_sides((40, 0), (34, 30), (32, 70), (34, 110), (40, 140), (62, 140), (62, 0), hatch="b"),
                centre((0, -8), (0, 148)),
                *(
                    shape
                    for n, (y, half) in enumerate(((124, 33), (70, 28), (16, 33)), 1)
                    for shape in (*arrow((-half, y), (half, y), double=True), *numbered(0, y, n))
                ),
            ),
            84,
            72,
        ),
        words(12, 40, say("{end} from each end,", end=practice("5 mm")), "and in the middle"),
        placed(
            (
                disc((0, 0), 60, "b"),
                Area(tuple((x * 1.28, y) for x, y in bow((0, 0), 34, 0, 360)), ""),
                arrow((-38, 0), (38, 0), double=True),
                arrow((0, -28), (0, 28), double=True),
                numbered(22, 0, "A"),
                numbered(0, 16, "B"),
            ),
            266,
            142,
        ),
        words(266, 52, "A the rocker's direction,", "B across it", anchor="middle"),
        scale="wear exaggerated",
    )


def guide_drilled(sheet: Sheet) -> Drawing:
    """From the port until a thin shell is left, then pushed out towards the collar."""

    def head() -> Shapes:
        return both_sides((18, -60), (74, -60), (74, 40), (18, 40))

    def guide(inside: float) -> Shapes:
        """Cut, its collar above; bored to that from the port, up to the collar."""
        outline = ((inside, -84), (18, -84), (18, 40), (26, 40), (26, 50), (8, 50), (8, 36), (inside, 36))
        return both_sides(*outline, hatch="b")

    push = arrow((34, -98), (34, -70))
    drill = (rect(-13, -104, 13, 20, "c"), Area(((-13, 20), (0, 30), (13, 20)), "c"))
    nose = ((-17, -70), (-12, -70), (-12, -8), (12, -8), (12, -70), (17, -70))
    drift = Area((*nose, (17, -104), (-17, -104)), "c")
    return sketch(
        "Drill from the port to a thin shell; push that out towards its collar",
        "A guide in the head, cut, port below, collar above, twice. First: a drill comes from the port and"
        " leaves a thin shell. Then: the warm head, and a stepped drift that pushes the shell up, towards the"
        " collar. Pushed down it would be held by the collar, and its crusted end would score the hole.",
        placed((head(), guide(13), drill, push, centre((0, -110), (0, 60))), 88, 176),
        words(12, 46, "1 drill from the port,", "a thin shell stays"),
        placed((head(), placed(guide(13), 0, 14), drift, push, centre((0, -110), (0, 76))), 268, 176),
        words(190, 46, "2 head warm: push it", "out, collar first"),
    )


def guide_pressed(sheet: Sheet) -> Drawing:
    """Started square by hand, and one that started crooked."""

    def head() -> Shapes:
        return both_sides((18, -56), (74, -56), (74, 30), (18, 30))

    guide = (
        both_sides((8, -30), (15, -30), (18, -22), (18, 62), (26, 62), (26, 72), (8, 72), hatch="b"),
        rect(-8, 40, 8, 96, "c"),
        rect(-24, 72, 24, 104, "c"),
        centre((0, -40), (0, 116)),
    )
    return sketch(
        "Start the guide by hand: what starts crooked stays crooked",
        "A guide that starts into its hole in the head, cut, twice. Right: it stands in line with the hole,"
        " on a drift that fits its bore. Wrong: it leans in the mouth of the hole, and would plough its"
        " wall.",
        placed((head(), *guide), 88, 112),
        right(8, 34, "square, by hand,", "then in one go"),
        placed((head(), placed(guide, 2, 8, -7)), 268, 112),
        wrong(188, 34, "crooked: take it", "out, start again"),
    )


def reamer_turned(sheet: Sheet) -> Drawing:
    """Always the way that cuts, also on the way out."""

    def reamer(down: bool) -> Shapes:
        return (
            *both_sides((12, -40), (32, -40), (32, 44), (12, 44), hatch="b"),
            Area(((-11, 60), (11, 60), (11, -52), (6, -62), (-6, -62), (-11, -52)), ""),
            *(line((x, -50), (x, 58), style="thin") for x in (-5, 0, 5)),
            rect(-4, 60, 4, 86),
            *(arrow((46, 50), (46, 10)) if down else arrow((46, 10), (46, 50))),
        )

    return sketch(
        "Turn a reamer the way that cuts, on the way out as well",
        "A reamer in a guide, three times. Right, on the way in: turned the way that cuts. Right, on the way"
        " out: drawn out while it is turned the same way. Wrong: turned back on the way out.",
        placed((reamer(True), turning((0, 70), 24, 335, 205)), 54, 118),
        right(2, 34, "on the", "way in"),
        placed((reamer(False), turning((0, 70), 24, 335, 205)), 172, 118),
        right(120, 34, "the same", "way out"),
        placed((reamer(False), turning((0, 70), 24, 205, 335)), 290, 118),
        wrong(240, 34, "turned", "back"),
    )
