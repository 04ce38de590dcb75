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


def lobe_taper(sheet: Sheet) -> Drawing:
    """A lobe with its taper under a foot that turns, and one without, under a foot that stands still."""

    def under(taper: float, aside: float) -> Shapes:
        lobe_ = ((-26.0, 0.0), (26.0, 0.0), (26.0, 60.0 + taper), (-26.0, 60.0 - taper))
        bent = {x: 6 * (x / 44) ** 2 for x in range(-44, 45, 2)}
        # down until it touches
        low = max(60 + taper * (x + aside) / 26 - up for x, up in bent.items() if abs(x + aside) <= 26)
        crown = tuple((x + aside, low + up) for x, up in bent.items())
        foot = (*crown, (44 + aside, 78.0), (12 + aside, 84.0), (12 + aside, 118.0), (-12 + aside, 118.0))
        return (
            Area(lobe_, "a"),
            Area((*foot, (-12 + aside, 84.0), (-44 + aside, 78.0)), "b"),
            centre((0, -8), (0, 66)),
            centre((aside, 52), (aside, 128)),
        )

    return sketch(
        "A lobe with taper turns its lifter",
        "Two lobes from the side with a lifter on each. Right: the lobe is a little higher at one edge, the"
        " foot is slightly crowned, and both are drawn much enlarged: they touch beside the lifter's axis and"
        " the lifter turns. Wrong: the lobe is straight across, the foot is touched on its axis, stands"
        " still, and wears a groove.",
        placed((under(3.5, -9), turning((-9, 108), 24, 200, 340)), 88, 30),
        note(136, 118, (101, 92), "touched aside"),
        right(20, 6, "it turns"),
        placed(under(0, 0), 272, 30),
        note(294, 140, (272, 90), "same spot"),
        wrong(206, 6, "it stands still"),
    )


def lobe_all_round(sheet: Sheet) -> Drawing:
    """What is taken off all round, and what is taken off the heel alone."""

    def old() -> Shapes:
        shapes = _lobe()
        assert isinstance(shapes[0], Area)
        return (line(*shapes[0].points, shapes[0].points[0], style="hidden"), *shapes[1:])

    smaller = placed(_lobe(28.0, 20.0, 9.0), 0, 0)
    flat = placed(_lobe(34.0, 12.0, 18.0), 0, 0)
    return sketch(
        "Smaller all round, and the lift comes back; nose alone, and it is gone",
        "Two lobes from their ends, the old one dashed. Right: the new lobe is smaller all round by the same"
        " amount, its base circle too, so that it lifts as far as before. Wrong: only the nose was"
        " smoothed, and the lobe lifts less.",
        placed((old(), smaller[0]), 88, 88),
        note(130, 40, (108, 66), "base circle", "smaller too"),
        right(14, 14, "off all round"),
        placed((old(), flat[0]), 270, 88),
        note(310, 142, (278, 137), "lift lost", anchor="middle"),
        wrong(206, 14, "off the nose"),
    )
