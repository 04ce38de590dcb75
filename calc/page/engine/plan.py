"""The whole engine cut level through crank and cylinders, seen from above."""

import math

from calc.core.drawing import Point, placed
from calc.page.engine import head
from calc.page.engine.crank import along, axis, crank
from calc.page.engine.cylinder import barrel, register, spigot
from calc.page.engine.flywheel import flywheel
from calc.page.engine.piston import piston_whole
from calc.page.engine.rod import big_end, small_end
from calc.page.engine.shapes import centre, plate
from calc.page.engine.sizes import Sizes
from calc.page.engine.view import Area, Place, Solids, Twin, View


def rod_side(s: Sizes) -> Solids:
    """A rod seen across the crank, from its journal's axis up."""
    half, long = s("rod.width") / 2, s("rod.centre_distance")
    r, eye, small = big_end(s), small_end(s), s("rod.small_end_length") / 2
    return (
        plate(-0.55 * half, 0.8 * r, 0.55 * half, long),
        plate(-half, -r, half, r),
        plate(-small, long - eye, small, long + eye),
    )


def on_pins(s: Sizes, *at: Solids) -> Solids:
    """Shapes of a cylinder's own frame, laid over the first pin and over the third."""
    a = along(s)
    return tuple(shape for x, shapes in zip((a.pins[0], a.pins[2]), at) for shape in placed(shapes, (x, 0)))


def parts(s: Sizes) -> dict[str, tuple[Solids, tuple[Twin, ...]]]:
    """What is seen of each part, the crank along x, what lies behind first; and, on the paper, where it is
    seen again: on the other side a pin further along."""
    a, seat = along(s), s("crankcase.seat_height")
    face, throw, long = seat + s("cylinder.length"), s("crank.throw"), s("rod.centre_distance")
    first, second = a.ways[0] * throw, a.ways[2] * throw
    on, back = a.pins[0] - a.pins[1], a.pins[0] - a.pins[2]
    other = (Twin(x=-1, shift=(0, on)),)
    every = (Twin(shift=(0, back)), *other, Twin(x=-1, shift=(0, on + back)))
    return {
        "case": (case_level(s), ()),
        "head": (on_pins(s, placed(head_level(s), (0, face))), every),
        "cylinder": (on_pins(s, placed(barrel(s), (0, seat))), every),
        "piston": (on_pins(s, *(placed(piston_whole(s), (0, out + long)) for out in (first, second))), other),
        "crank": (crank(s), ()),
        "rod": (on_pins(s, *(placed(rod_side(s), (0, out)) for out in (first, second))), other),
        "flywheel": (placed(flywheel(s), (a.flange, 0)), ()),
    }


def names(s: Sizes) -> dict[str, tuple[str, Point]]:
    """What each part is called, and where, the crank along x."""
    a, seat, bore = along(s), s("crankcase.seat_height"), s("cylinder.bore")
    face = seat + s("cylinder.length")
    return {
        "case": ("Case", (a.mains[-3] - a.main, 0.55 * seat)),
        "head": ("Head", (a.pins[0] - 0.3 * bore, face + 0.4 * bore)),
        "cylinder": ("Cylinder", (a.pins[1] - 0.6 * bore, -seat - 0.6 * s("cylinder.length"))),
        "piston": ("Piston", (a.pins[2], seat + 0.4 * bore)),
        "crank": ("Crank", (a.mains[-1], 0)),
        "rod": ("Rod", (a.pins[3], -0.7 * seat)),
        "flywheel": ("Flywheel", (a.flange + 0.1 * bore, -0.9 * bore)),
    }


def view(s: Sizes) -> View:
    """The crank lies upright on the paper, its flywheel at the bottom."""
    a, bore = along(s), s("cylinder.bore")
    far = s("crankcase.seat_height") + s("cylinder.length") + bore
    turn, called = -math.pi / 2, names(s)
    return View(
        "plan",
        "The engine cut level through crank and cylinders, seen from above",
        placed(pulley(s), turn=turn),
        tuple(
            Place(
                of,
                called[of][0],
                (called[of][1][1], -called[of][1][0]),
                part=placed(shapes, turn=turn),
                twins=twins,
            )
            for of, (shapes, twins) in parts(s).items()
        ),
        (
            *placed((axis(s),), turn=turn),
            *(centre((0, -x), (far * (1 - 2 * (i % 2)), -x)) for i, x in enumerate(a.pins)),
        ),
        wide=True,
    )


def pulley(s: Sizes) -> Solids:
    """The fan's pulley on the crank's nose."""
    a, bore = along(s), s("cylinder.bore")
    r, left = 0.85 * bore, a.nose + 0.04 * bore
    rim = (
        (left, r),
        (left + 0.05 * bore, r),
        (left + 0.1 * bore, 0.84 * r),
        (left + 0.15 * bore, r),
        (left + 0.2 * bore, r),
        (left + 0.2 * bore, 0.74 * r),
        (left + 0.13 * bore, 0.7 * r),
        (left + 0.13 * bore, 0.3 * r),
        (left + 0.24 * bore, 0.3 * r),
        (left + 0.24 * bore, 0.16 * r),
        (left, 0.16 * r),
    )
    return (Area(rim, "a"), Area(tuple((x, -y) for x, y in rim), "a"))


def case_level(s: Sizes) -> Solids:
    """The case's walls in the plane of the crank: between the cylinders, at the ends, and round the mains."""
    a, seat, bore = along(s), s("crankcase.seat_height"), s("cylinder.bore")
    out, deep, wall = register(s), spigot(s), 0.09 * bore
    housing = s("crankcase.main_housing") / 2
    left, right = a.mains[0] - a.main - 0.27 * bore, a.mains[-1] + a.main + 0.04 * bore
    shapes: list = [plate(left, -seat, right, seat, "")]
    for way in (1, -1):
        pins = (a.pins[0], a.pins[2]) if way > 0 else (a.pins[1], a.pins[3])
        edges = [left, *(x + k * out for x in pins for k in (-1, 1)), right]
        for lo, hi in zip(edges[::2], edges[1::2]):
            near, far = (seat - deep, seat) if way > 0 else (-seat, -seat + deep)
            shapes.append(plate(lo, near, hi, far, "a" if way > 0 else "b"))
        for x in a.mains:
            near, far = (housing, seat - deep) if way > 0 else (deep - seat, -housing)
            shapes.append(plate(x - 0.8 * a.main, near, x + 0.8 * a.main, far, "a" if way > 0 else "b"))
        for lo, hi in ((left, left + wall), (right - wall, right)):
            near, far = (housing, seat) if way > 0 else (-seat, -housing)
            shapes.append(plate(lo, near, hi, far, "a" if way > 0 else "b"))
    return tuple(shapes)


def head_level(s: Sizes) -> Solids:
    """A head over one cylinder, in the plane of the crank."""
    at, bore = head.levels(s), s("cylinder.bore")
    return (Area(head.casting(s), "b"), plate(-0.66 * bore, at.bed, 0.66 * bore, at.cover))
