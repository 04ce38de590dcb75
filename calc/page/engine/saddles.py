"""A half of the case seen from the joint, crank and cam out, its gears in place: x along the crank, y up."""

from calc.core.drawing import Circle, Line, Points, box
from calc.page.engine.case import foot, room
from calc.page.engine.crank import along, gear_place, to_cam
from calc.page.engine.shapes import centre, plate
from calc.page.engine.side import ends
from calc.page.engine.sizes import Sizes
from calc.page.engine.view import Place, Solids, View


def dowels(s: Sizes) -> tuple[tuple[float, float], tuple[float, float]]:
    """Middles of the two dowels on the joint."""
    left, right = ends(s)
    edge = 0.045 * s("cylinder.bore")
    return (left + edge, room(s) + edge), (right - edge, foot(s) + edge)


def half(s: Sizes) -> Solids:
    """The joint's face round the room, and the webs with their half bores."""
    a, bore, low, top, bottom = along(s), s("cylinder.bore"), to_cam(s), room(s), foot(s)
    left, right = ends(s)
    wall, housing, hole = 0.085 * bore, s("crankcase.main_housing") / 2, s("crankcase.cam_bore") / 2
    shapes: list = [
        plate(left, bottom, right, top + wall, "b"),
        plate(left + wall, bottom + wall, right - wall, top),
    ]
    for x in a.mains[-3:]:
        near, far = x - 0.8 * a.main, x + 0.8 * a.main
        shapes += [
            plate(near, -low - hole - 0.12 * bore, far, top, "b"),
            plate(near, -housing, far, housing),
            plate(near, -low - hole, far, -low + hole),
        ]
    shapes += [Circle(at, 0.028 * bore, "c") for at in dowels(s)]
    return tuple(shapes)


def view(s: Sizes) -> View:
    a, bore, low, top = along(s), s("cylinder.bore"), to_cam(s), room(s)
    left, right = ends(s)
    near, far = gear_place(s)
    mains = a.mains[-3:]
    housing = s("crankcase.main_housing") / 2
    mesh = -low / 3
    between = (mains[1] + mains[2]) / 2
    return View(
        "saddles",
        "A half of the case seen from the joint, crank and cam out",
        (
            *half(s),
            *(Line(_outline(near, far, r, y), "hidden") for r, y in ((low / 3, 0.0), (2 * low / 3, -low))),
        ),
        (
            Place("crankcase.saddle_line", "Saddles'\nline", (mains[1], 0)),
            Place("crankcase.cam_distance", "Crank to\ncam", (between, 0), (between, -low)),
            Place("cam.gear_backlash", "Gears,\nbacklash", ((near + far) / 2, mesh)),
            Place("cam.gear_radius", "Cam gear,\nradius", (near, -1.2 * low)),
            Place("cam.gear_step", "Size code,\none step", (far, -1.1 * low)),
            Place("cam.gear_last", "Size code,\nlast sold", (far, -1.5 * low)),
            Place("cam.gear_helix", "Gears,\nhelix", ((near + far) / 2, -1.35 * low)),
            Place("crankcase.parting_flatness", "Joint,\nflat", (mains[2], 0.5 * (housing + top))),
            Place("crankcase.dowel_clearance", "Dowel,\nplay", dowels(s)[0]),
        ),
        (
            centre((left - 0.04 * bore, 0), (right + 0.04 * bore, 0)),
            centre((left - 0.04 * bore, -low), (right + 0.04 * bore, -low)),
        ),
        wide=True,
    )


def _outline(near: float, far: float, radius: float, y: float) -> Points:
    """A gear from its side, its axis at the height y."""
    return (*box(near, y - radius, far, y + radius), (near, y - radius))
