"""Threads, inserts and torque: how they lie, what is counted, in what order they are drawn down."""

from __future__ import annotations

import math

from calc.core.drawing import Area, Drawing
from scripts.pictures.pen import (
    Shapes,
    arrow,
    both_sides,
    centre,
    disc,
    line,
    note,
    numbered,
    placed,
    rect,
    right,
    sketch,
    thread,
    words,
    wrong,
)
from scripts.pictures.sheet import Sheet


def _hole(half: float, deep: float, pitch: float, wide: float = 66, low: float = -104) -> Shapes:
    """A tapped blind hole in metal, its mouth at 0: threads `half` from the axis, to that depth."""
    flanks = tuple(thread(half, -deep, -6, 4, pitch))
    side = (
        (half + 6, 0),
        *reversed(flanks),
        (half, -deep - 8),
        (0, -deep - 8 - half * 0.6),
        (0, low),
        (wide, low),
        (wide, 0),
    )
    return both_sides(*side)


def insert_seated(sheet: Sheet) -> Drawing:
    """A wire insert under the face, one above it, one with its tang left in."""
    pitch, half = 12.0, 22.0

    def shown(first: int, tang: bool = False) -> Shapes:
        """An insert of six turns, the uppermost in that turn of the hole; its tang across the foot."""
        heights = [-6 - pitch * (n + 0.5) for n in range(first, first + 6)]
        turns = [
            Area(((x - 6, y), (x, y + 5.5), (x + 6, y), (x, y - 5.5)), "solid")
            for y in heights
            for x in (-half, half)
        ]
        bar = [rect(-half, heights[-1] - 3, half * 0.6, heights[-1] + 2, "solid")] if tang else []
        face = line((-58, 0), (58, 0), style="thin")
        return (*_hole(half, 90, pitch, 54), face, *turns, *bar, centre((0, -112), (0, 24)))

    return sketch(
        "First turn a quarter to one pitch under the face, and the tang out",
        "Three tapped holes with a wire insert, cut. Right: the top turn lies a little under the face, and"
        " the tang at the foot was broken off and taken out. Wrong: the top turn stands above the face."
        " Wrong: the tang still lies across the hole, where the stud would meet it.",
        placed(shown(1), 62, 168),
        right(2, 36, "below", "the face"),
        placed(shown(-2), 180, 168),
        wrong(124, 36, "above", "the face"),
        placed(shown(1, tang=True), 298, 168),
        wrong(242, 36, "tang left", "in the hole"),
    )


def insert_pulled(sheet: Sheet) -> Drawing:
    """The pull test: a spacer wider than the insert's hole, so that the metal round it is free to come up."""

    def test(inside: float) -> Shapes:
        flanks = thread(12, -70, 0, 3, 8)
        return (
            *both_sides((18, 0), (72, 0), (72, -84), (0, -84), (0, -76), (18, -76)),
            *both_sides((12, 0), (18, 0), (18, -64), (12, -64), hatch="b"),
            rect(-12, -70, 12, 92),
            line(*flanks, style="thin"),
            *both_sides((inside, 0), (inside + 26, 0), (inside + 26, 44), (inside, 44), hatch="c"),
            rect(-inside - 26, 44, inside + 26, 52),
            rect(-24, 52, 24, 74),
            centre((0, -92), (0, 102)),
        )

    return sketch(
        "A spacer wider than the insert, so that what is loose can come up",
        "A stud in an insert, pulled by its nut over a spacer, cut, twice. Right: the spacer stands on the"
        " case outside of the insert, and an arrow shows the metal free to rise. Wrong: the spacer stands"
        " on the insert itself and holds it down, so the test shows nothing.",
        placed((test(30), arrow((24, 6), (24, 30)), arrow((-24, 6), (-24, 30))), 88, 136),
        right(8, 34, "spacer wider", "than the insert"),
        placed(test(13), 268, 136),
        wrong(188, 34, "spacer holds", "the insert down"),
    )


def three_wires(sheet: Sheet) -> Drawing:
    """Two wires on one side in neighbouring grooves, one opposite; a wire that is too thin."""
    pitch, deep = 34.0, 30.0

    def bolt(radius: float) -> Shapes:
        """A thread that lies, with wires of that radius in its grooves, between the micrometer's faces."""
        upper: list[tuple[float, float]] = []
        lower: list[tuple[float, float]] = []
        for n in range(4):
            x = -68 + pitch * n
            upper += [(x, 34 - deep), (x + pitch / 2 - 2, 34), (x + pitch / 2 + 2, 34)]
            lower += [(x, -34), (x + pitch / 2, -34 + deep)]
        upper.append((68, 34 - deep))
        lower.append((68, -34))
        sink = 34 - deep + radius / math.sin(math.atan2(pitch / 2 - 2, deep))
        return (
            Area((*upper, *reversed(lower)), ""),
            disc((-34, sink), radius, "c"),
            disc((0, sink), radius, "c"),
            disc((-17, -sink), radius, "c"),
            rect(-52, sink + radius, 18, sink + radius + 12),
            rect(-52, -sink - radius - 12, 18, -sink - radius),
        )

    return sketch(
        "Two wires in neighbouring grooves, one opposite, on the flanks",
        "A bolt's thread between a micrometer's faces, with three wires, twice. Right: two wires lie in"
        " neighbouring grooves on one side, one opposite between them; each touches both flanks half way up"
        " and stands above the crests. Wrong: the wires are too thin, sink to the root, and the micrometer"
        " touches the crests.",
        placed(bolt(10.5), 92, 126),
        right(10, 36, "near best size,", "above the crests"),
        placed(bolt(6), 274, 126),
        wrong(194, 36, "too thin: the", "crests are read"),
    )


def full_turns(sheet: Sheet) -> Drawing:
    """What counts of a stud in its hole: full turns of both."""
    counted = 54.0
    return sketch(
        "Full turns count: no chamfer, no run-out, no end of the bolt",
        "A stud in a tapped hole, cut. A dimension line marks the length in which stud and hole both have"
        " full turns. Above it the countersink of the hole, below it the chamfered end of the stud and the"
        " run-out of the tap are left out.",
        placed(
            (
                _hole(26, 96, 12, 74, -126),
                Area(
                    (
                        (-26, 40), (-26, -14), *((-x, y) for x, y in reversed(thread(26, -80, -14, -4, 12))),
                        (-16, -90), (16, -90), *thread(26, -80, -14, -4, 12), (26, 40),
                    ),
                    "",
                ),
                centre((0, -130), (0, 50)),
                line((30, -14), (112, -14), style="thin"),
                line((30, -14 - counted - 12), (112, -14 - counted - 12), style="thin"),
                arrow((98, -18), (98, -14 - counted - 8), double=True),
            ),
            104,
            176,
        ),
        words(216, 128, "counted:", "full turns of both"),
        note(216, 206, (138, 174), "countersink:", "not counted"),
        note(216, 78, (122, 90), "end and run-out:", "not counted"),
    )  # fmt: skip


def torque_oil(sheet: Sheet) -> Drawing:
    """Oil the thread and the face: almost half rubs there."""

    def joint() -> Shapes:
        return (
            *both_sides((16, 0), (74, 0), (74, -30), (16, -30)),
            *both_sides((16, 0), (40, 0), (40, 9), (16, 9), hatch="c"),
            rect(-14, -40, 14, 78),
            both_sides((14, 9), (34, 9), (34, 50), (14, 50), hatch="b")[0],
            both_sides((14, 9), (34, 9), (34, 50), (14, 50), hatch="b")[1],
            centre((0, -48), (0, 88)),
        )

    return sketch(
        "Oil thread and face: almost half of the rubbing is at the face",
        "A nut on its stud, cut. Thick lines mark two places for oil: 1 the thread, 2 the face of the nut"
        " on its washer.",
        placed(
            (
                joint(),
                line((14, 10), (14, 49), style="band"),
                line((-14, 10), (-14, 49), style="band"),
                line((14, 9), (35, 9), style="band"),
                line((-14, 9), (-35, 9), style="band"),
            ),
            104,
            66,
        ),
        line((118, 102), (196, 126), style="thin"),
        numbered(204, 130, 1),
        words(220, 126, "thread"),
        line((132, 75), (196, 86), style="thin"),
        numbered(204, 88, 2),
        words(220, 84, "face of the nut"),
    )


def torque_order(sheet: Sheet) -> Drawing:
    """An order for eight nuts, from the middle outwards, and the rounds."""
    order = ((150, 52), (210, 128), (210, 52), (150, 128), (60, 52), (300, 128), (300, 52), (60, 128))
    full = sheet.tell("torque.head_nut", "nominal", "3  all, {size}") or ("3  all",)
    return sketch(
        "Crosswise from the middle; an invented order, the maker's goes before it",
        "A head for two cylinders with eight nuts, numbered in the order in which they are tightened: the"
        " four in the middle first, crosswise, then the outer four, crosswise. Rounds: first a third of the"
        " torque, then two thirds, then all of it, and once more round.",
        placed(
            (
                Area(((20, 20), (340, 20), (340, 160), (20, 160)), "a"),
                disc((105, 90), 46),
                disc((255, 90), 46),
                *(numbered(x, y, n, 11) for n, (x, y) in enumerate(order, 1)),
            ),
            0,
            108,
        ),
        words(20, 104, "round"),
        words(20, 84, "1  a third", "2  two thirds", *full, "4  the same again, at the full setting"),
        sizes=sheet,
    )


def drill_square(sheet: Sheet) -> Drawing:
    """The tap follows the drill, the stud the tap."""

    def stud(lean: float) -> Shapes:
        return (
            Area(((-72, 0), (72, 0), (72, -64), (-72, -64)), "a"),
            *placed(
                (
                    rect(-10, -50, 10, 112),
                    line((-10, -6), (10, -6), style="thin"),
                    centre((0, -58), (0, 122)),
                ),
                0,
                0,
                lean,
            ),
            Area(((22, 0), (22, 108), (32, 108), (32, 10), (60, 10), (60, 0)), ""),
        )

    return sketch(
        "The tap follows the drill, and the stud the tap",
        "A stud in its hole beside a square, twice. Right: it stands along the square from foot to top."
        " Wrong: the hole was drilled leaning, and the stud stands off more and more towards its top.",
        placed(stud(0), 88, 108),
        right(8, 26, "stands square"),
        placed(stud(6), 268, 108),
        wrong(188, 26, "hole leans,", "stud will bend"),
    )


def pitch_gauge(sheet: Sheet) -> Drawing:
    """A pitch gauge that lies in the thread, and one of another pitch: the light tells."""

    def teeth(pitch: float, count: int, deep: float = 16) -> list[tuple[float, float]]:
        """Points of a row of teeth from 0 to the right."""
        return [p for n in range(count) for p in ((pitch * n, 0.0), (pitch * (n + 0.5), deep))] + [
            (pitch * count, 0.0)
        ]

    bolt = Area(((-4, -44), (-4, 0), *teeth(18, 7), (130, 0), (130, -44)), "a")

    def gauge(pitch: float, count: int, up: float) -> Area:
        return Area(
            ((0, 44 + up), *((x, y + up) for x, y in teeth(pitch, count)), (pitch * count, 44 + up)), ""
        )

    return sketch(
        "Hold the pitch gauge against the light: the right one lets none through, over its whole length",
        "A pitch gauge on a thread, twice. Right: its teeth lie in all the grooves, and no light comes"
        " through. Wrong: a gauge of a nearly equal pitch lies in the first groove and climbs out of the"
        " further ones, with light under it.",
        placed((bolt, gauge(18, 7, 1.5)), 18, 96),
        right(10, 30, "no light", "anywhere"),
        placed((bolt, placed(gauge(20.4, 6, 2), 0, 0, 7)), 212, 96),
        wrong(196, 30, "light under it:", "another pitch"),
    )
