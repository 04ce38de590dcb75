"""Cutting: how a wheel is hung up and fitted, and where a bar is held."""

from __future__ import annotations

from calc.core.drawing import Drawing
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
    ring,
    sketch,
    words,
    wrong,
)
from scripts.pictures.sheet import Sheet


def wheel_rung(sheet: Sheet) -> Drawing:
    """A wheel hung up free, and one that lies on the bench."""
    wheel = (ring((0, 0), 56, 12, "c"), circle((0, 0), 56), circle((0, 0), 12))
    hung = (
        wheel,
        line((0, 12), (0, 86)),
        disc((0, 12), 3, "solid"),
        line((52, 52), (82, 74)),
        rect(30, 34, 52, 48, ""),
        arrow((66, 34), (50, 30)),
    )
    lying = (rect(-58, -10, 58, 10, "c"), rect(-76, -26, 76, -10, "a"))
    return sketch(
        "A wheel is rung hanging free and dry: a clear tone, or it does not run",
        "Left, right: a grinding wheel hangs free on a pin through its bore, and is tapped with a piece of"
        " wood a hand's breadth off the middle, at the side. Right, wrong: the wheel lies flat on the bench,"
        " which deadens every wheel, cracked or sound.",
        placed(hung, 92, 96),
        note(150, 176, (136, 140), "wood", anchor="start"),
        placed(lying, 272, 96),
        right(12, 20, "hung up, dry,", "rings clear"),
        wrong(196, 20, "lies on the bench,", "tells nothing"),
    )


def wheel_flanges(sheet: Sheet) -> Drawing:
    """Flanges of one size with blotters, and flanges that bend the wheel."""

    def fitted(left: float, other: float, blotters: bool) -> Shapes:
        gap = 5 if blotters else 0
        papers = (
            (rect(-14 - gap, -left, -14, left, "solid"), rect(14, -other, 14 + gap, other, "solid"))
            if blotters
            else ()
        )
        return (
            rect(-14, 8, 14, 80, "c"),
            rect(-14, -80, 14, -8, "c"),
            *papers,
            rect(-26 - gap, 8, -14 - gap, left, "a"),
            rect(-26 - gap, -left, -14 - gap, -8, "a"),
            rect(14 + gap, 8, 26 + gap, other, "b"),
            rect(14 + gap, -other, 26 + gap, -8, "b"),
            rect(-52, -8, 52, 8, ""),
            centre((-60, 0), (60, 0)),
        )

    return sketch(
        "Flanges of one size, a blotter under each: they hold the wheel and do not bend it",
        "A grinding wheel on its spindle, cut along the axis, twice. Right: both flanges are of one size,"
        " with a paper blotter between each and the wheel. Wrong: one flange is smaller than the other and"
        " there are no blotters, so that the nut bends the wheel and cracks it.",
        placed(fitted(40, 40, True), 92, 128),
        note(132, 208, (109, 165), "blotter"),
        placed(fitted(44, 26, False), 268, 128),
        right(12, 22, "same size,", "a blotter under each"),
        wrong(196, 22, "unlike, no blotters:", "the wheel bends"),
    )


def bar_held(sheet: Sheet) -> Drawing:
    """A boring bar that stands out short, and one that stands out far."""

    def held(long: float, bend: float) -> Shapes:
        return (
            rect(-34, -30, 0, -11, "a"),
            rect(-34, 11, 0, 30, "a"),
            rect(-34, -11, 0, 11, ""),
            line((0, 11), (long * 0.6, 11 - bend * 0.35), (long, 11 - bend)),
            line((0, -11), (long * 0.6, -11 - bend * 0.35), (long, -11 - bend)),
            line((long, 11 - bend), (long, -11 - bend)),
            line((long - 4, 11 - bend), (long + 2, 19 - bend), (long + 5, 11 - bend), (long, 9 - bend)),
        )

    return sketch(
        "A bar as short as the bore allows: twice the overhang gives eight times as much",
        "A boring bar in its holder, twice, seen from the side. Right: it stands out a little more than the"
        " bore is deep and stays straight. Wrong: it stands out twice as far, and the cut pushes its end"
        " aside, so that the bore becomes smaller and tapered.",
        placed(held(66, 0), 48, 80),
        placed(held(128, 12), 204, 80),
        right(12, 24, "a little longer", "than the bore is deep"),
        wrong(196, 24, "stands out far:", "gives, and chatters"),
        words(12, 122, "holder"),
    )
