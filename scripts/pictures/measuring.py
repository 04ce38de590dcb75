"""Taking a size: where the gauge goes, and which of its readings counts."""

from __future__ import annotations

import math

from calc.core.drawing import Area, Drawing
from calc.core.result import say
from scripts.pictures.pen import (
    LINE,
    Shapes,
    arrow,
    bow,
    centre,
    curve,
    disc,
    dot,
    line,
    numbered,
    placed,
    rect,
    right,
    sketch,
    turning,
    words,
    wrong,
)
from scripts.pictures.sheet import Sheet
from scripts.pictures.tools import bore_gauge, micrometer


def bore_gauge_rocked(sheet: Sheet) -> Drawing:
    """Leaning one way, upright, leaning the other way: the smallest is the bore."""
    across, low = 76.0, 40.0
    walls = (rect(-54, 0, -38, 80, "a"), rect(38, 0, 54, 80, "a"), centre((0, -6), (0, 90)))

    def leaning(x: float, degrees: float, reading: float) -> Shapes:
        longer = across / math.cos(math.radians(degrees))
        return (*placed(walls, x), *placed(bore_gauge(longer, 100, reading), x, low, degrees))

    return sketch(
        "Rock the gauge: where the needle turns back, the smallest reading is the bore",
        "A bore gauge in a bore, three times. Wrong: leaning to the left and leaning to the right, its feet"
        " reach slantwise from wall to wall, and it reads too large. Right: upright between the two, where"
        " the needle turns back, it reads smallest, and that is the size of the bore.",
        placed((leaning(62, 14, 60), leaning(180, 0, 0), leaning(298, -14, 60)), 0, 42),
        turning((180, 82), 139, 117, 104),
        turning((180, 82), 139, 63, 76),
        wrong(10, 22, "leans,", "reads too large"),
        right(122, 22, "upright,", "the smallest"),
        wrong(240, 22, "leans,", "reads too large"),
    )


def _across(x: float, y: float, radius: float, degrees: float) -> Shapes:
    """A direction in which a bore is read: an arrow from wall to wall."""
    a = math.radians(degrees)
    dx, dy = (radius - 5) * math.cos(a), (radius - 5) * math.sin(a)
    return arrow((x - dx, y - dy), (x + dx, y + dy), double=True)


def _levels(heights: tuple[float, ...], half: float) -> Shapes:
    """Readings across a bore that is cut along its axis, numbered from the top."""
    return tuple(
        shape
        for i, y in enumerate(heights, 1)
        for shape in (*arrow((-half + 5, y), (half - 5, y), double=True), *numbered(0, y, i))
    )


def bore_places(sheet: Sheet) -> Drawing:
    """Three heights, two directions: what every bore is read at."""
    return sketch(
        "Where a bore is read: three heights, two directions square to each other",
        "Left, a bore cut along its axis, with three readings across it: near the upper end, in the middle"
        " and near the lower end, each clear of the edges. Right, the same bore from above, with two"
        " directions at right angles: along the load, A, and across it, B. Six readings in all.",
        placed(
            (
                rect(-66, 0, -44, 130, "a"),
                rect(44, 0, 66, 130, "a"),
                centre((0, -8), (0, 138)),
                _levels((112, 65, 18), 44),
            ),
            80,
            50,
        ),
        words(80, 18, "clear of edge, hole", "and groove", anchor="middle"),
        placed((disc((0, 0), 62, "a"), disc((0, 0), 44)), 252, 115),
        _across(252, 115, 44, 90),
        _across(252, 115, 44, 0),
        numbered(252, 138, "A"),
        numbered(276, 115, "B"),
        words(252, 32, "A along the load,", "B square to it", anchor="middle"),
    )


def pocket_places(sheet: Sheet) -> Drawing:
    """Nine readings of a seat pocket."""
    body = (
        Area(((-78, 96), (-54, 96), (-54, 0), (-40, 0), (-40, -30), (-78, -30)), "a"),
        Area(((78, 96), (54, 96), (54, 0), (40, 0), (40, -30), (78, -30)), "a"),
    )
    return sketch(
        "Nine readings in a pocket: three heights, each in three directions 60° apart",
        "Left, a seat pocket cut along its axis, with readings close below the mouth, half way down and"
        " close above the floor. Right, the pocket from above with three directions, each turned 60° from"
        " the last.",
        placed((body, centre((0, -38), (0, 106)), _levels((84, 48, 12), 54)), 86, 76),
        words(86, 22, "below the mouth, half way,", "above the floor", anchor="middle"),
        placed((disc((0, 0), 66, "a"), disc((0, 0), 52), disc((0, 0), 38)), 270, 116),
        (_across(270, 116, 52, a) for a in (90, 30, 150)),
        (
            numbered(270 + 27 * math.cos(a), 116 + 27 * math.sin(a), n)
            for n, a in (("A", 1.571), ("B", 0.524), ("C", 2.618))
        ),
        words(270, 22, "A, B and C", "60° apart", anchor="middle"),
    )


def journal_places(sheet: Sheet) -> Drawing:
    """Three places clear of fillet and oil hole, two directions, on a crank pin."""
    pin = ((-70, 40), (-68, 34), (-62, 32), (62, 32), (68, 34), (70, 40))
    cheek = ((-100, 58), (-70, 58), (-70, -58), (-100, -58))

    def reading(x: float, n: int) -> Shapes:
        return (*arrow((x, 58), (x, 37)), *arrow((x, -58), (x, -37)), *numbered(x, 70, n))

    return sketch(
        "Where a journal is read: clear of fillet and oil hole, in two directions",
        "Left, a crank pin between its cheeks. Three readings stand on its plain part: near each end and in"
        " the middle. Crosses mark the fillet and the oil hole, where nothing is read. Right, the pin from"
        " its end, with two directions: A in line with the throw, B across it.",
        placed(
            (
                Area(cheek, ""),
                Area(tuple((-x, y) for x, y in cheek), ""),
                Area((*pin, *((x, -y) for x, y in reversed(pin))), ""),
                centre((-106, 0), (106, 0)),
                disc((22, 0), 5, "solid"),
                reading(-46, 1),
                reading(-2, 2),
                reading(46, 3),
            ),
            112,
            140,
        ),
        line((45, 107), (22, 40), style="thin"),
        wrong(12, 26, "on the fillet"),
        line((134, 135), (198, 13), style="thin"),
        wrong(12, 8, "over the oil hole"),
        placed(
            (
                Area((*bow((0, 0), 44, -10, 190), *bow((0, -62), 30, 190, 350)), ""),
                disc((0, 0), 34),
                disc((0, -62), 18, ""),
                centre((0, -86), (0, 62)),
                _across(0, 0, 60, 90),
                _across(0, 0, 60, 0),
                numbered(0, 62, "A"),
                numbered(52, 14, "B"),
            ),
            292,
            140,
        ),
        words(292, 26, "A along the throw,", "B across it", anchor="middle"),
    )


def micrometer_square(sheet: Sheet) -> Drawing:
    """Largest across, smallest along the axis: only there is it square through the middle."""

    def jaws(apart: float) -> Shapes:
        """The faces and the way between them, seen along the frame."""
        half = apart / 2
        faces = (rect(-half - 26, -6, -half, 6), rect(half, -6, half + 26, 6))
        return (*faces, line((-half, 0), (half, 0), style="dim"))

    def held(across: float, low: float) -> Shapes:
        """A round part from its end, in a micrometer whose faces stand that far under its middle."""
        gauge = placed(micrometer(across), -across / 2, -low)
        return (*gauge, disc((0, 0), 30, "a"), line((-across / 2, -low), (across / 2, -low), style="dim"))

    lean = math.radians(16)
    tilted = 52 / math.cos(lean) + 12 * math.tan(lean)
    body = (rect(-26, -40, 26, 40, "a"), centre((0, -48), (0, 48)))
    return sketch(
        "Seek the largest reading across, and the smallest along the axis",
        "A micrometer on a round part, four times. Seen from the part's end, wrong: off the middle it reads"
        " too small; right: through the middle, where the reading is largest. Seen from the side, wrong:"
        " leaning it reads too large; right: square to the axis, where the reading is smallest.",
        placed(held(2 * math.sqrt(30**2 - 17**2), 17), 60, 236, times=0.86),
        wrong(10, 158, "off centre,", "too small"),
        placed(held(60, 0), 240, 236, times=0.86),
        right(196, 158, "in the middle,", "the largest"),
        placed((body, placed(jaws(tilted), 0, 0, 16)), 84, 86),
        wrong(10, 22, "leaning,", "too large"),
        placed((body, jaws(52)), 270, 86),
        right(196, 22, "square to it,", "the smallest"),
    )


def made_and_worn(sheet: Sheet) -> Drawing:
    """The limits of a journal on one scale: as made, and how far it may wear."""
    numbers = [sheet.show("crank.main_journal", what) for what in ("wear", "low", "high")]
    worn, low, high = (
        float(n) if n is not None else usual for n, usual in zip(numbers, (0.05496, 0.054985, 0.055))
    )
    unit = 184 / (high - worn)
    places = [104 + (size - worn) * unit for size in (worn, low, high)]
    zones = (
        (12, places[0], "a", ("must go",)),
        (places[0], places[1], "", ("worn,", "may run on")),
        (places[1], places[2], "c", ("as made",)),
        (places[2], 348, "a", ("too large",)),
    )
    return sketch(
        "A journal's limits on one scale: machine to those as made, never to the wear limit",
        say(
            "A scale of a journal's size, small to the left, with four zones. Under the wear limit, {wear}:"
            " it must go. Between the wear limit and the lower limit as made, {low}: worn, it may run on."
            " Between that and the upper limit, {high}: as made. Above: too large, it can still be ground."
            " An arrow shows that it wears to the left.",
            **{name: n or "-" for name, n in zip(("wear", "low", "high"), numbers)},
        ),
        (
            (
                rect(left, 50, end, 74, hatch),
                words((left + end) / 2, 80 + LINE * len(told), *told, anchor="middle"),
            )
            for left, end, hatch, told in zones
        ),
        (line((x, 40), (x, 84), style="band") for x in places),
        (
            words(x, 24, n, anchor=anchor)
            for x, n, anchor in zip(
                (places[0], places[1] + 6, places[2] - 6), numbers, ("middle", "end", "start")
            )
            if n is not None
        ),
        arrow((places[1] - 12, 62), (places[0] + 14, 62)),
        words(places[0], 8, "wear limit", anchor="middle"),
        words((places[1] + places[2]) / 2, 8, "limits as made", anchor="middle"),
        scale="",
        sizes=sheet,
    )


def half_angle(sheet: Sheet) -> Drawing:
    """A cone's two angles: between its sides, and of one side against the axis."""
    tip, long, half = (36.0, 100.0), 250.0, math.radians(14)
    rise = long * math.tan(half)
    right_ = tip[0] + long
    small = tip[0] + 110, 110 * math.tan(half)
    return sketch(
        "Set the slide to the angle of one side against the axis: half of that between the sides",
        "A cone that lies, its sides drawn on to where they meet. Right: the angle of one side against the"
        " axis, to which the slide is set. Wrong: the angle between both sides, which drawings often give,"
        " and which is twice as much.",
        Area(
            (
                (small[0], tip[1] + small[1]),
                (right_, tip[1] + rise),
                (right_, tip[1] - rise),
                (small[0], tip[1] - small[1]),
            ),
            "",
        ),
        line(tip, (small[0], tip[1] + small[1]), style="hidden"),
        line(tip, (small[0], tip[1] - small[1]), style="hidden"),
        centre((tip[0] - 16, tip[1]), (right_ + 30, tip[1])),
        turning(tip, 230, 0, 12),
        curve(tip, 150, -14, 14, "dim"),
        right(12, 176, "one side against the axis"),
        line((226, 180), (tip[0] + 229, tip[1] + 24), style="thin"),
        dot((tip[0] + 229, tip[1] + 24)),
        line((120, 30), (tip[0] + 148, tip[1] - 25), style="thin"),
        dot((tip[0] + 148, tip[1] - 25)),
        wrong(12, 16, "between the sides,", "twice as much"),
    )
