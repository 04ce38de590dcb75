"""Closing a case: shells on dowels, gear marks, shims, studs' lips and seals, the order of nuts."""

from __future__ import annotations

import math

from calc.core.drawing import Area, Drawing
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
    sketch,
    words,
    wrong,
)
from scripts.pictures.sheet import Sheet


def shell_dowel(sheet: Sheet) -> Drawing:
    """A shell on its dowel, its oil hole over the gallery; and one beside it."""
    R, wall = 60.0, 11.0

    def saddle(off: float) -> Shapes:
        gap = 0.0 if not off else 5.0
        shell = Area((*bow((0, gap), R, 180, 360), *bow((0, gap), R - wall, 360, 180)), "c")
        turn = -90 + off
        hole = placed((rect(R - wall - 1, -5, R + 1, 5),), 0, gap, turn)
        dowel = placed((rect(R - 8, -5, R + 16, 5, "solid"),), 0, 0, -50)
        return (
            Area(
                ((-96, 0), (-R - gap / 4, 0), *bow((0, 0), R, 180, 360), (96, 0), (96, -96), (-96, -96)), "a"
            ),
            rect(-5, -96, 5, -R),
            shell,
            *hole,
            *dowel,
        )

    return sketch(
        "Each shell over its dowel, its oil hole over the gallery's: then it lies down all over",
        "A main saddle with its shell, seen along the crank, twice. Right: the dowel stands in the shell's"
        " hole, and the oil hole lies over the gallery. Wrong: the shell lies on the dowel, stands off the"
        " saddle, and shuts the gallery.",
        placed(saddle(0), 94, 100, times=0.84),
        note(94, 120, (136, 52), "dowel", anchor="middle"),
        right(24, -6, "lies down"),
        placed(saddle(24), 264, 100, times=0.84),
        wrong(196, -6, "rides on its dowel"),
    )


def gear_marks(sheet: Sheet) -> Drawing:
    """The mark of the small gear between both marks of the large one."""

    def gear(at: tuple[float, float], r: float, teeth: int, turn: float) -> Shapes:
        points = []
        for n in range(teeth):
            for part, k in ((-0.25, 0.93), (-0.12, 1.07), (0.12, 1.07), (0.25, 0.93)):
                a = math.radians(turn) + 2 * math.pi * (n + part) / teeth
                points.append((at[0] + k * r * math.cos(a), at[1] + k * r * math.sin(a)))
        return (Area(tuple(points), ""), circle(at, 0.25 * r))

    def pair(off: float) -> Shapes:
        step = 360 / 24
        marks = (90 - step / 2 + off, 90 + step / 2 + off)
        dots = tuple(
            disc((52 * math.cos(math.radians(a)), -66 + 52 * math.sin(math.radians(a))), 3, "solid")
            for a in marks
        )
        return (
            *gear((0, 34), 33, 12, -90),
            *gear((0, -66), 66, 24, 90 + step / 2),
            disc((0, 34 - 24), 3, "solid"),
            *dots,
        )

    return sketch(
        "The small gear's mark between both marks of the large one",
        "Crank gear above and cam gear below, twice. Right: the one mark of the small gear points between the"
        " two marks of the large gear. Wrong: the large gear stands one tooth further.",
        placed(pair(0), 92, 138, times=0.92),
        right(34, -16, "one between two"),
        placed(pair(15), 266, 138, times=0.92),
        wrong(208, -16, "one tooth off"),
    )


def three_shims(sheet: Sheet) -> Drawing:
    """Three shims between thrust bearing and flywheel, and a dial on the flywheel."""
    shaft = rect(-110, 34, 118, 66, "")
    bearing = (rect(-60, 66, -8, 118, "c"), rect(-60, -18, -8, 34, "c"))
    shims = tuple(
        rect(x, y, x + 5, y + 48, "ab"[n % 2]) for n, x in enumerate((-2, 5, 12)) for y in (66, -14)
    )
    wheel = (rect(28, 66, 58, 160, "b"), rect(28, -60, 58, 34, "b"), rect(58, 26, 76, 74, "solid"))
    dial = (circle((104, 140), 16), line((88, 140), (58, 140)), line((104, 140), (112, 150), style="thin"))

    def gauged(more: float) -> Shapes:
        """A micrometer's anvils on both sides of what is between them."""
        wide = 4 + more
        return rect(-30, 12, -1, 28), rect(wide + 1, 12, wide + 34, 28)

    return sketch(
        "Always three, each measured; flywheel at full torque, dial zeroed with the crank at one end",
        "Crank with its thrust bearing, three shims and the flywheel, cut. A dial gauge rests on the"
        " flywheel; the crank is levered from one end to the other. Right: one shim between a micrometer's"
        " faces. Wrong: all three measured in one.",
        placed((shaft, bearing, shims, wheel, dial, centre((-124, 50), (126, 50))), 106, 46, times=0.8),
        placed((arrow((-36, 0), (36, 0), double=True),), 78, 40),
        note(24, 176, (110, 132), "three shims"),
        placed((gauged(0), rect(0, 0, 4, 40, "b")), 284, 136),
        right(226, 112, "each by itself"),
        placed((gauged(9), rect(0, 0, 4, 40, "b"), rect(4, 0, 8, 40, "a"), rect(8, 0, 12, 40, "b")), 284, 46),
        wrong(226, 22, "all in one"),
    )


def lip_spot_faced(sheet: Sheet) -> Drawing:
    """The lip that a pulled stud raised, and the face once it is cut."""

    def boss(lip: bool) -> Shapes:
        top = ((12, 0), (12, 10), (20, 9), (30, 0)) if lip else ((12, 0),)
        half = (*top, (84, 0), (84, -64), (12, -64))
        return (
            *(Area(tuple((side * x, y) for x, y in half), "a") for side in (-1, 1)),
            rect(-12, -64, 12, 0 if not lip else 8, ""),
            *(line((side * 12, -8 - 8 * n), (side * 7, -12 - 8 * n)) for side in (-1, 1) for n in range(6)),
        )

    foot = placed((rect(18, 0, 84, 26, "b"), rect(-84, 0, -18, 26, "b")))
    tilted = placed(foot, 0, 9, 3)
    return sketch(
        "The lip round a pulled stud is cut flat, or the cylinder stands on it",
        "A stud's hole in a case, cut, twice. Wrong: the pulled thread has raised a lip, and the cylinder's"
        " foot stands on it. Right: the lip is spot-faced, and the foot lies on the face.",
        placed((boss(True), tilted), 92, 92),
        wrong(14, 4, "on the lip"),
        placed((boss(False), foot), 268, 92),
        right(224, 4, "spot-faced"),
    )


def stud_breaks_through(sheet: Sheet) -> Drawing:
    """A hole that breaks into the room for oil: sealant on the thread."""

    def wall(sealed: bool) -> Shapes:
        stud = rect(-9, -58, 9, 70, "c")
        seal = tuple(
            rect(side * 9 if side > 0 else -13, -48, 13 if side > 0 else -9, 0, "solid") for side in (-1, 1)
        )
        drops = tuple(disc((16 + 5 * n, 14 + 9 * n), 3, "solid") for n in range(3))
        return (rect(-84, -52, -13, 0, "a"), rect(13, -52, 84, 0, "a"), stud, *(seal if sealed else drops))

    return sketch(
        "A hole that breaks into the room for oil wants sealant on the stud's thread",
        "A stud through the wall of a case, cut, twice; oil lies below the wall. Right: sealant fills the"
        " thread. Wrong: dry, and oil climbs along the thread to the outside.",
        placed(wall(True), 92, 84),
        words(92, 10, "oil inside", anchor="middle"),
        right(12, -14, "sealant"),
        placed(wall(False), 268, 84),
        words(268, 10, "oil inside", anchor="middle"),
        wrong(222, -14, "dry: it weeps"),
    )


def nuts_outward(sheet: Sheet) -> Drawing:
    """Large nuts from the middle out, in steps; small ones after."""
    places = ((0, 34), (0, -34), (-62, 34), (62, -34), (62, 34), (-62, -34))
    small = ((-112, 52), (112, 52), (-112, -52), (112, -52), (-30, 62), (30, -62))
    return sketch(
        "From the middle out, crosswise, in steps; the small nuts of the edge after the large ones",
        "A closed case seen on its joint. Six large nuts beside the main bearings are numbered from the"
        " middle"
        " out, crosswise. The small nuts round the edge follow.",
        placed(
            (
                rect(-136, -72, 136, 72, ""),
                *(numbered(x, y, n, 13) for n, (x, y) in enumerate(places, 1)),
                *(disc(at, 5, "b") for at in small),
                line((-136, 0), (136, 0), style="centre"),
            ),
            206,
            80,
        ),
        words(206, -16, "large: 1 to 6, in three steps; then the small ones", anchor="middle"),
    )
