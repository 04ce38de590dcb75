"""Connecting rods: which way they are wrong, where they are read, what a cut and a shell do."""

from __future__ import annotations

import math

from calc.core.drawing import Area, Drawing
from calc.core.result import say
from scripts.pictures.pen import (
    Shapes,
    arrow,
    bow,
    centre,
    circle,
    disc,
    line,
    note,
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
from scripts.pictures.sheet import Sheet, practice


def _front(long: float = 120, big: float = 34, small: float = 15, boss: float = 16) -> Shapes:
    """A rod from the front: big end on 0, 0, small end above it."""
    shank = ((-13, big), (-8, long - small), (8, long - small), (13, big))
    return (
        Area(shank, ""),
        rect(-big - boss, -13, -big + 4, 13),
        rect(big - 4, -13, big + boss, 13),
        disc((0, 0), big + 11),
        disc((0, 0), big),
        disc((0, long), small + 7),
        disc((0, long), small),
        line((-big - boss, 0), (-big, 0)),
        line((big, 0), (big + boss, 0)),
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
        "Three ways for a rod to be out of line",
        "Three rods. Bend: seen from the side, the small-end arbor leans against the big-end mandrel. Twist:"
        " seen from above, along the rod, the arbor crosses the mandrel at an angle. Offset: both bores are"
        " parallel, but the small end stands to one side along the crank.",
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
        "Three directions, none at the joint: there the gauge drops in",
        "A big end from the front, cap below, bolted up. Readings run along the rod, A, and 60° to the right"
        " and to the left of that, B and C. A cross marks the joint between rod and cap, left and right: no"
        " place to read.",
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


def rod_marks(sheet: Sheet) -> Drawing:
    """Numbers of rod and cap on one side, and a cap that was turned."""

    def marked(cap: float) -> Shapes:
        front = _front(118, boss=28)
        return (*front, *words(54, 2, "3", anchor="middle"), *words(cap, -11.5, "3", anchor="middle"))

    return sketch(
        "A cap fits one way round: both numbers on the same side",
        "Two rods with their caps, numbered at the joint. Right: the number on the rod and that on the cap"
        " stand on the same side. Wrong: the cap was turned round, and its number stands on the other side.",
        placed(marked(54), 88, 96),
        right(10, 26, "same number,", "same side"),
        placed(marked(-54), 268, 96),
        wrong(190, 26, "cap turned"),
    )


def big_end_cut(sheet: Sheet) -> Drawing:
    """Before and after: shorter along the rod, as wide at the joint as it was."""
    bore, cut = 58.0, 9.0
    tilt = math.degrees(math.asin(cut / bore))

    def half(side: int, gap: float) -> Shapes:
        """Rod (1) or cap (-1), its joint face at `gap` from the middle, cut off the joint by `cut`."""
        outline = [
            *bow((0, 0), bore + 20, 12, 168),
            (-bore - 36, cut),
            (-bore - 36, gap),
            (-bore if gap == 0 else -math.sqrt(bore**2 - gap**2), gap),
            *bow(
                (0, 0), bore, 180 - math.degrees(math.asin(gap / bore)), math.degrees(math.asin(gap / bore))
            ),
            (bore + 36, gap),
            (bore + 36, cut),
        ]
        return (Area(tuple((x, side * y) for x, y in outline), "a"),)

    def metal(side: int) -> Area:
        """What the hone takes: between its round and the halves that came closer."""
        points = (*bow((0, 0), bore, 0, 180), *bow((0, -cut), bore, 180 - tilt, tilt))
        return Area(tuple((x, side * y) for x, y in points), "solid", "blue")

    slices = [rect(side * bore, -cut, side * (bore + 36), cut, "c") for side in (-1, 1)]
    return sketch(
        "Cut faces leave metal for the hone along the rod, none at the joint",
        "A big end before and after its faces are cut. Before: a slice is marked at the joint of rod and"
        " cap. After: the halves have come closer, and a dashed circle shows the round that is honed."
        " Between it and the halves lies metal, most along the rod, above and below, and none at the joint,"
        " left and right.",
        placed((half(1, 0), half(-1, 0), slices, words(0, -4, "before", anchor="middle")), 94, 134, 0, 0.86),
        note(94, 40, (168, 132), "cut off", anchor="middle"),
        placed(
            (
                placed(half(1, cut), 0, -cut),
                placed(half(-1, cut), 0, cut),
                metal(1),
                metal(-1),
                circle((0, 0), bore, "hidden"),
                words(0, -4, "after", anchor="middle"),
            ),
            266,
            134,
            0,
            0.86,
        ),
        note(206, 222, (262, 180), "metal for the hone", anchor="middle"),
        note(266, 40, (316, 132), "none at the joint", anchor="middle"),
        words(266, 16, "as wide as before", anchor="middle"),
        scale="cut exaggerated",
    )


def shell_crush(sheet: Sheet) -> Drawing:
    """A shell's ends stand proud of the joint until the cap is on."""

    def cap(proud: float) -> Shapes:
        return (
            Area(
                (
                    *bow((0, 0), 62, 196, 344),
                    (78, -17),
                    (78, 0),
                    *bow((0, 0), 46, 360, 180),
                    (-78, 0),
                    (-78, -17),
                ),
                "a",
            ),
            Area(
                (
                    (-36, proud),
                    *bow((0, 0), 36, 180, 360),
                    (36, proud),
                    (46, proud),
                    *bow((0, 0), 46, 360, 180),
                    (-46, proud),
                ),
                "b",
            ),
            line((-84, 0), (84, 0), style="thin"),
        )

    return sketch(
        "A shell pressed home stands proud of the joint: that is its crush",
        say(
            "A half shell in its cap, twice. Right: both its ends stand above the joint, each half by about"
            " {low} to {high} as a rule. Wrong: the ends were filed level with the joint, nothing presses"
            " the shell home, and it turns.",
            low=practice("0.02 mm"),
            high=practice("0.05 mm"),
        ),
        placed(cap(9), 90, 128),
        note(90, 178, (134, 137), "proud", anchor="middle"),
        right(8, 36, "stands proud"),
        words(25, 22, say("{low} to {high}", low=practice("0.02 mm"), high=practice("0.05 mm"))),
        words(25, 8, "as a rule"),
        placed(cap(0), 270, 128),
        wrong(188, 36, "filed level:", "it works loose", "and turns"),
        scale="crush exaggerated",
    )


def strip_crushed(sheet: Sheet) -> Drawing:
    """The crushed strip is read where it is widest, and lies away from the joint."""
    upper = ((-60, 4), (-42, 6), (-20, 8), (0, 11), (14, 12), (30, 9), (48, 6), (60, 4))
    strip = Area((*upper, *((x, -y) for x, y in reversed(upper))), "c")

    def end(degrees: float) -> Shapes:
        a = math.radians(degrees)
        return (
            ring((0, 0), 50, 37, "a"),
            disc((0, 0), 34),
            rect(-66, -1, -36, 1, "solid"),
            rect(36, -1, 66, 1, "solid"),
            disc((35.5 * math.cos(a), 35.5 * math.sin(a)), 5, "solid"),
        )

    return sketch(
        "A quarter turn from the joint, and read where it is widest",
        "Above: a journal from above with the crushed strip along it, and beside it the packet's card of"
        " widths; arrows mark the strip's widest place, where the clearance is smallest. Below, the bearing"
        " from its end, twice. Right: the strip lies a quarter turn from the joint. Wrong: it lies at the"
        " joint.",
        placed(
            (rect(-74, -36, 74, 36), strip, arrow((14, 34), (14, 18)), arrow((14, -34), (14, -18))), 88, 254
        ),
        note(180, 282, (104, 268), "widest: read here"),
        (rect(186 + 34 * n, 226 - 3 - 2.5 * n, 214 + 34 * n, 226 + 3 + 2.5 * n, "solid") for n in range(5)),
        words(186, 198, "card: wider is tighter"),
        placed(end(90), 88, 116),
        right(8, 40, "a quarter turn", "from the joint"),
        placed(end(0), 266, 116),
        wrong(190, 40, "at the joint"),
        words(207, 26, "or over an oil hole"),
    )


def rod_hung(sheet: Sheet) -> Drawing:
    """One end on the balance, the other hung level."""
    rod = placed(_front(108, 26, 12), 0, 0, -90)

    def weighed(lean: float) -> Shapes:
        """Big end on the balance, the other end on a hanger from above."""
        x, y = 108 * math.cos(math.radians(lean)), 108 * math.sin(math.radians(lean))
        return (
            *placed(rod, 0, 0, lean),
            rect(-3, -58, 3, 0, "solid"),
            rect(-30, -64, 30, -58),
            Area(((-38, -92), (38, -92), (30, -64), (-30, -64)), ""),
            line((x, y), (x, 64)),
            rect(x - 14, 64, x + 14, 72, "a"),
            centre((-52, 0), (x + 30, 0)),
        )

    return sketch(
        "One end on the balance, the other hung level at its bore's centre",
        "A rod with its big end on a balance and its small end on a hanger, twice. Right: the rod lies"
        " level, each end carried at the centre of its bore. Wrong: the hanger is too high, the rod slopes,"
        " and weight moves from one end to the other.",
        placed(weighed(0), 42, 112, times=0.74),
        right(8, 22, "level"),
        placed(weighed(16), 226, 112, times=0.74),
        wrong(190, 22, "it slopes, and", "weighs neither end"),
    )


def rods_honed(sheet: Sheet) -> Drawing:
    """Two rods side by side on the mandrel, and one that tips."""

    def mandrel() -> Shapes:
        return (rect(-80, -13, 80, 13), rect(-34, 13, 34, 17, "solid"), rect(-34, -17, 34, -13, "solid"))

    def rod(x: float) -> Shapes:
        """A big end cut along the mandrel, its shank upwards."""
        return (
            rect(x - 17, 18, x + 17, 42, "a"),
            rect(x - 17, -42, x + 17, -18, "a"),
            Area(((x - 9, 42), (x - 6, 84), (x + 6, 84), (x + 9, 42)), ""),
        )

    return sketch(
        "Two rods side by side keep each other square on the hone, and are turned over every few strokes",
        "Big ends on a hone's mandrel, seen from the side, twice. Right: two rods stand side by side,"
        " square to the mandrel, and an arrow shows them turned over. Wrong: one rod alone tips to and fro,"
        " and its bore becomes wide at both ends.",
        placed((mandrel(), rod(-18), rod(18), turning((0, 84), 22, 150, 30)), 90, 96),
        right(8, 26, "side by side,", "turned over"),
        placed((mandrel(), placed(rod(0), 0, 0, 9), turning((0, 78), 26, 120, 60, double=True)), 270, 96),
        wrong(188, 26, "alone it tips:", "wide at both ends"),
    )
