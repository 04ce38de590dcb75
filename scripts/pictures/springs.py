"""Putting a head together: springs, their height, the room at full lift, the keepers."""

from __future__ import annotations

from calc.core.drawing import Area, Drawing
from calc.core.result import say
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
    ring,
    sketch,
    turning,
    words,
    wrong,
)
from scripts.pictures.sheet import Sheet, practice
from scripts.pictures.tools import dial


def _coils(low: float, high: float, half: float, wire: float, turns: int, lean: float = 0.0) -> Shapes:
    """A spring from the side, its ends ground flat; its top stands `lean` to the right."""
    pitch = (high - low - wire) / turns

    def at(x: float, y: float) -> tuple[float, float]:
        return x + lean * (y - low) / (high - low), y

    bars = []
    for n in range(turns + 1):
        y = low + pitch * n
        rise = pitch * 0.5 if 0 < n < turns else 0.0
        left, right_ = y - rise / 2, y + rise / 2
        bars.append(
            Area((at(-half, left), at(half, right_), at(half, right_ + wire), at(-half, left + wire)), "")
        )
    return tuple(bars)


def spring_square(sheet: Sheet) -> Drawing:
    """A spring beside a square, turned: how far its top stands off."""

    def stand(lean: float) -> Shapes:
        return (
            rect(-70, -12, 70, 0, "a"),
            Area(((34, 0), (34, 130), (46, 130), (46, 12), (66, 12), (66, 0)), ""),
            *_coils(0, 108, 33, 9, 5, -lean),
        )

    return sketch(
        "Turn the spring beside a square: the gap at its top is its lean",
        say(
            "A spring on a plate beside a square, twice. Right: as it is turned, it touches the square from"
            " foot to top. Wrong: its top stands off by a gap; {most} at most is common practice.",
            most=practice("1.5 mm"),
        ),
        placed(stand(0), 84, 66),
        turning((84, 172), 28, 150, 30),
        right(8, 30, "touches", "all the way up"),
        placed(stand(14), 262, 66),
        note(226, 212, (288, 172), "gap", anchor="end"),
        turning((248, 172), 28, 150, 30),
        wrong(180, 30, "stands off"),
        words(197, 16, say("more than {most}", most=practice("1.5 mm"))),
    )


def _retainer(y: float) -> Shapes:
    """Retainer with its keepers, its underside at that height."""
    return (
        *both_sides(
            (7, y - 6),
            (13, y - 6),
            (20, y),
            (44, y),
            (44, y + 8),
            (22, y + 10),
            (16, y + 14),
            (11, y + 14),
            hatch="b",
        ),
        *both_sides((4.5, y - 4), (7, y - 6), (11, y + 14), (4.5, y + 14), hatch="c"),
    )


def _bed(guide: float = 44) -> Shapes:
    """The head with its spring's bed at 0, the guide and its seal above it."""
    return (
        *both_sides((14, -26), (72, -26), (72, 0), (14, 0)),
        *both_sides((5, -26), (14, -26), (14, guide), (5, guide), hatch="b"),
        *both_sides((5, guide), (16, guide - 12), (16, guide + 8), (5, guide + 8), hatch="solid"),
    )


def spring_height(sheet: Sheet) -> Drawing:
    """Bed to where the spring will bear, and again above the shims."""
    unit = 3.0
    high = sheet.mm("spring.installed_height", 36.5) * unit
    stem = rect(-4.5, -26, 4.5, high + 26)
    return sketch(
        "Fitted height: from what the spring stands on to where it bears",
        "A stem with retainer and keepers over the spring's bed, without a spring, twice. Left: the"
        " retainer is pulled up, and the height is read from the bare bed to the retainer's underside."
        " Right: shims lie on the bed, and the height is read again, from the top of the shims.",
        placed((_bed(), stem, _retainer(high), centre((0, -34), (0, high + 34))), 88, 84),
        arrow((120, 84 + high + 14), (120, 84 + high + 36)),
        arrow((56, 84 + high + 14), (56, 84 + high + 36)),
        sheet.dimension("spring.installed_height", (132, 84), (132, 84 + high), -22),
        words(12, 34, "1 pull it up, read", "from the bed"),
        placed(
            (
                _bed(),
                both_sides((18, 0), (62, 0), (62, 7), (18, 7), hatch="c"),
                both_sides((18, 7), (62, 7), (62, 14), (18, 14), hatch="c"),
                stem,
                _retainer(high),
                centre((0, -34), (0, high + 34)),
                arrow((30, 19), (30, high - 6), double=True),
            ),
            266,
            84,
        ),
        note(352, 250, (322, 92), "shims", anchor="end"),
        words(190, 34, "2 shims under, toothed", "side on the aluminium:", "read again above them"),
        scale="height to scale",
        sizes=sheet,
    )


def full_lift_room(sheet: Sheet) -> Drawing:
    """Coil on coil, retainer on seal: what must not touch at full lift."""
    room = say("{least} left or more", least=practice("1 mm"))
    return sketch(
        "At full lift, coil may meet coil and retainer may meet seal",
        say(
            "A spring pressed to full lift, and a retainer above its guide. Left: the gaps between the"
            " coils, which together are the room left. Right: the gap between the retainer's underside and"
            " the seal on the guide. Both keep {least} or more, common practice.",
            least=practice("1 mm"),
        ),
        placed(
            (
                rect(-66, -12, 66, 0, "a"),
                _coils(0, 84, 42, 11, 5),
                rect(-50, 84, 50, 94, "b"),
                arrow((0, 124), (0, 100)),
                rect(30, 13.5, 80, 15.5, "solid"),
            ),
            88,
            82,
        ),
        note(178, 150, (160, 98), "feeler", anchor="end"),
        words(12, 44, "coil on coil:", "all gaps together"),
        placed((_bed(38), rect(-4.5, -26, 4.5, 88), _retainer(62), arrow((0, 118), (0, 94))), 268, 96),
        note(206, 196, (256, 148), "gap", anchor="end"),
        words(190, 44, "retainer on seal"),
        words(180, 12, room, anchor="middle"),
    )


def keepers(sheet: Sheet) -> Drawing:
    """Two keepers, level, a gap on both sides."""

    def fitted(low: float) -> Shapes:
        """Stem with its groove, retainer, and two keepers of which the right one sits `low` too high."""
        cone = ((9, -20), (18, 28), (9, 28))
        groove = ((9, 0), (9, -6), (5, -6), (5, 0))
        return (
            *both_sides((11, -24), (20, 26), (58, 26), (58, 12), (30, 8), (24, -24), hatch="b"),
            rect(-9, -44, 9, 52),
            Area(tuple((-x, y) for x, y in cone), "c"),
            Area(tuple((x, y + low) for x, y in cone), "c"),
            *(Area(tuple((s * x, y) for x, y in groove), "solid") for s in (-1, 1)),
            centre((0, -52), (0, 60)),
        )

    def above(gap_left: float, gap_right: float) -> Shapes:
        return (
            disc((0, 0), 40),
            ring((0, 0), 24, 11, "c", gap_right, 180 - gap_left),
            ring((0, 0), 24, 11, "c", 180 + gap_left, 360 - gap_right),
            disc((0, 0), 11),
        )

    return sketch(
        "Keepers sit level with each other, with a gap on both sides between them",
        "Keepers in their retainer, cut and from above, twice. Right: both stand at one height, and from"
        " above there is a gap on both sides. Wrong: one stands higher than the other, and from above they"
        " touch on one side.",
        placed(fitted(0), 88, 186),
        placed(above(14, 14), 88, 86),
        right(8, 26, "level, a gap", "on both sides"),
        placed(fitted(11), 268, 186),
        placed(above(0, 28), 268, 86),
        wrong(188, 26, "one stands high,", "they touch"),
    )


def valve_rolled(sheet: Sheet) -> Drawing:
    """The stem rolled on two V-blocks: dial in its middle, then on the face."""
    vee = Area(((-16, -34), (16, -34), (16, 0), (9, 0), (0, -9), (-9, 0), (-16, 0)), "")
    valve = Area(
        (
            (0, 40), (8, 40), (14, 32), (24, 12), (40, 7), (268, 7), (270, 5), (270, -5), (268, -7),
            (40, -7), (24, -12), (14, -32), (8, -40), (0, -40),
        ),
        "",
    )  # fmt: skip
    return sketch(
        "Roll the stem on two V-blocks, its tip against a stop",
        "A valve lies with its stem on two V-blocks, its tip against a stop, and is turned by hand. A dial"
        " gauge stands on the middle of the stem, marked 1; then on the face of the head, square to it,"
        " marked 2.",
        placed((vee, line((0, -9), (0, -9))), 130, 89),
        placed(vee, 270, 89),
        placed(valve, 40, 100),
        rect(311, 70, 321, 130, "a"),
        placed((rect(-2, 0, 2, 22), dial(0, 42, 20, 20)), 200, 107),
        placed((rect(-2, 0, 2, 22), dial(0, 42, 20, 20)), 52, 136, 32),
        numbered(234, 150, 1),
        numbered(78, 188, 2),
        turning((352, 100), 22, 140, 220),
        words(12, 34, "1 is the stem straight?"),
        words(12, 18, "2 does the face run true to it?"),
        words(342, 60, "stop", anchor="end"),
    )
