"""The whole engine cut across, through a pair of cylinders, seen from the flywheel's end."""

import math

from calc.core.drawing import Area, Circle, Line, Point, placed
from calc.page.engine import case as crankcase
from calc.page.engine import head, lifter
from calc.page.engine.cam import distance, lobe
from calc.page.engine.cylinder import barrel
from calc.page.engine.piston import piston_cut
from calc.page.engine.rod import rod
from calc.page.engine.shapes import centre
from calc.page.engine.sizes import Sizes
from calc.page.engine.view import Place, Solids, View

TURN = math.radians(38)  # the crank, so that rods and pistons are seen apart


def bank(shapes: Solids, s: Sizes, left: bool, up: float = 0.0) -> Solids:
    """Shapes of a cylinder's own frame, `up` from the crank's axis, laid to the right or to the left."""
    raised = placed(shapes, (0, up))
    laid = placed(raised, (0, 0), -math.pi / 2)
    return placed(laid, mirror=True) if left else laid


def wrist(s: Sizes) -> float:
    """The pin's way out from the crank's axis, with the crank as drawn."""
    r, long = s("crank.throw"), s("rod.centre_distance")
    return r * math.cos(TURN) + math.sqrt(long**2 - (r * math.sin(TURN)) ** 2)


def turned_rod(s: Sizes, left: bool) -> Solids:
    r = s("crank.throw")
    pin: Point = (r * math.cos(TURN), r * math.sin(TURN))
    angle = math.atan2(-pin[1], wrist(s) - pin[0]) - math.pi / 2
    laid = placed(rod(s), pin, angle)
    return placed(laid, turn=math.pi) if left else laid


def crank_end(s: Sizes) -> Solids:
    """Web, pins and main journal from the end."""
    r, pin, main = s("crank.throw"), s("crank.rod_journal") / 2, s("crank.main_journal") / 2
    far, wide = r + 1.15 * pin, 1.12 * max(pin, main)
    across = placed(
        (
            Area(
                (
                    (-far, -wide * 0.8),
                    (-far, wide * 0.8),
                    (-0.5 * far, wide),
                    (0.5 * far, wide),
                    (far, wide * 0.8),
                    (far, -wide * 0.8),
                    (0.5 * far, -wide),
                    (-0.5 * far, -wide),
                )
            ),
        ),
        turn=TURN,
    )
    return across


def journals(s: Sizes) -> Solids:
    r, pin, main = s("crank.throw"), s("crank.rod_journal") / 2, s("crank.main_journal") / 2
    x, y = r * math.cos(TURN), r * math.sin(TURN)
    return (Circle((x, y), pin, "a"), Circle((-x, -y), pin, "a"), Circle((0, 0), main, style="hidden"))


def pushrods(s: Sizes, left: bool) -> Solids:
    low, turn = distance(s), crankcase.lean(s)
    raised = placed(lifter.pushrod_seen(s, s("lifter.pushrod")), (0, s("lifter.reach")))
    laid = placed(raised, (0, -low), turn - math.pi / 2)
    return placed(laid, mirror=True) if left else laid


def lifters(s: Sizes, left: bool) -> Solids:
    low, turn = distance(s), crankcase.lean(s)
    raised = placed(lifter.lifter_seen(s), (0, s("cam.base_circle") / 2))
    laid = placed(raised, (0, -low), turn - math.pi / 2)
    return placed(laid, mirror=True) if left else laid


def sides(shapes: Solids, s: Sizes, up: float) -> Solids:
    """Shapes of a cylinder's own frame, on both sides."""
    return (*bank(shapes, s, False, up), *bank(shapes, s, True, up))


def parts(s: Sizes) -> dict[str, Solids]:
    """What is seen of each part, what lies behind first."""
    seat, low = s("crankcase.seat_height"), distance(s)
    face = seat + s("cylinder.length")
    return {
        "case": crankcase.case(s),
        "head": sides((*head.cover(s), *head.body(s)), s, face),
        "cylinder": sides(barrel(s), s, seat),
        "piston": sides(piston_cut(s), s, wrist(s)),
        "crank": crank_end(s),
        "rod": (*turned_rod(s, True), *turned_rod(s, False), *journals(s)),
        "guide": sides(head.valve_group(s), s, face),
        "stem": sides(head.springs(s), s, face),
        "lifter": (*lifters(s, True), *lifters(s, False)),
        "pushrod": (*pushrods(s, True), *pushrods(s, False), *sides(head.rocker(s), s, face)),
        "cam": (
            Area(tuple((x, y - low) for x, y in lobe(s, 0.3))),
            Circle((0, -low), s("cam.journal") / 2, style="hidden"),
        ),
    }


def names(s: Sizes) -> dict[str, tuple[str, Point]]:
    """What each part is called, and where."""
    seat, bore, low = s("crankcase.seat_height"), s("cylinder.bore"), distance(s)
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
    seat, bore, low = s("crankcase.seat_height"), s("cylinder.bore"), distance(s)
    end = seat + s("cylinder.length") + head.levels(s).cover + 0.05 * bore
    called = names(s)
    return View(
        "end",
        "The engine cut across, through a pair of cylinders",
        (),
        tuple(Place(of, *called[of], part=shapes) for of, shapes in parts(s).items()),
        (
            centre((-end, 0), (end, 0)),
            centre((0, room_top(s) + 0.1 * bore), (0, -low - 0.68 * bore)),
            Line(((-0.5 * seat, -low - 0.42 * bore), (0.5 * seat, -low - 0.42 * bore)), "thin"),
        ),
        wide=True,
    )


def room_top(s: Sizes) -> float:
    return crankcase.room(s) + 0.04 * s("cylinder.bore")
