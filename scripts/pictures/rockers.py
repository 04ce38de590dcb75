"""From the cam's gear to the valve: marks in line, clay on a piston, a rocker square at half lift, the tip's
mark."""

from __future__ import annotations

import math

from calc.core.drawing import Area, Drawing, Points
from scripts.pictures.pen import (
    Shapes,
    arrow,
    centre,
    circle,
    disc,
    line,
    note,
    placed,
    rect,
    right,
    sketch,
    turning,
    words,
    wrong,
)
from scripts.pictures.sheet import Sheet


def _gear(radius: float, teeth: int, turn: float) -> Area:
    """A gear from its end, one tooth upright where `turn` is 0, degrees."""
    points: list[tuple[float, float]] = []
    for n in range(teeth):
        for part, off in ((-0.3, -1), (-0.17, 1), (0.17, 1), (0.3, -1)):
            a = math.radians(90 + turn) + 2 * math.pi * (n + part) / teeth
            r = radius + 3 * off
            points.append((r * math.cos(a), r * math.sin(a)))
    return Area(tuple(points), "")


def cam_marks(sheet: Sheet) -> Drawing:
    """One dot between two: right, and one tooth off."""

    def pair(off: int) -> Shapes:
        small, large = 28.0, 56.0
        step = 360 / 32
        gap = small + large
        dots = [(math.radians(90 + step * (n + 0.5 + off)), large - 9) for n in (-1, 0)]
        return (
            *placed(_gear(large, 32, step / 2 + step * off), 0, 0),
            *placed(_gear(small, 16, 180), 0, gap),
            circle((0, 0), 12),
            circle((0, gap), 10),
            disc((0, gap - small + 8), 2.6, "solid"),
            *(disc((r * math.cos(a), r * math.sin(a)), 2.6, "solid") for a, r in dots),
            centre((0, -20), (0, gap + 18)),
        )

    return sketch(
        "The crank gear's mark between the cam gear's two",
        "A crank gear above a cam gear, twice. Right: the single dot of the crank gear points between the two"
        " dots of the cam gear. Wrong: the two dots stand one tooth to the side.",
        placed(pair(0), 90, 84),
        right(20, 6, "between the two"),
        placed(pair(1), 268, 84),
        wrong(196, 6, "one tooth off"),
    )


def clay_cut(sheet: Sheet) -> Drawing:
    """Clay in a valve pocket, cut through: where it is thinnest, and the wrong place."""

    def piston(edge: float) -> Shapes:
        crown: Points = (
            (-62, 0),
            (-62, 34),
            (-edge, 34),
            (-edge, 20),
            (edge, 20),
            (edge, 34),
            (62, 34),
            (62, 0),
        )
        clay: Points = (
            (-edge, 20),
            (-edge, 46),
            (-40, 46),
            (-40, 32),
            (40, 32),
            (40, 46),
            (edge, 46),
            (edge, 20),
        )
        valve: Points = ((-40, 32), (40, 32), (40, 37), (8, 46), (6, 92), (-6, 92), (-8, 46), (-40, 37))
        return (Area(crown, "b"), Area(clay, "c"), Area(valve, ""), centre((0, 10), (0, 100)))

    return sketch(
        "Clay is cut through the middle of the valve's print: once under the head, once beside its edge",
        "A piston's crown with a valve pocket full of clay, cut through, and the valve pressed into it. The"
        " clay is measured under the valve's head, and beside the valve's edge to the wall of the pocket.",
        placed(piston(52), 180, 22),
        arrow((150, 42), (150, 54), double=True),
        note(24, 112, (150, 48), "under", "the head"),
        arrow((220, 60), (232, 60), double=True),
        note(330, 112, (226, 60), "beside", "the edge", anchor="end"),
    )


def half_lift_square(sheet: Sheet) -> Drawing:
    """The arm as far over square shut as under it open; and square when shut, with the longer sweep."""

    def arms(shut: float, opened: float) -> Shapes:
        out: list = []
        for angle, style in ((shut, "outline"), (opened, "hidden")):
            a = math.radians(angle)
            x, y = -78 * math.cos(a), 78 * math.sin(a)
            out += [
                line((x, y), (0, 0), (52 * math.cos(a), -52 * math.sin(a)), style=style),
                disc((x, y), 3, "solid"),
            ]
        tip = 78 * math.sin(math.radians(shut))
        return (
            rect(-86, -64, -70, tip - 4),
            *out,
            disc((0, 0), 9, "a"),
            line((-96, 0), (64, 0), style="thin"),
        )

    return sketch(
        "Square to the valve at half of its lift: the pad stays on the middle of the tip",
        "A rocker's two arms on their shaft, shut and, dashed, at full lift, twice. Right: the valve arm"
        " stands as far above square when shut as below it when open. Wrong: it is square when shut, goes all"
        " the way below, and the pad wanders four times as far.",
        placed(arms(14, -14), 108, 96),
        right(18, 8, "at half lift"),
        placed(arms(0, -28), 290, 96),
        wrong(196, 8, "when shut"),
        turning((290, 96), 60, 180, 206, double=False),
    )


def tip_marks(sheet: Sheet) -> Drawing:
    """Blue rubbed off the tip: narrow in the middle, wide, and at the edge."""

    def tip(left: float, wide: float) -> Shapes:
        high = 26.0
        return (disc((0, 0), 34, "c"), rect(left, -high, left + wide, high), centre((0, -42), (0, 42)))

    return sketch(
        "What the pad leaves on a blued tip: narrow and in the middle",
        "Three stem tips from above with the blue rubbed off. Right: a narrow band in the middle. Wrong: a"
        " wide band, and a band at the edge.",
        placed(tip(-6, 12), 62, 76),
        right(20, 12, "middle"),
        placed(tip(-20, 38), 180, 76),
        wrong(140, 12, "wide"),
        placed(tip(12, 14), 298, 76),
        wrong(258, 12, "edge"),
        words(180, 128, "shaft to the left", anchor="middle"),
    )
