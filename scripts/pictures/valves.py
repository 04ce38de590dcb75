"""Valves and their guides: where the dial stands, what a height is read from, how much edge is left."""

from __future__ import annotations

from calc.core.drawing import Area, Drawing, Points
from scripts.pictures.pen import Shapes, arrow, centre, line, note, placed, rect, right, sketch, words, wrong
from scripts.pictures.sheet import Sheet
from scripts.pictures.tools import dial


def _valve(long: float, head: float, stem: float, margin: float) -> Points:
    """A valve that lies, the middle of its head on 0, 0, its tip to the right."""
    h, s = head / 2, stem / 2
    upper = (
        (0.0, h),
        (margin, h),
        (margin + 0.1 * head, 0.88 * h),
        (margin + 0.17 * head, 0.5 * h),
        (margin + 0.3 * head, 0.24 * h + 0.5 * s),
        (margin + 0.5 * head, s),
        (long - 1, s),
        (long, s - 1),
    )
    return (*upper, *((x, -y) for x, y in reversed(upper)))


def valve_rocked(sheet: Sheet) -> Drawing:
    """The valve drawn out of its guide, the dial on its edge: to the sheet's lengths."""
    long, guide, tip = (
        sheet.mm("valve.length", 112),
        sheet.mm("guide.length", 46),
        sheet.mm("valve.rock_tip", 2),
    )
    stem, outside = sheet.mm("valve.stem_intake", 8), sheet.mm("guide.outside", 13)
    head, margin = sheet.mm("head.valve_head_intake", 35), sheet.mm("head.valve_margin_intake", 1.5)
    unit = 290 / long
    left, axis = 34.0, 118.0
    end = left + (long - tip) * unit  # of the guide, on the tip's side
    start = end - guide * unit
    g, s = outside / 2 * unit, stem / 2 * unit * 1.12
    edge = head / 2 * unit
    walls = [
        shape
        for side in (-1, 1)
        for shape in (
            rect(start + 16, side * g, end - 14, side * (g + 26), "a"),
            rect(start, side * s, end, side * g, "b"),
        )
    ]
    return sketch(
        "The tip out as far as is told, the dial on the edge of the head",
        "A valve lies in its guide, drawn out until its tip stands a little out of the guide's other end. A"
        " dial gauge touches the edge of the valve's head, square to the stem. Arrows show the valve pushed"
        " to and fro. Dimension lines show the guide's length, the way from the guide's end to the dial,"
        " and how far the tip stands out.",
        placed(walls, 0, axis),
        placed(Area(_valve(long * unit, head * unit, stem * unit, margin * unit), ""), left, axis),
        centre((left - 14, axis), (350, axis)),
        rect(left - 1, axis + edge + 2, left + 5, axis + edge + 26),
        dial(left + 2, axis + edge + 45, 20, 40),
        arrow((left - 16, axis - 30), (left - 16, axis + 30), double=True),
        words(left + 34, axis + edge + 52, "dial on the edge of the head,", "in the rocker's direction"),
        words(start + 18, axis + g + 34, "guide in the head"),
        sheet.dimension("guide.length", (start, axis - g - 26), (end, axis - g - 26), -22),
        sheet.dimension("guide.rock_lever", (left, axis - edge), (start, axis - edge), -14),
        sheet.dimension("valve.rock_tip", (end, axis - s), (end + tip * unit, axis - s), -76),
        words(298, 20, "tip stands out", anchor="end"),
        scale="lengths to scale",
        sizes=sheet,
    )


def valve_margin(sheet: Sheet) -> Drawing:
    """Edges of three valves: good, at the limit, ground to a knife."""
    unit, top = 13.0, 142.0
    new, least = sheet.mm("head.valve_margin_intake", 1.5), sheet.mm("head.valve_margin_intake", 0.8, "wear")

    def edge(x: float, margin: float) -> Area:
        """The edge of a head from the side, its flat top up, the margin to the right."""
        m = margin * unit
        return Area(
            ((x - 48, top), (x, top), (x, top - m), (x - 44, top - m - 44), (x - 48, top - m - 46)), "a"
        )

    def size(x: float, margin: float, what: str) -> Shapes:
        foot = top - margin * unit
        return sheet.dimension("head.valve_margin_intake", (x, foot), (x, top), -10, what=what)

    return sketch(
        "The margin is the straight edge above the slanting face",
        "The edge of a valve's head, cut, three times. Right: a thick straight edge above the slanting"
        " face. At the limit: nothing more may be ground off. Wrong: no straight edge is left, face and top"
        " meet in a knife edge, and it takes a new valve.",
        (edge(60, new), edge(184, least), edge(318, 0)),
        (size(60, new, "nominal"), size(184, least, "wear")),
        note(36, 164, (60, top - new * unit / 2), "margin", anchor="middle"),
        note(84, 88, (42, top - new * unit - 18), "face"),
        note(306, 164, (318, top), "knife edge", anchor="middle"),
        right(6, 40, "as new"),
        words(138, 40, "At the limit:", "grind no more"),
        wrong(252, 40, "none left"),
        words(269, 26, "a new valve"),
        scale="margins to scale",
        sizes=sheet,
    )


def stem_height(sheet: Sheet) -> Drawing:
    """From the spring's bed to the tip, and from nothing that lies on it."""
    unit = 2.2
    high = sheet.mm("head.stem_height", 45) * unit
    stem, outside = sheet.mm("valve.stem_intake", 8) / 2 * unit, sheet.mm("guide.outside", 13) / 2 * unit

    def head(washer: bool) -> Shapes:
        bed = [
            Area(((side * outside, -34), (side * 64, -34), (side * 64, 0), (side * outside, 0)), "a")
            for side in (-1, 1)
        ]
        guide = [rect(side * stem, -34, side * outside, 26, "b") for side in (-1, 1)]
        shims = [rect(side * (outside + 6), 0, side * 56, 9, "c") for side in (-1, 1)] if washer else []
        return (
            *bed,
            *guide,
            *shims,
            rect(-stem, -34, stem, high),
            line((-stem, high - 14), (stem, high - 14), style="thin"),
            line((-stem, high - 19), (stem, high - 19), style="thin"),
            centre((0, -42), (0, high + 12)),
        )

    foot = 92.0

    def gauge(low: float) -> Shapes:
        """A depth gauge on the tip, its rod down to that height."""
        return (
            rect(-66, high, 8, high + 12),
            rect(-56, low, -50, high),
            rect(-60, high + 12, -46, high + 30),
        )

    return sketch(
        "Stem height: from the bare bed of the spring to the tip",
        "A stem in its guide, twice. Left, right: the depth gauge lies on the tip and its rod stands on the"
        " bare bed of the spring. Right, wrong: the rod stands on a shim that was left on the bed, and the"
        " height reads too small by the shim.",
        placed((head(False), gauge(0)), 84, foot),
        sheet.dimension("head.stem_height", (96, foot), (96, foot + high), -44),
        right(12, 30, "on the bare bed"),
        placed((head(True), gauge(9)), 272, foot),
        note(330, 168, (310, foot + 5), "shim", anchor="middle"),
        wrong(196, 30, "on a shim:", "reads too small"),
        scale="height to scale",
        sizes=sheet,
    )


def tip_ground(sheet: Sheet) -> Drawing:
    """A tip ground flat with a broken edge, one that slopes, one that is sharp."""

    left = ((-22, -74), (-22, -34), (-17, -34), (-17, -22), (-22, -22))

    def tip(*top: tuple[float, float]) -> Shapes:
        return (Area((*left, *top, *((-x, y) for x, y in reversed(left))), "a"), centre((0, -82), (0, 30)))

    return sketch(
        "A ground tip is flat, square to the stem, bright right across, its edge broken",
        "The tips of three valve stems, cut. Right: flat and square, the edge broken with a stone. Wrong:"
        " ground sloping, so that the rocker bears on one side. Wrong: a sharp edge is left, which cuts the"
        " seal.",
        placed(tip((-22, 10), (-18, 14), (18, 14), (22, 10)), 62, 118),
        right(4, 20, "flat,", "edge broken"),
        placed(tip((-22, 4), (-19, 7), (20, 16), (22, 13)), 180, 118),
        wrong(126, 20, "slopes"),
        placed(tip((-22, 14), (22, 14)), 298, 118),
        wrong(246, 20, "sharp"),
    )
