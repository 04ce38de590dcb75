"""The camshaft: along its axis, and a lobe seen from its end."""

import math

from calc.core.drawing import Area, Circle, Line, Points, arc
from calc.page.engine.crank import along, gear, gear_place, to_cam
from calc.page.engine.shapes import centre, plate
from calc.page.engine.sizes import Sizes
from calc.page.engine.view import Place, Solids, View


def lobe(s: Sizes, turn: float = math.pi / 2) -> Points:
    """A lobe round the origin, its nose towards `turn`: base circle, nose, and the straight flanks that touch
    both."""
    base, lift = s("cam.base_circle") / 2, s("cam.lobe_lift")
    nose = 0.42 * base
    away = base + lift - nose
    half = math.acos(min(1.0, (base - nose) / away))
    near = arc((0, 0), base, turn + half, turn + 2 * math.pi - half, 24)
    middle = (away * math.cos(turn), away * math.sin(turn))
    return (*near, *arc(middle, nose, turn - half, turn + half, 10))


def cam(s: Sizes) -> Solids:
    """Along its axis, from the crank's middle: journals, lobes, and its gear."""
    a = along(s)
    journal, base, lift = s("cam.journal") / 2, s("cam.base_circle") / 2, s("cam.lobe_lift")
    near, far = gear_place(s)
    shapes: list = [plate(near - 0.1 * a.main, -0.8 * journal, a.mains[-1] + 0.8 * a.main, 0.8 * journal)]
    shapes += [plate(x - 0.9 * a.main, -journal, x + 0.9 * a.main, journal) for x in a.mains[-3:]]
    wide = 0.8 * a.pin
    for x, way in zip(a.pins, (1, -1, 1, -1)):
        low, high = (-base, base + lift) if way > 0 else (-base - lift, base)
        shapes.append(plate(x - wide, low, x + wide, high))
        shapes.append(Line(((x - wide, way * base), (x + wide, way * base)), "thin"))
    return (*shapes, *gear(near, far, 2 / 3 * to_cam(s)))


def _along_the_lobe(s: Sizes, x1: float, x2: float) -> tuple[Place, ...]:
    """What a grinder wants to know, on the lobe seen from the side, from x1 to x2."""
    base, lift, neck = s("cam.base_circle") / 2, s("cam.lobe_lift"), s("cam.core") / 2
    beside = x2 + 0.2 * s("cam.journal")
    return (
        Place("cam.lobe_taper", "Lobe\ntaper", (x1 + 0.5 * (x2 - x1), base + lift)),
        Place("cam.core", "Between\nlobes", (beside, -neck), (beside, neck)),
        Place("cam.hard_depth", "Hardened,\nas made", (x1 + 0.35 * (x2 - x1), 0.97 * base + lift)),
        Place("cam.hard_left", "Hardened,\nleft", (x1 + 0.7 * (x2 - x1), 0.94 * base + lift)),
    )


def view(s: Sizes) -> View:
    journal, base, lift = s("cam.journal") / 2, s("cam.base_circle") / 2, s("cam.lobe_lift")
    hole, neck = s("crankcase.cam_bore") / 2, s("cam.core") / 2
    long, wide = 1.1 * journal, 0.9 * base
    x1, x2 = 2.2 * journal, 2.2 * journal + wide
    low = -2.6 * base - lift
    bearing = (plate(-long, hole, long, 1.7 * hole, "b"), plate(-long, -1.7 * hole, long, -hole, "b"))
    side: Solids = (
        *bearing,
        plate(-1.5 * long, -1.3 * journal, -long * 1.06, 1.3 * journal),
        plate(-long * 1.06, -journal, long * 1.06, journal),
        plate(long * 1.06, -neck, x1, neck),
        plate(x1, -base, x2, base + lift),
        Line(((x1, base), (x2, base)), "thin"),
        plate(x2, -neck, x2 + 0.6 * journal, neck),
    )
    middle = (x2 - 1.6 * base, low)
    end = tuple((x + middle[0], y + middle[1]) for x, y in lobe(s))
    half = s("cam.open_angle") / 4  # the cam turns half as far as the crank, and opens as long as it shuts
    opening = arc(middle, base + 1.3 * lift, math.pi / 2 - half, math.pi / 2 + half, 16)
    return View(
        "cam",
        "Camshaft: a journal and a lobe, and the lobe from its end",
        (
            *side,
            Line((opening[0], middle, opening[-1]), "thin"),
            Line(opening, "thin"),
            Area(end, ""),
            Circle(middle, base, style="thin"),
            Circle(middle, neck, style="hidden"),
        ),
        (
            Place("cam.journal", "Journal", (-0.4 * long, -journal), (-0.4 * long, journal)),
            Place("crankcase.cam_bore", "Bearing\nbore", (0.5 * long, -hole), (0.5 * long, hole)),
            Place("cam.clearance", "Clearance", (0.9 * long, hole)),
            Place("cam.end_float", "End float", (-1.03 * long, 1.15 * journal)),
            Place("cam.lobe_lift", "Lobe lift", (middle[0], low + base), (middle[0], low + base + lift)),
            Place("cam.base_circle", "Base\ncircle", (middle[0] - base, low), (middle[0] + base, low)),
            Place("cam.open_angle", "Open for", opening[0]),
            Place("cam.duration", "Duration", opening[len(opening) // 2]),
            Place("cam.checking_lift", "Checking\nlift", (middle[0] + 0.25 * base, low + base + 0.1 * lift)),
            Place("cam.flank_angle", "Base circle\nto nose", opening[-1]),
            Place("cam.centre_intake", "Middle,\nintake", (middle[0] + 0.1 * base, low + 0.55 * base)),
            Place("cam.centre_exhaust", "Middle,\nexhaust", (middle[0] - 0.1 * base, low + 0.3 * base)),
            Place("cam.nose_radius", "Nose\nradius", (middle[0] + 0.3 * base, low + base + 0.9 * lift)),
            *_along_the_lobe(s, x1, x2),
            Place("cam.may_wear", "May wear\nby", (middle[0] - base * 0.7, low - base * 0.71)),
        ),
        (
            centre((-1.7 * long, 0), (x2 + 0.8 * journal, 0)),
            centre((middle[0], low - 1.2 * base), (middle[0], low + base + lift * 1.3)),
            centre((middle[0] - 1.2 * base, low), (middle[0] + 1.2 * base, low)),
        ),
    )
