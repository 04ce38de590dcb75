"""The connecting rod. Its own frame: the big end's centre, y up to the small end."""

import math

from calc.core.drawing import Area, Circle, Line, Point, Points, arc
from calc.page.engine.shapes import centre, plate, turned
from calc.page.engine.sizes import Sizes
from calc.page.engine.view import Place, Solids, View


def big_end(s: Sizes) -> float:
    """Radius round the big end's bore."""
    return 0.63 * s("rod.big_end_bore")


def shoulder(s: Sizes) -> tuple[float, float]:
    """Half the width over the bolts, and the height of their seats over the parting line."""
    return s("rod.big_end_bore") / 2 + 1.75 * s("rod.bolt_shank"), s("rod.bolt_shank_length") / 2


def small_end(s: Sizes) -> float:
    """Radius round the small end."""
    return s("rod.small_end_bore") / 2 + s("rod.small_end_wall")


def bolt_axis(s: Sizes) -> float:
    return s("rod.big_end_bore") / 2 + 0.85 * s("rod.bolt_shank")


def _upper(s: Sizes) -> Points:
    wide, high = shoulder(s)
    top, eye = s("rod.centre_distance"), small_end(s)
    low, up = 0.3 * s("rod.big_end_bore"), 0.62 * eye
    neck = top - math.sqrt(max(eye**2 - up**2, 0))
    right = (
        (wide, 0),
        (wide, high),
        (bolt_axis(s) - 0.4 * s("rod.bolt_shank"), high),
        (low + 0.1 * high, 1.2 * big_end(s)),
        (low, 1.45 * big_end(s)),
        (up, neck),
        *arc((0, top), eye, math.asin((neck - top) / eye), math.pi / 2, 8),
    )
    return turned(right)


def _cap(s: Sizes) -> Points:
    wide, high = shoulder(s)
    r = big_end(s)
    right = (
        (wide, 0),
        (wide, -high),
        (bolt_axis(s) - 0.5 * s("rod.bolt_shank"), -high),
        *arc((0, 0), r, -math.radians(50), -math.radians(74), 3),
        (0.28 * r, -1.08 * r),
    )
    return turned(right)


def bolts(s: Sizes) -> Solids:
    x, d = bolt_axis(s), s("rod.bolt_shank")
    _, high = shoulder(s)
    return tuple(
        shape
        for side in (-x, x)
        for shape in (
            plate(side - 0.75 * d, high, side + 0.75 * d, high + 0.6 * d),
            plate(side - 0.8 * d, -high - 0.85 * d, side + 0.8 * d, -high),
            plate(side - 0.5 * d, -high - 1.15 * d, side + 0.5 * d, -high - 0.85 * d),
        )
    )


def rod(s: Sizes, shells: bool = True) -> Solids:
    """The rod seen along the crank, bolted up, with its shells and its bush."""
    top = s("rod.centre_distance")
    low, up = 0.17 * s("rod.big_end_bore"), 0.36 * small_end(s)
    neck = top - 1.25 * small_end(s)
    recess = Line(
        (
            (-low, 1.5 * big_end(s)),
            (-up, neck),
            (up, neck),
            (low, 1.5 * big_end(s)),
            (-low, 1.5 * big_end(s)),
        ),
        "thin",
    )
    wide, _ = shoulder(s)
    inside = s("rod.big_end_bore") / 2
    return (
        Area(_upper(s), ""),
        Area(_cap(s), ""),
        *bolts(s),
        recess,
        Circle((0, 0), inside, "c" if shells else ""),
        *((Circle((0, 0), inside - s("rod.shell_wall")),) if shells else ()),
        Circle((0, top), s("rod.small_end_bore") / 2, "c"),
        Circle((0, top), s("rod.bush_bore") / 2),
        Line(((inside, 0), (wide, 0)), "outline"),
        Line(((-inside, 0), (-wide, 0)), "outline"),
    )


def pads(s: Sizes) -> tuple[float, float]:
    """Where the pads end that are ground for weight: below the big end's centre, above the small end's
    (m)."""
    return (
        max(s("rod.pad_beyond_big_end"), 1.1 * big_end(s)),
        max(s("rod.pad_beyond_small_end"), 1.02 * small_end(s)),
    )


def _with_pads(s: Sizes) -> Solids:
    below, above = pads(s)
    r, top, eye = big_end(s), s("rod.centre_distance"), small_end(s)
    return (
        plate(-0.28 * r, -below - 0.1 * r, 0.28 * r, -0.9 * r),
        plate(-0.35 * eye, top + 0.8 * eye, 0.35 * eye, top + above + 0.1 * eye),
        *rod(s),
    )


def view(s: Sizes) -> View:
    top, r, eye = s("rod.centre_distance"), big_end(s), small_end(s)
    below, above = pads(s)
    wide, _ = shoulder(s)
    right, left = wide + 0.2 * r, -wide - 0.2 * r
    return View(
        "rod",
        "Connecting rod, seen along the crank",
        _with_pads(s),
        (
            Place(
                "rod.centre_distance",
                "Centre to\ncentre",
                (right, 0),
                (right, top),
                edges=(1.15 * wide, 1.3 * eye),
            ),
            Place("rod.mass", "Whole\nrod, mass", (0, 0.5 * top)),
            Place("rod.big_end_mass", "Big end,\nmass", (0.8 * wide, 0.3 * r)),
            Place("rod.small_end_mass", "Small end,\nmass", (-0.8 * eye, top + 0.3 * eye)),
            Place(
                "rod.pad_beyond_big_end",
                "Pad, from\nbig end",
                (left, 0),
                (left, -below),
                edges=(-1.15 * wide, -0.28 * r),
            ),
            Place(
                "rod.pad_beyond_small_end",
                "Pad, from\nsmall end",
                (left, top),
                (left, top + above),
                edges=(-1.3 * eye, -0.35 * eye),
            ),
            Place("rod.pad_loss_big_end", "Ground off\nbig end", (0.1 * r, -below - 0.04 * r)),
            Place("rod.pad_loss_small_end", "Ground off\nsmall end", (0.1 * eye, top + above + 0.03 * eye)),
            Place("rod.offset", "Ends out\nof line", (0.1 * eye, top - 1.3 * eye)),
            Place("rod.bend", "Bend", (0.2 * r, 0.62 * top)),
            Place("rod.twist", "Twist", (-0.2 * r, 0.36 * top)),
            Place("big-end", "Big end", (-0.85 * wide, -0.3 * r)),
            Place("small-end", "Small end", (0.8 * eye, top)),
        ),
        (
            centre((0, -below - 0.25 * r), (0, top + above + 0.3 * eye)),
            centre((-1.15 * wide, 0), (1.15 * wide, 0)),
            centre((-1.3 * eye, top), (1.3 * eye, top)),
        ),
    )


def big_end_view(s: Sizes) -> View:
    """Above seen along the crank, one bolt laid bare; below cut on its journal."""
    bore, wall, d = s("rod.big_end_bore") / 2, s("rod.shell_wall"), s("rod.bolt_shank")
    wide, high = shoulder(s)
    r, x = big_end(s), bolt_axis(s)
    journal = s("crank.rod_journal") / 2
    rise = 1.5 * r
    body = turned(
        (
            (wide, 0),
            (wide, high),
            (x - 0.4 * d, high),
            (0.3 * bore * 2 + 0.1 * high, 1.2 * r),
            (0.3 * bore * 2, rise),
        )
    )
    half = s("rod.width") / 2
    low = -rise - 1.9 * r  # the second view stands below the first
    return View(
        "big-end",
        "Big end: cut through a bolt, and on its journal",
        (
            Area(body, ""),
            Area(_cap(s), ""),
            *bolts(s),
            *_bolt_cut(s),
            Circle((0, 0), bore, "c"),
            Circle((0, 0), bore - wall, ""),
            Circle((0, 0), journal, "a"),
            Line(((bore, 0), (wide, 0)), "outline"),
            Line(((-bore, 0), (-wide, 0)), "outline"),
            *_on_its_journal(s, low),
        ),
        _big_end_places(s, low),
        (
            centre((0, -1.25 * r), (0, rise)),
            centre((-1.1 * wide, 0), (1.1 * wide, 0)),
            centre((-half - 0.4 * r, low), (half + 0.4 * r, low)),
        ),
    )


def _big_end_places(s: Sizes, low: float) -> tuple[Place, ...]:
    bore, wall, d = s("rod.big_end_bore") / 2, s("rod.shell_wall"), s("rod.bolt_shank")
    wide, high = shoulder(s)
    r, x, journal = big_end(s), bolt_axis(s), s("crank.rod_journal") / 2
    half, gap = s("rod.width") / 2, s("crank.rod_journal_length") / 2
    return (
        Place("rod.big_end_bore", "Big-end\nbore", _on(bore, 140), _on(bore, -40)),
        Place("rod.shell_wall", "Shell\nwall", _on(bore - wall / 2, 100)),
        Place("rod.big_end_wall", "Wall round\nbig end", (0.2 * r, -1.12 * bore)),
        Place("rod.crush_opens", "Crush\nopens by", _on(bore, 215)),
        Place("rod.shell_proud", "Shell,\nproud", (bore - wall / 2, 0)),
        Place("rod.shell_alloy", "Shells,\nbacking", _on(bore - wall / 2, -70)),
        Place("rod.alloy", "Rod,\nmaterial", (0.2 * r, 1.3 * r)),
        Place("rod.big_end_running_temperature", "Big end,\nrunning", (-0.55 * r, 1.05 * bore)),
        Place("rod.bearing_clearance", "Bearing\nclearance", _on(journal, 60)),
        Place("rod.cap_mass", "Cap, mass", (-0.55 * r, -0.95 * r)),
        Place("rod.bolt_stretch", "Bolt,\nstretch", (x, high + 0.6 * d)),
        Place("rod.bolt_shank", "Bolt,\nshank", (x - d / 2, 0.5 * high), (x + d / 2, 0.5 * high)),
        Place(
            "rod.bolt_shank_length",
            "Shank,\nlength",
            (wide + 0.12 * r, -high),
            (wide + 0.12 * r, high),
            edges=(wide, wide),
        ),
        Place("rod.bolt_free_thread", "Free\nthread", (x, -high + 0.3 * d)),
        Place("torque.rod_nut", "Rod nut,\ntorque", (-x, -high - 0.5 * d)),
        Place("rod.shell_crush", "Shells\nclosed by", (-bore, 0)),
        Place(
            "rod.width",
            "Rod\nwidth",
            (-half, low + 1.75 * journal),
            (half, low + 1.75 * journal),
            edges=(low + 1.3 * journal, low + 1.3 * journal),
        ),
        Place("rod.side_clearance", "Side\nclearance", ((half + gap) / 2, low - 1.1 * journal)),
    )


def _on_its_journal(s: Sizes, low: float) -> Solids:
    """The big end from the side between the webs, cut, its middle at `low`."""
    r, journal, wall = big_end(s), s("crank.rod_journal") / 2, s("rod.shell_wall")
    half, gap = s("rod.width") / 2, s("crank.rod_journal_length") / 2
    bore = s("rod.big_end_bore") / 2
    return (
        plate(-half - 0.35 * r, low - 1.15 * journal, -gap, low + 1.15 * journal),
        plate(gap, low - 1.15 * journal, half + 0.35 * r, low + 1.15 * journal),
        plate(-gap, low - journal, gap, low + journal),
        plate(-half, low + journal, half, low + journal + wall + 0.25 * bore, "a"),
        plate(-half, low - journal - wall - 0.25 * bore, half, low - journal, "a"),
    )


def _on(r: float, degrees: float) -> Point:
    return r * math.cos(math.radians(degrees)), r * math.sin(math.radians(degrees))


def _bolt_cut(s: Sizes) -> Solids:
    """The right bolt laid bare: shank, thread and the hole round it."""
    x, d = bolt_axis(s), s("rod.bolt_shank")
    _, high = shoulder(s)
    thread = -high + min(s("rod.bolt_free_thread"), 0.9 * high)
    pitch = d / 8
    marks = tuple(
        Line(((x - d / 2, y), (x + d / 2, y - pitch / 2)), "thin")
        for y in (thread - i * pitch * 1.6 for i in range(int((thread + high) / pitch / 1.6)))
    )
    return (
        plate(x - 0.56 * d, -high, x + 0.56 * d, high, "a"),
        plate(x - d / 2, -high, x + d / 2, high),
        *marks,
    )


def small_end_view(s: Sizes) -> View:
    """Left seen along the pin, right cut through the eye."""
    eye, hole, bush = small_end(s), s("rod.small_end_bore") / 2, s("rod.bush_bore") / 2
    long, up = s("rod.small_end_length") / 2, 0.62 * eye
    neck = -math.sqrt(eye**2 - up**2)
    front = turned(
        ((up * 1.1, -1.9 * eye), (up, neck), *arc((0, 0), eye, math.asin(neck / eye), math.pi / 2, 8))
    )
    away = eye + long + 0.7 * eye
    section: Solids = (
        plate(away - 0.5 * long, -1.9 * eye, away + 0.5 * long, -eye, ""),
        plate(away - long, -eye, away + long, -hole, "a"),
        plate(away - long, hole, away + long, eye, "a"),
        plate(away - long, -hole, away + long, -bush, "c"),
        plate(away - long, bush, away + long, hole, "c"),
        plate(away - long, -bush, away + long, bush, ""),
    )
    return View(
        "small-end",
        "Small end with its bush: seen along the pin, and cut",
        (Area(front, ""), Circle((0, 0), hole, "c"), Circle((0, 0), bush), *section),
        (
            Place("rod.small_end_bore", "Eye's bore", _on(hole, 150), _on(hole, -30)),
            Place("rod.bush_bore", "Bush bore,\nhoned", _on(bush, 200), _on(bush, 20)),
            Place("rod.small_end_wall", "Least wall", (0, hole), (0, eye)),
            Place(
                "rod.bush_outside",
                "Bush\noutside",
                (away + 1.25 * long, -hole),
                (away + 1.25 * long, hole),
                edges=(away + long, away + long),
            ),
            Place("rod.bush_interference", "Bush,\ngrip", (away - 0.6 * long, hole)),
            Place(
                "rod.bush_supplied_bore",
                "New bush,\nits bore",
                (away + 0.4 * long, -bush),
                (away + 0.4 * long, bush),
            ),
            Place("rod.bush_alloy", "Bush,\nalloy", (away + 0.4 * long, -(bush + hole) / 2)),
            Place("rod.pin_clearance", "Pin\nclearance", _on(bush, -75)),
            Place(
                "rod.small_end_length",
                "Length of\nthe fit",
                (away - long, 1.2 * eye),
                (away + long, 1.2 * eye),
                edges=(eye, eye),
            ),
            Place("rod.small_end_running_temperature", "Running\nheat", _on((eye + hole) / 2, 235)),
        ),
        (
            centre((0, -1.7 * eye), (0, 1.25 * eye)),
            centre((-1.2 * eye, 0), (1.2 * eye, 0)),
            centre((away - 1.3 * long, 0), (away + 1.3 * long, 0)),
        ),
    )
