"""The crankshaft. Its own frame: x along its axis from the middle main bearing, the flywheel to the right."""

import math
from dataclasses import dataclass

from calc.core.drawing import Area, Line
from calc.page.engine.shapes import centre, plate, rounded
from calc.page.engine.sizes import Sizes
from calc.page.engine.view import Place, Solids, View


@dataclass(frozen=True)
class Along:
    """Where things lie along the crank, m: middles of mains and pins from left to right, which way each pin
    points, half lengths."""

    mains: tuple[float, ...]
    pins: tuple[float, ...]
    ways: tuple[int, ...]
    main: float
    pin: float
    web: float
    nose: float  # left end of the shaft
    flange: float  # right end, where the flywheel sits


def along(s: Sizes) -> Along:
    """A flat four's crank: three mains, and a fourth at the nose where the sheet has one; two pins between
    two mains, the inner pair across from the outer."""
    bore, pin, web = s("cylinder.bore"), s("crank.rod_journal_length"), 0.27 * s("crank.rod_journal")
    main = max(1.4 * bore - 2 * pin - 3 * web, 0.4 * s("crank.main_journal"))
    inner = main / 2 + web + pin / 2
    outer = inner + pin + web
    last = outer + pin / 2 + web + main / 2
    feature = s.engine.features.get("crank.main_journal")
    fourth = (-last - 1.15 * main - 0.2 * bore,) if feature and len(feature.places) > 3 else ()
    end = (fourth[0] if fourth else -last) - main / 2
    return Along(
        (*fourth, -last, 0.0, last),
        (-outer, -inner, inner, outer),
        (1, -1, -1, 1),
        main / 2,
        pin / 2,
        web,
        end - 0.7 * bore,
        last + main / 2 + 0.16 * bore,
    )


def crank(s: Sizes) -> Solids:
    """The shaft seen from the side, its pins in the plane of the paper."""
    a, journal, pin, throw = (
        along(s),
        s("crank.main_journal") / 2,
        s("crank.rod_journal") / 2,
        s("crank.throw"),
    )
    shapes: list = [
        plate(a.nose, -0.5 * journal, a.mains[0] - a.main, 0.5 * journal),
        plate(a.mains[-1] + a.main, -1.3 * journal, a.flange, 1.3 * journal),
    ]
    for x, way in zip(a.pins, a.ways):
        shapes.append(plate(x - a.pin, way * throw - pin, x + a.pin, way * throw + pin))
    for x in a.mains:
        shapes.append(plate(x - a.main, -journal, x + a.main, journal))
    shapes += _webs(s, a)
    shapes += gear(*gear_place(s), to_cam(s) / 3)
    shapes += [
        Line(((m, 0.3 * journal), (p, way * throw - way * 0.3 * pin)), "hidden") for m, p, way in _oilways(a)
    ]
    return tuple(shapes)


def _oilways(a: Along) -> tuple[tuple[float, float, int], ...]:
    mains = a.mains[-3:]
    return tuple((mains[(i + 1) // 2 if i < 3 else 2], p, w) for i, (p, w) in enumerate(zip(a.pins, a.ways)))


def _webs(s: Sizes, a: Along) -> list[Area]:
    """Webs from a main to a pin reach from below the one to beyond the other; between two pins, from one to
    the other."""
    journal, pin, throw = s("crank.main_journal") / 2, s("crank.rod_journal") / 2, s("crank.throw")
    far, near = throw + 1.15 * pin, 1.2 * journal
    soft = 0.3 * a.web

    def web(left: float, low: float, high: float) -> Area:
        return Area(rounded(left, low, left + a.web, high, soft), "")

    p = a.pins
    return [
        web(p[0] - a.pin - a.web, -near, far),
        web(p[0] + a.pin, -far, far),
        web(p[1] + a.pin, -far, near),
        web(p[2] - a.pin - a.web, -far, near),
        web(p[2] + a.pin, -far, far),
        web(p[3] + a.pin, -near, far),
    ]


def to_cam(s: Sizes) -> float:
    """From the crank's axis down to the cam's."""
    return s("crankcase.cam_distance")


def gear_place(s: Sizes) -> tuple[float, float]:
    """Both faces of the gears that drive the cam, before the first of the three mains."""
    a = along(s)
    near = a.mains[-3] - a.main - 0.05 * s("cylinder.bore")
    return near - 0.16 * s("cylinder.bore"), near


def gear(near: float, far: float, radius: float) -> Solids:
    """A gear seen from its side, its teeth drawn by their edges."""
    edges = (radius * math.sin(math.radians(5 + 10 * i)) for i in range(-9, 9))
    return (plate(near, -radius, far, radius), *(Line(((near, y), (far, y)), "thin") for y in edges))


def axis(s: Sizes) -> Line:
    a = along(s)
    return centre((a.nose - 0.05 * s("cylinder.bore"), 0), (a.flange + 0.08 * s("cylinder.bore"), 0))


def view(s: Sizes) -> View:
    a, journal, pin, throw = (
        along(s),
        s("crank.main_journal") / 2,
        s("crank.rod_journal") / 2,
        s("crank.throw"),
    )
    p, m = a.pins, a.mains
    return View(
        "crank",
        "Crankshaft, seen from the side",
        crank(s),
        (
            Place("crank.main_journal", "Main\njournal", (m[-2], -journal), (m[-2], journal)),
            Place("crank.rod_journal", "Rod\njournal", (p[0], throw - pin), (p[0], throw + pin)),
            Place(
                "crank.rod_journal_length",
                "Journal\nlength",
                (p[3] - a.pin, throw + 1.35 * pin),
                (p[3] + a.pin, throw + 1.35 * pin),
                edges=(throw + pin, throw + pin),
            ),
            Place(
                "crank.main_journal_length",
                "Main,\nlength",
                (m[-2] - a.main, 1.35 * journal),
                (m[-2] + a.main, 1.35 * journal),
                edges=(journal, journal),
            ),
            Place(
                "crank.stroke",
                "Stroke",
                (p[1] + a.pin + 0.5 * a.web, -throw),
                (p[1] + a.pin + 0.5 * a.web, throw),
            ),
            Place("journal", "Journal,\nlarger", (p[2] - 0.5 * a.pin, -throw + 0.5 * pin)),
            Place("throws", "Throws,\nfrom end", (p[0] - a.pin - 0.5 * a.web, 0)),
            Place("crank.end_float", "End float", (m[-1] + a.main, journal)),
            Place("crank.end_float_shim", "End-float\nshim", (a.flange, -0.9 * journal)),
            Place("crank.alloy", "Crank,\nmaterial", (a.nose + 0.3 * (m[0] - a.nose), 0)),
            Place("crank.bow", "Bow", (m[-2] + 0.6 * a.main, -journal)),
        ),
        (axis(s),),
        wide=True,
    )
