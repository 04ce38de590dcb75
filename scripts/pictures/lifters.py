"""Lifters made hydraulic: where the oil gets in, how the ring lies."""

from __future__ import annotations

from calc.core.drawing import Area, Drawing
from scripts.pictures.pen import (
    Shapes,
    arrow,
    bow,
    centre,
    circle,
    disc,
    dot,
    line,
    placed,
    rect,
    right,
    sketch,
    words,
    wrong,
)
from scripts.pictures.sheet import Sheet


def lifter_oil_hole(sheet: Sheet) -> Drawing:
    """Groove and gallery at base circle and at full lift, and a hole that comes out of the bore."""
    unit = 2.3
    half, lift = sheet.mm("lifter.body", 21) / 2 * unit, sheet.mm("cam.lobe_lift", 8.2) * unit
    groove = max(sheet.mm("lifter.oil_groove", 3.0) * unit, 6)

    def case(top: float) -> Shapes:
        """The bore in the case, its mouth at `top`, the gallery from the left at 0."""
        return (
            rect(-half - 26, -46, -half, -4, "a"),
            rect(-half - 26, 4, -half, top, "a"),
            rect(half, -46, half + 26, top, "a"),
            *arrow((-half - 40, 0), (-half - 12, 0)),
        )

    def lifter(up: float) -> Shapes:
        """The body, its groove that far above the gallery, the oil hole in the groove."""
        return placed(
            (
                Area(
                    (
                        (-half, -62), (half, -62), (half, -groove / 2), (half - 3, -groove / 2),
                        (half - 3, groove / 2), (half, groove / 2), (half, 52), (-half, 52),
                        (-half, groove / 2), (-half + 3, groove / 2), (-half + 3, -groove / 2),
                        (-half, -groove / 2),
                    ),
                    "",
                ),
                disc((-half + 9, 0), 2.4, "solid"),
                rect(-half - 4, -70, half + 4, -62),
                centre((0, -76), (0, 62)),
            ),
            0,
            up,
        )  # fmt: skip

    return sketch(
        "The hole meets the gallery while the valve is shut, and never leaves the bore",
        "A lifter in its bore in the case, three times; the gallery comes from the left. Right, on the base"
        " circle: the groove with its oil hole stands at the gallery. Right, at full lift: the groove has"
        " passed the gallery and is still inside the bore. Wrong, at full lift: the groove has come out of"
        " the bore, and oil runs out of the gallery.",
        words(66, 232, "valve shut", anchor="middle"),
        words(184, 232, "full lift", anchor="middle"),
        words(302, 232, "full lift", anchor="middle"),
        placed((case(34), lifter(0)), 66, 146),
        right(4, 44, "hole at", "the gallery"),
        placed((case(34), lifter(lift)), 184, 146),
        right(122, 44, "stays in", "the bore"),
        placed((case(lift - 4), lifter(lift)), 302, 146),
        arrow((302 - half + 4, 146 + lift + 6), (302 - half - 20, 146 + lift + 14)),
        wrong(242, 44, "comes", "out of it"),
    )


def ring_in_groove(sheet: Sheet) -> Drawing:
    """A snap ring in its groove: square corners, all the way in, sharp side outwards."""

    def wall(square: bool) -> Area:
        """The wall of the body on the right, with the groove in it."""
        bottom = (
            ((28, 12), (28, -6)) if square else tuple((x + 20, y + 3) for x, y in bow((0, 0), 9, 90, -90))
        )
        return Area(((6, 52), (6, 12), *bottom, (6, -6), (6, -70), (60, -70), (60, 52)), "a")

    def ring(x: float, sharp_up: bool) -> Area:
        """The ring's section: sharp corners on one side, rounded ones on the other."""
        sharp = ((-24, 9), (24, 9))
        worn = (*bow((18, 0), 6, 0, -90), *bow((-18, 0), 6, -90, -180))
        points = (*sharp, *worn)
        side = 1 if sharp_up else -1
        return Area(tuple((x + px, 3 + side * (py - 1.5)) for px, py in points), "b")

    cup = rect(-60, -40, 4, -6, "c")
    return sketch(
        "Ring to the bottom of its groove, sharp side outwards",
        "The upper edge of a lifter's wall with its groove, cut and enlarged, twice. Right: the groove has"
        " square corners, the ring reaches its bottom, and its sharp side faces outwards. Wrong: the groove's"
        " bottom is round, the ring does not reach it, and its rounded side faces outwards: it climbs out.",
        words(62, 194, "outwards", anchor="middle"),
        arrow((62, 168), (62, 186)),
        placed((wall(True), cup, ring(3, True)), 98, 122),
        right(8, 34, "to the bottom,", "sharp side out"),
        placed((wall(False), cup, ring(-8, False)), 276, 122),
        wrong(186, 34, "round bottom,", "rounded side out"),
    )


def lifter_foot(sheet: Sheet) -> Drawing:
    """A foot that is a little domed and has turned, one that is hollow and has stood still."""

    def side(crown: float) -> Area:
        """The foot of a lifter from the side, its middle out by that, or in where it is negative."""
        across = [(x, -30 - crown * (1 - (x / 44) ** 2)) for x in range(-44, 45, 11)]
        return Area(((-36, 46), (-36, -22), (-44, -22), *across, (44, -22), (36, -22), (36, 46)), "")

    edge = line((-58, 0), (58, 0), style="thin")
    rings = tuple(circle((0, 0), r, "thin") for r in (8, 16, 24, 32))
    stripes = tuple(line((-30, y), (30, y), style="thin") for y in (-14, -7, 0, 7, 14))
    return sketch(
        "A good foot is a little domed, without pits, and its marks go round: it has turned",
        "The foot of a lifter on a straight edge and from below, twice. Right: domed, it touches the"
        " straight edge in its middle, and its marks are circles. Wrong: hollow, it touches at its rim, and"
        " its marks are straight stripes in one place, for it has stood still, with pits.",
        placed((side(9), placed(edge, 0, -39)), 88, 186),
        placed((disc((0, 0), 44), rings), 88, 88),
        right(12, 26, "domed,", "it has turned"),
        placed((side(-9), placed(edge, 0, -30)), 268, 186),
        placed((disc((0, 0), 44), stripes, dot((14, 18), 3), dot((-20, 10), 2.5), dot((4, -22), 3)), 268, 88),
        wrong(190, 26, "hollow, pitted,", "it stood still"),
        scale="dome exaggerated",
    )
