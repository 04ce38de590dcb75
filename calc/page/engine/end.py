"""The whole engine cut across, through a pair of cylinders, seen from the flywheel's end."""

import math

from calc.core.drawing import Area, Circle, Line, Point, placed
from calc.page.engine import case as crankcase
from calc.page.engine import head, lifter
from calc.page.engine.cam import lobe
from calc.page.engine.crank import to_cam
from calc.page.engine.cylinder import barrel
from calc.page.engine.piston import piston_cut
from calc.page.engine.rod import rod
from calc.page.engine.shapes import centre
from calc.page.engine.sizes import Sizes
from calc.page.engine.view import Place, Solids, Twin, View

TURN = math.radians(38)  # the crank, so that rods and pistons are seen apart
MIRRORED = (Twin(x=-1),)
TURNED = (Twin(x=-1, y=-1),)


def bank(shapes: Solids, up: float) -> Solids:
    """Shapes of a cylinder's own frame, `up` from the crank's axis, laid to the right."""
    return placed(placed(shapes, (0, up)), turn=-math.pi / 2)


def from_cam(shapes: Solids, s: Sizes, up: float) -> Solids:
    """Shapes of a lifter's frame, `up` from the cam's axis, laid to the right."""
    return placed(placed(shapes, (0, up)), (0, -to_cam(s)), crankcase.lean(s) - math.pi / 2)


def wrist(s: Sizes) -> float:
    """The pin's way out from the crank's axis, with the crank as drawn."""
    r, long = s("crank.throw"), s("rod.centre_distance")
    return r * math.cos(TURN) + math.sqrt(max(long**2 - (r * math.sin(TURN)) ** 2, 0.0))


def rod_on_pin(s: Sizes) -> Solids:
    """The right rod, and the journal in it."""
    r = s("crank.throw")
    x, y = r * math.cos(TURN), r * math.sin(TURN)
    angle = math.atan2(-y, wrist(s) - x) - math.pi / 2
    return (*placed(rod(s), (x, y), angle), Circle((x, y), s("crank.rod_journal") / 2, "a"))


def crank_end(s: Sizes) -> Solids:
    """The room for it in the case, then its web from the end, with the main journal behind."""
    pin, main = s("crank.rod_journal") / 2, s("crank.main_journal") / 2
    far, wide = s("crank.throw") + 1.15 * pin, 1.12 * max(pin, main)
    corners = (
        (-far, -wide * 0.8),
        (-far, wide * 0.8),
        (-0.5 * far, wide),
        (0.5 * far, wide),
        (far, wide * 0.8),
        (far, -wide * 0.8),
        (0.5 * far, -wide),
        (-0.5 * far, -wide),
    )
    room = crankcase.inside(s)
    return (
        Area((*room, *((-x, y) for x, y in reversed(room))), ""),
        *placed((Area(corners, ""),), turn=TURN),
        Circle((0, 0), main, style="hidden"),
    )


def parts(s: Sizes) -> dict[str, tuple[Solids, tuple[Twin, ...]]]:
    """What is seen of each part on the right, what lies behind first; and where it is seen again."""
    seat, low = s("crankcase.seat_height"), to_cam(s)
    face = seat + s("cylinder.length")
    return {
        "case": ((Area(crankcase.outline(s), "a"), crankcase.lifter_hole(s)), MIRRORED),
        "crank": (crank_end(s), ()),
        "head": (bank((*head.cover(s), *head.body(s)), face), MIRRORED),
        "cylinder": (bank(barrel(s), seat), MIRRORED),
        "piston": (bank(piston_cut(s), wrist(s)), MIRRORED),
        "rod": (rod_on_pin(s), TURNED),
        "stem": (bank(head.springs(s), face), MIRRORED),
        "guide": (bank(head.valve_group(s), face), MIRRORED),
        "lifter": (from_cam(lifter.lifter_seen(s), s, s("cam.base_circle") / 2), MIRRORED),
        "pushrod": (
            (
                *from_cam(lifter.pushrod_seen(s, s("lifter.pushrod")), s, s("lifter.reach")),
                *bank(head.rocker(s), face),
            ),
            MIRRORED,
        ),
        "cam": (
            (
                Area(tuple((x, y - low) for x, y in lobe(s, 0.3)), ""),
                Circle((0, -low), s("cam.journal") / 2, style="hidden"),
            ),
            (),
        ),
    }


def names(s: Sizes) -> dict[str, tuple[str, Point]]:
    """What each part is called, and where."""
    seat, bore, low = s("crankcase.seat_height"), s("cylinder.bore"), to_cam(s)
    face, out = seat + s("cylinder.length"), wrist(s)
    tube = seat + 0.5 * bore
    return {
        "case": ("Case", (-0.5 * seat, room_top(s))),
        "head": ("Head", (face + 0.5 * bore, 0.6 * bore)),
        "cylinder": ("Cylinder", (-seat - 0.5 * s("cylinder.length"), 0.6 * bore)),
        "piston": ("Piston", (out + 0.2 * bore, 0.35 * bore)),
        "crank": ("Crank", (0, 0.3 * bore)),
        "rod": ("Rod", (-0.6 * out, 0.02 * bore)),
        "guide": ("Guide", (face + head.guide_low(s) + 0.5 * s("guide.length"), 0.05 * bore)),
        "stem": ("Spring", (-face - head.levels(s).bed - 0.15 * bore, -0.18 * bore)),
        "lifter": ("Lifter", (-0.6 * s("lifter.reach"), -low + 0.1 * bore)),
        "pushrod": ("Pushrod", (tube, -low + tube * math.tan(crankcase.lean(s)))),
        "cam": ("Cam", (0, -low - 0.1 * bore)),
    }


def view(s: Sizes) -> View:
    seat, bore, low = s("crankcase.seat_height"), s("cylinder.bore"), to_cam(s)
    end = seat + s("cylinder.length") + head.levels(s).cover + 0.05 * bore
    called = names(s)
    return View(
        "end",
        "The engine cut across, through a pair of cylinders",
        (),
        tuple(Place(of, *called[of], part=shapes, twins=twins) for of, (shapes, twins) in parts(s).items()),
        (
            centre((-end, 0), (end, 0)),
            centre((0, room_top(s) + 0.1 * bore), (0, crankcase.foot(s) - 0.06 * bore)),
            Line(((-0.5 * seat, -low - 0.42 * bore), (0.5 * seat, -low - 0.42 * bore)), "thin"),
        ),
        wide=True,
    )


def room_top(s: Sizes) -> float:
    return crankcase.room(s) + 0.04 * s("cylinder.bore")
