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
        Place("piston.skirt_running_temperature", "Skirt,\nrunning", (-r, 0.55 * foot)),
        Place("piston.expansion", "Expansion", (-0.9 * r, 0.7 * foot)),
        Place("piston.mass", "Mass", (-0.3 * r, crown - 0.05 * bore)),
        Place("rings", "Rings", (r, grooves(s)[0][0])),
    )


RINGS = (("", "Top", 0.0), ("_second", "Second", -6.2), ("_oil", "Oil", -13.0))
"""Each ring by the end of its sizes' names, its word, and how many grooves' width it is drawn below the
first."""


def rings_view(s: Sizes) -> View:
    """The three rings in their grooves, and a ring's gap in the bore."""
    unit, bore = s("piston.groove"), s("cylinder.bore")
    deep, wide, gap = 2.2 * unit, 3.4 * unit, 0.08 * unit
    edge: list[Point] = [(-wide, 2.6 * unit), (0, 2.6 * unit)]
    rings: list[Area] = []
    places: list[Place] = []
    for end, word, down in RINGS:
        groove, ring = s(f"piston.groove{end}"), s(f"piston.ring_width{end}")
        low, top = down * unit - groove / 2, down * unit + groove / 2
        edge += [(0, top), (-deep, top), (-deep, low), (0, low)]
        rings.append(plate(-0.9 * deep, low, gap, low + ring, "c"))
        places += [
            Place(f"piston.groove{end}", f"{word}\ngroove", (-0.95 * deep, low), (-0.95 * deep, top)),
            Place(
                f"piston.ring_width{end}", f"{word}\nring", (-0.35 * deep, low), (-0.35 * deep, low + ring)
            ),
            Place(
                f"piston.ring_side_clearance{end}",
                "Side\nclearance",
                (-0.15 * deep, low + ring + (groove - ring) / 2),
            ),
        ]
    foot = -17.0 * unit
    edge += [(0, foot), (-wide, foot)]
    wall = plate(gap, foot, 1.6 * unit, 2.6 * unit, "a")
    seen, tip = _from_above(s("piston.ring_gap") / bore * 6, (-0.9 * unit, foot - 4 * unit), 3 * unit)
    return View(
        "rings",
        "The rings in their grooves, and a ring seen from above",
        (Area(tuple(edge), "b"), wall, *rings, *seen),
        (
            *places,
            Place("piston.ring_gap", "Top gap", tip),
            Place("piston.ring_gap_second", "Second\ngap", (tip[0] - 0.3 * unit, tip[1])),
            Place("piston.ring_gap_oil", "Oil gap", (tip[0] + 0.3 * unit, tip[1])),
            Place("piston.ring_running_temperature", "Running", (0.5 * gap, 0.0)),
            Place("piston.ring_expansion", "Expansion", (-0.6 * deep, 0.0)),
        ),
    )


def _from_above(open_: float, middle: Point, r: float) -> tuple[Solids, Point]:
    """A ring with its gap upwards, twice `open_` wide (radians), and where the gap is."""
    arcs = tuple(
        Line(arc(middle, r * k, math.pi / 2 + open_, 2.5 * math.pi - open_, 40), "outline") for k in (1, 0.87)
    )
    ends = tuple(
        Line(
            tuple((middle[0] + r * k * math.cos(a), middle[1] + r * k * math.sin(a)) for k in (0.87, 1)),
            "outline",
        )
        for a in (math.pi / 2 + open_, math.pi / 2 - open_)
    )
    return (*arcs, *ends), (middle[0], middle[1] + 0.93 * r)
