"""Seat rings and seats: how a ring lies, which cut does what, what the blue tells."""

from __future__ import annotations

import math

from calc.core.drawing import Area, Drawing
from calc.core.result import say
from scripts.pictures.pen import (
    LINE,
    Shapes,
    Words,
    arrow,
    both_sides,
    bow,
    centre,
    circle,
    curve,
    disc,
    dot,
    line,
    note,
    numbered,
    placed,
    rect,
    right,
    sketch,
    turning,
    words,
    wrong,
)
from scripts.pictures.sheet import Sheet, practice
from scripts.pictures.tools import dial


def ring_on_floor(sheet: Sheet) -> Drawing:
    """A ring on its floor, and one that is cocked: the feeler tells."""
    pocket = both_sides((48, 44), (48, 0), (30, 0), (30, -26), (76, -26), (76, 44))
    axis = centre((0, -34), (0, 58))

    def ring(outer: float) -> Shapes:
        return both_sides((outer, 34), (outer, 7), (outer - 5, 0), (34, 0), (34, 34), hatch="b")

    def feeler(end: float) -> Shapes:
        return (rect(-10, 0.5, end, 2.5, "solid"), *arrow((-8, 12), (16, 12)))

    return sketch(
        "The thinnest feeler, from the port: a ring on its floor lets it in nowhere",
        "A seat ring in its pocket, cut, twice. Right: it lies flat on the floor, and the feeler stops at its"
        " inner edge. Wrong: it stands crooked, and on one side the feeler goes under it.",
        placed((pocket, ring(48), axis, feeler(33)), 90, 104),
        note(60, 184, (132, 128), "ring", anchor="middle"),
        right(8, 48, "on its floor,", "no feeler enters"),
        placed((pocket, axis, placed(ring(46), 0, 4, 5), feeler(48)), 270, 104),
        note(300, 184, (302, 106), "feeler goes under", anchor="middle"),
        wrong(188, 48, "crooked:", "bore it out"),
    )


def ring_lead(sheet: Sheet) -> Drawing:
    """The lead of the ring and the radius in the pocket's corner."""
    head = Area(
        ((-64, 0), (28, 0), *bow((28, 18), 18, -90, 0), (46, 96), (76, 96), (76, -30), (-64, -30)), "a"
    )

    def ring(lead: float, up: float) -> Area:
        corner = ((46, up + lead * 2.6), (46 - lead, up)) if lead > 6 else ((46, up + 3), (43, up))
        return Area(((-30, up), (-30, up + 74), (46, up + 74), *corner), "b")

    return sketch(
        "A ring reaches its floor only if its lead is larger than the corner's radius",
        "The corner of a pocket with the ring in it, enlarged, twice. Right: the ring's lead is larger than"
        " the radius in the corner, and the ring lies on the floor. Wrong: the lead is smaller, its edge"
        " rides on the radius, and a gap stays under the ring.",
        placed((head, ring(20, 0)), 76, 92),
        words(84, 124, "ring", anchor="middle"),
        note(24, 194, (114, 118), "lead"),
        right(8, 38, "lead clears", "the radius"),
        placed((head, ring(2, 9)), 258, 92),
        words(266, 132, "ring", anchor="middle"),
        note(202, 194, (208, 97), "gap", anchor="end"),
        note(348, 194, (301, 104), "rides on the radius", anchor="end"),
        wrong(190, 38, "lead too small", "or none"),
    )


def pilot_leans(sheet: Sheet) -> Drawing:
    """A pilot in a guide as made, and in one that is worn at its ends."""

    def seat(lean: float) -> Shapes:
        return placed(
            (
                *both_sides((34, 0), (46, 12), (46, 20), (62, 20), (62, -18), (34, -18), hatch="b"),
                line((-46, 12), (46, 12), style="thin"),
            ),
            0,
            128,
            lean,
        )

    def pilot(lean: float) -> Shapes:
        return placed((rect(-8.5, -58, 8.5, 118), centre((0, -66), (0, 130))), 0, 50, lean)

    straight = both_sides((9, 0), (22, 0), (22, 100), (9, 100))
    worn = both_sides((15, 0), (10, 40), (10, 60), (15, 100), (24, 100), (24, 0))
    return sketch(
        "The seat follows the pilot, and the pilot the guide",
        "A pilot in its guide with the seat above it, twice. Right: a straight guide holds the pilot in its"
        " axis, and the seat is cut square. Wrong: in a guide that is wide at its ends the pilot leans, and"
        " the seat is cut leaning with it.",
        placed((straight, seat(0), pilot(0)), 88, 66),
        note(20, 230, (88, 222), "pilot"),
        note(14, 110, (72, 130), "guide"),
        right(8, 32, "pilot does", "not shake"),
        placed((worn, seat(-5), centre((0, -10), (0, 186)), pilot(-5)), 266, 66),
        note(338, 120, (284, 150), "worn", anchor="middle"),
        wrong(190, 32, "pilot leans,", "seat leans with it"),
        scale="leaning exaggerated",
    )


def seat_angles(sheet: Sheet) -> Drawing:
    """The three cuts of a seat, their angles from the plane square to the stem."""
    degrees = [sheet.show(f"head.{name}") for name in ("seat_angle", "seat_upper_angle", "seat_throat_angle")]
    seat, upper, throat = (
        float(n) if n is not None else math.radians(usual) for n, usual in zip(degrees, (45, 30, 60))
    )
    named = [n if n is not None else f"{usual}°" for n, usual in zip(degrees, (45, 30, 60))]
    inner = (176.0, 118.0)
    outer = (inner[0] + 44, inner[1] + 44 * math.tan(seat))
    rim = (outer[0] + 60, outer[1] + 60 * math.tan(upper))
    bore = (inner[0] - 46 / math.tan(throat), inner[1] - 46)

    def angle(at: tuple[float, float], size: float, words_: Words, long: float = 46) -> Shapes:
        """Its size at a corner: the plane square to the stem, the arc up to the cut."""
        middle = size / 2
        return (
            line(at, (at[0] + long + 14, at[1]), style="hidden"),
            curve(at, long, 0, math.degrees(size), "dim"),
            *words(at[0] + (long + 4) * math.cos(middle), at[1] + (long + 4) * math.sin(middle) - 5, words_),
        )

    def cut(a: tuple[float, float], b: tuple[float, float], n: int) -> Shapes:
        x, y = (a[0] + b[0]) / 2, (a[1] + b[1]) / 2
        leader = line((x - 46, y + 30), (x, y), style="thin")
        return (line(a, b, style="band"), leader, dot((x, y)), *numbered(x - 46, y + 30, n))

    return sketch(
        "Angles count from the plane square to the stem",
        say(
            "A seat ring cut on the right of its axis, with the pilot in the guide on the left. From the"
            " throat upwards: the steep throat cut, {throat}; the seat, {seat}; the flat upper cut,"
            " {upper}, each counted from the plane square to the stem. Numbers give their order: 1 the"
            " seat, 2 the upper cut, 3 the throat cut.",
            seat=named[0],
            upper=named[1],
            throat=named[2],
        ),
        Area(
            (
                bore,
                inner,
                outer,
                rim,
                (rim[0] + 30, rim[1]),
                (rim[0] + 30, bore[1] - 12),
                (bore[0], bore[1] - 12),
            ),
            "b",
        ),
        (rect(18, bore[1] - 12, 31, bore[1] + 24, "a"), rect(55, bore[1] - 12, 68, bore[1] + 24, "a")),
        rect(31, bore[1] - 12, 55, 232),
        centre((43, bore[1] - 20), (43, 240)),
        note(84, 222, (55, 214), "pilot in the guide"),
        angle(outer, upper, named[1]),
        angle(inner, seat, named[0]),
        angle(bore, throat, named[2]),
        cut(inner, outer, 1),
        cut(outer, rim, 2),
        cut(bore, inner, 3),
        words(12, 38, "1 seat: until clean; it alone sinks the valve"),
        words(12, 23, "2 upper cut: brings the outer edge in"),
        words(12, 8, "3 throat cut: brings the inner edge out"),
        scale="angles to scale",
        sizes=sheet,
    )


def blue_bands(sheet: Sheet) -> Drawing:
    """What the blue shows on a valve's face."""
    edge, face = 36.0, 19.0

    def valve(x: float, y: float, outer: float, inner: float, *gaps: tuple[float, float]) -> Shapes:
        """Face of a valve with the blue on it, from `inner` to `outer`; without the gaps (degrees)."""
        ends = [0.0, *(a for gap in gaps for a in gap), 360.0]
        blue = [
            Area((*bow((0, 0), outer, a, b), *bow((0, 0), inner, b, a)), "solid", "blue")
            for a, b in zip(ends[::2], ends[1::2])
        ]
        return placed((disc((0, 0), edge), blue, disc((0, 0), face), disc((0, 0), 5)), x, y)

    return sketch(
        "What the blue says: one unbroken, even band, bare face on both sides",
        "Six valve faces seen from below, each with a band of blue. Right: unbroken, even, with bare face"
        " inside and outside of it. Wrong: broken, it leaks. Wrong: too wide. Wrong: out at the valve's"
        " edge, which the upper cut cures. Wrong: in near the stem, which the throat cut cures. Wrong:"
        " turned while it was pressed, so that the smear hides every gap.",
        valve(60, 228, 30.5, 25),
        right(2, 172, "even", "and whole"),
        valve(180, 228, 30.5, 25, (38, 96), (200, 226)),
        wrong(126, 172, "broken,", "it leaks"),
        valve(300, 228, 34.5, 20.5),
        wrong(243, 172, "too wide"),
        valve(60, 96, 35.5, 31),
        wrong(2, 40, "far out:", "upper cut"),
        valve(180, 96, 24, 19.5),
        wrong(126, 40, "far in:", "throat cut"),
        valve(300, 96, 31.5, 24),
        turning((300, 96), 43, 150, 30),
        wrong(243, 40, "turned:", "smear hides", "every gap"),
    )


def seat_runout(sheet: Sheet) -> Drawing:
    """The gauge turns on the pilot, its finger runs round the seat."""
    return sketch(
        "Turn it once; the full reading is from the lowest to the highest",
        "A runout gauge stands on the pilot in the guide, cut. Its finger lies on the seat; an arrow shows it"
        " turned once round the pilot. Beside it a dial with two needles: the full reading is the whole way"
        " between them.",
        placed(
            (
                *both_sides((52, 0), (66, 14), (66, 26), (86, 26), (86, -22), (52, -22), hatch="b"),
                *both_sides((12, -72), (24, -72), (24, -26), (12, -26)),
                rect(-12, -80, 12, 70),
                rect(-19, 40, 19, 96),
                Area(((19, 62), (38, 62), (62, 14), (58, 12), (34, 56), (19, 56)), ""),
                disc((60, 11), 4),
                dial(0, 122, 25, 25),
                centre((0, -90), (0, 94)),
                turning((0, 78), 36, 205, 335),
            ),
            112,
            98,
        ),
        note(214, 68, (174, 108), "finger on the seat"),
        note(20, 56, (98, 46), "guide"),
        note(14, 168, (100, 160), "pilot"),
        placed(
            (dial(0, 0, 38, -40), line((0, 0), (18, 22), style="hidden"), curve((0, 0), 31, 50, 130, "band")),
            282,
            170,
        ),
        words(282, 220, "full reading:", anchor="middle"),
        words(282, 118, "all of this,", "not half of it", anchor="middle"),
    )


def pocket_walls(sheet: Sheet) -> Drawing:
    """Where the metal round the pockets is thinnest."""
    least = say("{wall} at least,", wall=practice("3 mm"))

    def wall(a: tuple[float, float], b: tuple[float, float], n: int, at: tuple[float, float]) -> Shapes:
        return (
            line(a, b, style="band"),
            line(at, ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2), style="thin"),
            *numbered(*at, n),
        )

    intake, exhaust = (-40.0, 0.0), (44.0, 0.0)
    return sketch(
        "Where the metal is thinnest: measure it before a pocket is bored larger",
        say(
            "A combustion chamber seen from the cylinder: two seat pockets side by side, the plug hole"
            " below them, studs round the outside. Numbers mark the thin walls: 1 between the pockets, 2"
            " from a pocket to the plug's thread, 3 from a pocket to a stud hole. Each keeps {wall} at"
            " least.",
            wall=practice("3 mm"),
        ),
        placed(
            (
                Area(
                    (
                        *bow((-84, 84), 18, 90, 180),
                        *bow((-84, -84), 18, 180, 270),
                        *bow((84, -84), 18, 270, 360),
                        *bow((84, 84), 18, 0, 90),
                    ),
                    "a",
                ),
                disc((0, 0), 92),
                *(disc((x, y), 9) for x in (-82, 82) for y in (-82, 82)),
                *(
                    shape
                    for x, y, r in ((*intake, 37.5), (*exhaust, 33.5))
                    for shape in (disc((x, y), r), disc((x, y), r - 8))
                ),
                disc((4, -64), 16),
                disc((4, -64), 12),
                wall((-2.5, 0), (10.5, 0), 1, (4, 60)),
                wall((-22, -33), (-8, -53), 2, (-46, -62)),
                wall((-66.5, 26.5), (-76, 75), 3, (-104, 62)),
            ),
            128,
            150,
        ),
        words(240, 216, "1 pocket to pocket", "2 pocket to plug", "3 pocket to stud"),
        words(240, 160, least, "as a rule"),
    )


def pencil_lines(sheet: Sheet) -> Drawing:
    """Pencil across a seat, valve in and a quarter turned: every line is broken, or one is not."""

    def seat(broken: tuple[bool, ...]) -> Shapes:
        """A seat from above with its lines; a broken one has a gap where the band is."""
        lines = []
        for n, gap in enumerate(broken):
            whole = (line((36, 0), (60, 0), style="band"),)
            stroke = (line((36, 0), (44, 0)), line((52, 0), (60, 0))) if gap else whole
            lines.append(placed(stroke, 0, 0, 360 * n / len(broken)))
        band = (circle((0, 0), 52, "thin"), circle((0, 0), 44, "thin"))
        return placed((disc((0, 0), 62), disc((0, 0), 34), band, lines))

    return sketch(
        "Press the valve, turn it a quarter: every pencil line must be broken",
        "A seat from above with pencil lines across it all round, twice. Right: each line is rubbed away"
        " where the band lies. Wrong: two lines beside each other are whole, the valve does not touch there.",
        placed(seat((True,) * 12), 88, 128),
        right(14, 40, "every line broken"),
        placed(seat((True, True, False, False) + (True,) * 8), 268, 128),
        wrong(194, 40, "whole lines:", "no contact there"),
    )


def gap_turned(sheet: Sheet) -> Drawing:
    """A wet spot before and after the valve was turned half round: whose it is."""

    def valve(mark: float, spot: float) -> Shapes:
        """A valve in its seat from the port: a mark on the valve, the wet spot, in degrees."""
        wet = placed(disc((34, 0), 6, "solid"), 0, 0, spot)
        marked = placed(line((8, 0), (26, 0)), 0, 0, mark)
        return (disc((0, 0), 44), disc((0, 0), 38, "b"), disc((0, 0), 30), *marked, disc((0, 0), 7), *wet)

    def case(y: float, after: float, told: tuple[str, ...]) -> Shapes:
        return (
            *placed(valve(90, 60), 54, y),
            *arrow((108, y), (134, y)),
            *placed(valve(270, after), 188, y),
            *words(246, y + 4 + LINE * (len(told) - 1) / 2, *told),
        )

    return sketch(
        "Turn the valve half round: a spot that turns with it is the valve's, one that stays is the seat's",
        "A valve in its seat, seen from the port, with a mark on the valve and a wet spot at the seat,"
        " before and after the valve was turned half round. Above, the spot has turned with the mark: the"
        " valve is at fault. Below, the spot has stayed where it was: the seat is at fault.",
        words(54, 232, "before", anchor="middle"),
        words(188, 232, "half a turn", anchor="middle"),
        case(172, 240, ("it turned too:", "look at the", "valve's face")),
        case(66, 60, ("it stayed:", "look at the", "seat")),
    )
