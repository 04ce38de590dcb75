"""The seats of one side's two cylinders, seen from the cylinders: x along the crank, y up, its axis
through the origin."""

from calc.core.drawing import Area, Circle, Line
from calc.page.engine.shapes import centre, rounded
from calc.page.engine.sizes import Sizes
from calc.page.engine.view import Place, Solids, View


def studs(s: Sizes, x: float) -> Solids:
    """The four stud holes round the hole at x."""
    along, up, r = s("crankcase.stud_along") / 2, s("crankcase.stud_up") / 2, s("crankcase.stud_hole") / 2
    return tuple(Circle((x + i * along, j * up), r) for i in (-1, 1) for j in (-1, 1))


def face(s: Sizes) -> Solids:
    """The case's side with both seats and holes."""
    bore, hole, apart = (
        s("cylinder.bore"),
        s("crankcase.spigot_bore") / 2,
        s("crankcase.cylinder_spacing") / 2,
    )
    wide, high = apart + 0.78 * bore, 0.72 * bore
    seat = max(1.13 * hole, hole + 0.04 * bore)
    shapes: list = [Area(rounded(-wide, -high, wide, high, 0.1 * bore), "")]
    for x in (-apart, apart):
        shapes += [Circle((x, 0), seat, style="thin"), Circle((x, 0), hole), *studs(s, x)]
    return tuple(shapes)


def view(s: Sizes) -> View:
    bore, hole, apart = (
        s("cylinder.bore"),
        s("crankcase.spigot_bore") / 2,
        s("crankcase.cylinder_spacing") / 2,
    )
    along, up, stud = s("crankcase.stud_along") / 2, s("crankcase.stud_up") / 2, s("crankcase.stud_hole") / 2
    reach = max((along**2 + up**2) ** 0.5, 1e-9)
    at_hole, at_stud = hole / reach, (reach - stud) / reach
    middle = (at_hole + at_stud) / 2
    high = 0.78 * bore
    return View(
        "seats",
        "Cylinder seats of one side, seen from the cylinders",
        face(s),
        (
            Place(
                "crankcase.cylinder_spacing",
                "Centres\napart",
                (-apart, high),
                (apart, high),
                edges=(0.0, 0.0),
            ),
            Place("crankcase.land", "Case left\nbetween", (0, 0.08 * bore)),
            Place("crankcase.stud_along", "Studs\nalong", (-apart, up)),
            Place("crankcase.stud_up", "Studs, up\nand down", (apart + along, 0)),
            Place("crankcase.stud_hole", "Stud\nhole", (apart + along, up)),
            Place("crankcase.spigot_wall", "Wall to\na stud", (-apart - along * middle, -up * middle)),
            Place("crankcase.seat_flatness", "Seat,\nflat", (-apart - 1.06 * hole, 0.02 * bore)),
            Place("crankcase.seat_tilt", "Seat,\ntilt", (apart, -1.06 * hole)),
        ),
        (
            centre((-apart - 0.8 * bore, 0), (apart + 0.8 * bore, 0)),
            *(centre((x, -0.75 * bore), (x, 0.75 * bore)) for x in (-apart, apart)),
            Line(((-apart - along, up), (-apart + along, up)), "thin"),
            Line(((apart + along, -up), (apart + along, up)), "thin"),
        ),
        wide=True,
    )
