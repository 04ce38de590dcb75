"""The engine cut upright along crank and cam, seen from the left. x along the crank, y up."""

from calc.core.drawing import Line, Point, placed
from calc.page.engine.cam import cam
from calc.page.engine.case import foot, room
from calc.page.engine.crank import along, axis, crank, gear_place, to_cam
from calc.page.engine.flywheel import flywheel
from calc.page.engine.plan import pulley
from calc.page.engine.shapes import centre, plate
from calc.page.engine.sizes import Sizes
from calc.page.engine.view import Place, Solids, View


def ends(s: Sizes) -> tuple[float, float]:
    """The case's outer faces along the crank: before the gears, and behind the last main."""
    a, bore = along(s), s("cylinder.bore")
    return gear_place(s)[0] - 0.12 * bore, a.mains[-1] + a.main + 0.04 * bore


def case_cut(s: Sizes) -> Solids:
    """Walls, the webs that hold the mains and the cam's bearings, and the room between them."""
    a, bore, low, top = along(s), s("cylinder.bore"), to_cam(s), room(s)
    wall, (left, right) = 0.085 * bore, ends(s)
    journal, cam_hole = s("crank.main_journal") / 2, s("crankcase.cam_bore") / 2
    housing, bottom = s("crankcase.main_housing") / 2, foot(s)
    shapes: list = [
        plate(left, bottom, right, top + wall),
        plate(left, top, right, top + wall, "a"),
        plate(left, bottom, right, bottom + wall, "a"),
        plate(left, 0.6 * journal, left + wall, top, "a"),
        plate(left, bottom + wall, left + wall, -0.6 * journal, "a"),
        plate(right - wall, 1.35 * journal, right, top, "a"),
        plate(right - wall, bottom + wall, right, -1.35 * journal, "a"),
    ]
    for x in a.mains[-3:]:
        near, far = x - 0.8 * a.main, x + 0.8 * a.main
        shapes += [
            plate(near, housing, far, top, "a"),
            plate(near, -low + cam_hole, far, -housing, "a"),
            plate(near, -low - cam_hole - 0.12 * bore, far, -low - cam_hole, "a"),
            plate(near, journal, far, housing, "c"),
            plate(near, -housing, far, -journal, "c"),
        ]
    return tuple(shapes)


def view(s: Sizes) -> View:
    a, bore, low = along(s), s("cylinder.bore"), to_cam(s)
    left, right = ends(s)
    oil, housing, thrust = (
        -low - 0.42 * bore,
        s("crankcase.main_housing") / 2,
        s("crankcase.thrust_width") / 2,
    )
    parts: dict[str, tuple[str, Point, Solids]] = {
        "case": ("Case", (0.2 * a.main, room(s) + 0.04 * bore), case_cut(s)),
        "cam": ("Cam", (a.pins[1], -low), placed(cam(s), (0, -low))),
        "crank": ("Crank", (a.pins[0], s("crank.throw")), crank(s)),
        "flywheel": ("Flywheel", (a.flange + 0.2 * bore, -bore), placed(flywheel(s), (a.flange, 0))),
    }
    return View(
        "side",
        "The engine cut upright along crank and cam",
        pulley(s),
        (
            *(Place(of, words, at, part=shapes) for of, (words, at, shapes) in parts.items()),
            Place(
                "crankcase.thrust_width",
                "Thrust\nbearing",
                (a.mains[-1] - thrust, housing),
                (a.mains[-1] + thrust, housing),
            ),
            Place("crankcase.thrust_body", "Thrust,\nheld by", (a.mains[-1], 0.8 * room(s))),
            Place("crank.running_temperature", "Crank,\nrunning", (a.mains[-2], 0)),
            Place("crank.turning_torque", "Turns\nwith", (a.nose, 0)),
        ),
        (
            axis(s),
            centre((left - 0.04 * bore, -low), (right + 0.04 * bore, -low)),
            Line(((left + 0.085 * bore, oil), (right - 0.085 * bore, oil)), "thin"),
        ),
        wide=True,
    )
