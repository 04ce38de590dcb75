"""The piston with its pin and rings. Its own frame: the pin's middle, y up to the crown."""

import math

from calc.core.drawing import Area, Circle, Line, Point, arc
from calc.page.engine.shapes import centre, halves, plate, turned
from calc.page.engine.sizes import Sizes
from calc.page.engine.view import Place, Solids, View


def grooves(s: Sizes) -> tuple[tuple[float, float], ...]:
    """Bottom and top of each ring groove, the uppermost first."""
    crown, wide, bore = s("piston.compression_height"), s("piston.groove"), s("cylinder.bore")
    tops = (crown - 0.075 * bore, crown - 0.145 * bore, crown - 0.215 * bore)
    return tuple((top - wide * times, top) for top, times in zip(tops, (1, 1, 2)))


def piston_cut(s: Sizes) -> Solids:
    """Cut at right angles to the pin: crown, skirt and rings; the boss and the pin behind."""
    crown, r = s("piston.compression_height"), s("piston.diameter") / 2
    bore, foot = s("cylinder.bore"), s("piston.compression_height") - s("piston.height")
    deep = 0.05 * bore
    edge: list[Point] = [(r, crown)]
    for low, top in grooves(s):
        edge += [(r, top), (r - deep, top), (r - deep, low), (r, low)]
    under, wall = crown - 0.1 * bore, r - 0.045 * bore
    inside = (
        (r, foot),
        (wall, foot),
        (wall, crown - 0.3 * bore),
        (r - 0.1 * bore, crown - 0.22 * bore),
        (r - 0.17 * bore, under),
        (0, under),
    )
    rings = tuple(
        plate(
            side * (r - 0.8 * deep),
            low + 0.1 * (top - low),
            side * bore / 2,
            top - 0.05 * (top - low),
            "solid",
        )
        for low, top in grooves(s)
        for side in (-1, 1)
    )
    boss = 0.75 * s("piston.pin_bore")
    back = Area(turned(((wall, foot), (wall, crown - 0.3 * bore), (r - 0.17 * bore, under))), "")
    pillar = Area(((-boss, 0), (-boss, under), (boss, under), (boss, 0)), "")
    section = Area(turned(((0, crown), *edge, *inside)), "b")
    return (back, pillar, Circle((0, 0), boss), *pin(s), section, *rings)


def pin(s: Sizes) -> Solids:
    return (Circle((0, 0), s("piston.pin") / 2, "a"), Circle((0, 0), 0.28 * s("piston.pin")))


def piston_whole(s: Sizes) -> Solids:
    """From outside, across the pin."""
    crown, r = s("piston.compression_height"), s("piston.diameter") / 2
    foot = crown - s("piston.height")
    rings = tuple(Line(((-r, y), (r, y)), "thin") for pair in grooves(s) for y in pair)
    return (plate(-r, foot, r, crown), *rings)


def view(s: Sizes) -> View:
    """Cut along the pin, so that the pin's fit is seen."""
    crown, r, bore = s("piston.compression_height"), s("piston.diameter") / 2, s("cylinder.bore")
    foot, hole, boss = crown - s("piston.height"), s("piston.pin_bore") / 2, 0.85 * s("piston.pin_bore")
    deep, under = 0.05 * bore, crown - 0.1 * bore
    edge: list[Point] = [(0, crown), (r, crown)]
    for low, top in grooves(s):
        edge += [(r, top), (r - deep, top), (r - deep, low), (r, low)]
    gap = 0.16 * bore
    upper = (
        *edge,
        (r, hole),
        (gap, hole),
        (gap, boss),
        (0.3 * bore, under - 0.04 * bore),
        (0.26 * bore, under),
        (0, under),
    )
    lower = (
        (r, -hole),
        (r, foot),
        (r - 0.045 * bore, foot),
        (r - 0.06 * bore, -boss * 0.9),
        (gap, -boss),
        (gap, -hole),
    )
    inside = plate(-r + 0.045 * bore, foot, r - 0.045 * bore, under)
    long = r - 0.05 * bore
    tube = (plate(-long, -hole, long, hole, "c"), plate(-long, -0.55 * hole, long, 0.55 * hole))
    half = s("rod.small_end_length") / 2
    rod = plate(-min(half, gap * 0.95), -1.25 * hole, min(half, gap * 0.95), 1.25 * hole)
    return View(
        "piston",
        "Piston, cut along its pin",
        (inside, Area(turned(upper), "b"), *halves(lower, "b"), *tube, rod),
        _places(s),
        (centre((0, foot - 0.12 * bore), (0, crown + 0.06 * bore)), centre((-1.06 * r, 0), (1.06 * r, 0))),
    )


def _places(s: Sizes) -> tuple[Place, ...]:
    crown, r, bore = s("piston.compression_height"), s("piston.diameter") / 2, s("cylinder.bore")
    foot, hole = crown - s("piston.height"), s("piston.pin_bore") / 2
    return (
        Place(
            "piston.diameter",
            "Across\nthe skirt",
            (-r, foot - 0.08 * bore),
            (r, foot - 0.08 * bore),
            edges=(foot, foot),
        ),
        Place("piston.clearance", "Clearance\nin bore", (r, 0.4 * foot)),
        Place("piston.height", "Height", (-r - 0.09 * bore, foot), (-r - 0.09 * bore, crown), edges=(-r, -r)),
        Place(
            "piston.compression_height",
            "Pin to\ncrown",
            (r + 0.09 * bore, 0),
            (r + 0.09 * bore, crown),
            edges=(1.06 * r, r),
        ),
        Place("piston.pin_bore", "Pin bore", (-0.7 * r, -hole), (-0.7 * r, hole)),
        Place("piston.pin", "Pin", (0.6 * r, -hole), (0.6 * r, hole)),
        Place("piston.pin_clearance", "Pin\nclearance", (0.75 * r, -hole)),
        Place("piston.pin_running_temperature", "Pin,\nrunning", (-0.45 * r, -0.78 * hole)),
        Place("piston.dome", "Bowl", (0.25 * r, crown)),
        Place(
            "piston.top_land",
            "Top land",
            (-r, 0.5 * (crown + grooves(s)[0][1])),
            (r, 0.5 * (crown + grooves(s)[0][1])),
        ),
        Place("piston.top_land_height", "Its height", (0.9 * r, grooves(s)[0][1]), (0.9 * r, crown)),
        Place("piston.top_land_clearance", "Less than\nthe bore", (r, 0.7 * crown + 0.3 * grooves(s)[0][1])),
        Place("piston.pocket_depth", "Valve\npocket", (-0.55 * r, crown)),
        Place("piston.mass", "Mass", (-0.3 * r, crown - 0.05 * bore)),
        Place("rings", "Rings", (r, grooves(s)[0][0])),
    )


def rings_view(s: Sizes) -> View:
    """The top ring in its groove, and its gap in the bore."""
    groove, ring, bore = s("piston.groove"), s("piston.ring_width"), s("cylinder.bore")
    deep, wide = 2.2 * groove, 3.4 * groove
    low, top = -groove / 2, groove / 2
    piston = (
        (-wide, 2.6 * groove),
        (0, 2.6 * groove),
        (0, top),
        (-deep, top),
        (-deep, low),
        (0, low),
        (0, -2.6 * groove),
        (-wide, -2.6 * groove),
    )
    gap = 0.08 * groove
    wall = plate(gap, -2.6 * groove, 1.6 * groove, 2.6 * groove, "a")
    section = plate(-0.9 * deep, low, gap, low + ring, "c")
    centre_below, r = (-0.9 * groove, -6.6 * groove), 3 * groove
    open_ = s("piston.ring_gap") / bore * 6
    seen = tuple(
        Line(arc(centre_below, r * k, math.pi / 2 + open_, 2.5 * math.pi - open_, 40), "outline")
        for k in (1, 0.87)
    )
    ends = tuple(
        Line(
            tuple(
                (centre_below[0] + r * k * math.cos(a), centre_below[1] + r * k * math.sin(a))
                for k in (0.87, 1)
            ),
            "outline",
        )
        for a in (math.pi / 2 + open_, math.pi / 2 - open_)
    )
    tip = centre_below[0], centre_below[1] + 0.93 * r
    return View(
        "rings",
        "Top ring in its groove, and the ring seen from above",
        (Area(piston, "b"), wall, section, *seen, *ends),
        (
            Place("piston.groove", "Groove", (-0.95 * deep, low), (-0.95 * deep, top)),
            Place("piston.ring_width", "Ring\nwidth", (-0.35 * deep, low), (-0.35 * deep, low + ring)),
            Place(
                "piston.ring_side_clearance",
                "Side\nclearance",
                (-0.15 * deep, low + ring + (top - low - ring) / 2),
            ),
            Place("piston.ring_gap", "Gap", tip),
        ),
    )
