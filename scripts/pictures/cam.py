"""Camshafts: where a lobe is measured, and which way its wheel is turned."""

from __future__ import annotations

import math

from calc.core.drawing import Area, Drawing
from scripts.pictures.pen import (
    Shapes,
    bow,
    centre,
    circle,
    disc,
    line,
    note,
    placed,
    right,
    sketch,
    turning,
    words,
    wrong,
)
from scripts.pictures.sheet import Sheet
from scripts.pictures.tools import dial


def _lobe(base: float = 34.0, lift: float = 20.0, nose: float = 15.0) -> Shapes:
    """A lobe from its end, its nose up, its axis on 0, 0."""
    away = base + lift - nose
    half = math.degrees(math.acos((base - nose) / away))
    outline = (*bow((0, 0), base, 90 + half, 450 - half), *bow((0, away), nose, 90 - half, 90 + half))
    return (Area(tuple(outline), "a"), circle((0, 0), base, "thin"), centre((0, -44), (0, 64)))


def lobe_across(sheet: Sheet) -> Drawing:
    """Base circle square to the nose, heel to nose along it; and the base circle read over a flank."""

    def faces(low: float, high: float) -> Shapes:
        return (line((-14, high), (14, high)), line((-14, low), (14, low)))

    upright = placed(faces(-34, 54), 0, 0)
    across = placed(faces(-34, 34), 0, 0, 90)
    leaning = placed((line((-14, 44), (14, 44)), line((-14, -34), (14, -34))), 0, 0, -42)
    return sketch(
        "Across the heel square to the nose, then from heel to nose",
        "Two lobes from their ends, noses up. Right: one pair of the micrometer's faces stands across the"
        " heel, square to the nose, on the base circle; the other from heel to nose. Wrong: the faces lean,"
        " and one stands on the flank, so that the base circle reads too large and the lift too small.",
        placed((_lobe(), upright, across), 88, 88),
        note(134, 134, (100, 142), "nose"),
        note(132, 42, (122, 82), "base circle"),
        right(20, 14, "square to the nose"),
        placed((_lobe(), leaning), 270, 88),
        note(316, 142, (300, 121), "flank", anchor="middle"),
        wrong(206, 14, "over a flank"),
    )


def wheel_one_way(sheet: Sheet) -> Drawing:
    """The wheel turned one way to the mark, and turned back to it through the backlash."""

    def wheel(mark: float) -> Shapes:
        ticks = (
            line(
                (r * math.cos(math.radians(a)), r * math.sin(math.radians(a))),
                (52 * math.cos(math.radians(a)), 52 * math.sin(math.radians(a))),
                style="thin",
            )
            for a in range(0, 360, 15)
            for r in (42 if a % 45 == 0 else 46,)
        )
        pointer = line((0, 70), (0, 50), style="band")
        a = math.radians(mark)
        return (
            circle((0, 0), 52),
            *ticks,
            disc((0, 0), 6, "solid"),
            pointer,
            disc((34 * math.cos(a), 34 * math.sin(a)), 3, "solid"),
        )

    return sketch(
        "Always to the mark from the same side",
        "Two degree wheels with a wire pointer above, a dial beside each. Right: the wheel is turned with the"
        " clock up to the mark. Wrong: it went past and is turned back, so that the backlash of the gears"
        " stands between the wheel and the lobe.",
        placed((wheel(90), turning((0, 0), 62, 160, 105), dial(66, 52, 14, 30)), 84, 100),
        right(14, 14, "from one side"),
        placed((wheel(90), turning((0, 0), 62, 20, 75), dial(-66, 52, 14, 55)), 276, 100),
        wrong(206, 14, "turned back"),
        words(180, 176, "pointer", anchor="middle"),
    )
