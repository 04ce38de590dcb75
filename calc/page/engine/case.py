"""The crankcase, two halves parted upright. The engine's frame: x across, y up, the crank's axis at the
origin."""

import math

from calc.core.drawing import Area, Circle, Line, Point, Points
from calc.page.engine.crank import to_cam
from calc.page.engine.cylinder import register
from calc.page.engine.rod import big_end
from calc.page.engine.shapes import centre, plate, turned
from calc.page.engine.sizes import Sizes
from calc.page.engine.view import Place, Solids, View


def lean(s: Sizes) -> float:
    """How the lifters' and pushrods' axis rises outwards from the cam, radians."""
    return math.radians(8)


def room(s: Sizes) -> float:
    """What the big ends sweep, from the crank's axis."""
    return s("crank.throw") + big_end(s) + 0.09 * s("cylinder.bore")


def foot(s: Sizes) -> float:
    """The sump's lowest place, under the crank's axis: clear of the cam's gear."""
    bore, low = s("cylinder.bore"), to_cam(s)
    return -max(low + 0.62 * bore, 5 / 3 * low + 0.13 * bore)


def outline(s: Sizes) -> Points:
    """The right half from outside, from the top of the parting face round to its bottom."""
    bore, seat = s("cylinder.bore"), s("crankcase.seat_height")
    flange, top, low = 0.66 * bore, room(s) + 0.09 * bore, to_cam(s)
    boss = 0.3 * bore
    x = s("lifter.reach") + 0.12 * bore
    rise = x * math.tan(lean(s))
    return (
        (0, top),
        (0.45 * seat, top),
        (seat - 0.1 * bore, flange + 0.04 * bore),
        (seat, flange),
        (seat, -flange),
        (seat - 0.1 * bore, -flange - 0.03 * bore),
        (x, -low + rise + boss),
        (x + 0.04 * bore, -low + rise - 0.6 * boss),
        (0.72 * seat, -low - 0.36 * bore),
        (0.6 * seat, foot(s)),
        (0, foot(s)),
    )


def inside(s: Sizes) -> Points:
    """The room in the right half: for the crank, and below it for the cam and the oil."""
    bore, seat = s("cylinder.bore"), s("crankcase.seat_height")
    wall, low, r = 0.085 * bore, to_cam(s), room(s)
    out = register(s)
    return (
        (0, r),
        (0.42 * seat, r),
        (seat - 0.24 * bore, out),
        (seat, out),
        (seat, -out),
        (seat - 0.24 * bore, -out),
        (0.42 * bore, -low + 0.36 * bore),
        (0.42 * bore, -low - 0.3 * bore),
        (0.6 * seat, -low - 0.36 * bore),
        (0.6 * seat - 0.6 * wall, foot(s) + wall),
        (0, foot(s) + wall),
    )


def both(right: Points) -> tuple[Points, Points]:
    return right, tuple((-x, y) for x, y in right)


def lifter_hole(s: Sizes) -> Area:
    """The lifter's bore through the boss, right of the cam."""
    r, low, turn = s("crankcase.lifter_bore") / 2, to_cam(s), lean(s)
    near, far = 0.3 * s("cylinder.bore"), s("lifter.reach") + 0.3 * s("cylinder.bore")

    def at(along: float, across: float) -> Point:
        return (
            along * math.cos(turn) - across * math.sin(turn),
            -low + along * math.sin(turn) + across * math.cos(turn),
        )

    return Area((at(near, -r), at(far, -r), at(far, r), at(near, r)), "")


def mirrored(shape: Area) -> Area:
    return Area(tuple((-x, y) for x, y in shape.points), shape.hatch)


def case(s: Sizes) -> Solids:
    """Cut beside a main bearing: walls, room, the lifters' bores."""
    right, left = both(outline(s))
    bore_right = lifter_hole(s)
    room_right, room_left = both(inside(s))
    return (
        Area(right, "a"),
        Area(left, "b"),
        bore_right,
        mirrored(bore_right),
        Area((*room_right, *reversed(room_left)), "", "void"),
    )


def stud(s: Sizes, y: float, long: float) -> Solids:
    """A through stud with its nuts across the parting face, seen."""
    d = 0.13 * s("cylinder.bore")
    return (
        plate(-long, y - d / 2, long, y + d / 2),
        plate(long - 0.05 * d, y - d, long + 0.8 * d, y + d),
        plate(-long - 0.8 * d, y - d, -long + 0.05 * d, y + d),
    )


def sump(s: Sizes) -> Points:
    """The room for oil under a main bearing's web, its right half."""
    bore, seat, top = s("cylinder.bore"), s("crankcase.seat_height"), -to_cam(s) - 0.32 * s("cylinder.bore")
    wall = 0.085 * bore
    return (0.62 * seat, top), (0.6 * seat - 0.8 * wall, foot(s) + wall)


def through_a_main(s: Sizes) -> Solids:
    """The case cut through a main bearing, the shaft in it."""
    bore, seat, low = s("cylinder.bore"), s("crankcase.seat_height"), to_cam(s)
    housing, wall = s("crankcase.main_housing") / 2, s("crankcase.main_shell_wall")
    journal, cam, hole = s("crank.main_journal") / 2, s("crankcase.cam_bore") / 2, register(s)
    right, left = both(outline(s))
    lifter, pocket = lifter_hole(s), plate(seat - 0.26 * bore, -hole, seat, hole)
    return (
        Area(right, "a"),
        Area(left, "b"),
        pocket,
        mirrored(pocket),
        *stud(s, housing + 0.16 * bore, 0.72 * seat * 0.8),
        *stud(s, -housing - 0.16 * bore, 0.72 * seat * 0.8),
        lifter,
        mirrored(lifter),
        Circle((0, 0), housing, "c"),
        Circle((0, 0), housing - wall),
        Circle((0, 0), journal, "a"),
        Circle((0, -low), cam),
        Area(turned(sump(s)), ""),
    )


def _bearing_places(housing: float, wall: float, journal: float) -> tuple[Place, ...]:
    """Housing, shells and clearance of the main bearing; radii, and the shell's wall."""
    return (
        Place(
            "crankcase.main_housing",
            "Main\nhousing",
            (-housing * 0.94, housing * 0.342),
            (housing * 0.94, -housing * 0.342),
        ),
        Place(
            "crankcase.main_shell_wall",
            "Main\nshell wall",
            (-(housing - wall / 2) * 0.5, (housing - wall / 2) * 0.866),
        ),
        Place("crankcase.main_housing_wall", "Wall round\na main", (-0.5 * housing, -1.2 * housing)),
        Place("crankcase.main_crush_opens", "Crush\nopens by", (-housing * 0.5, -housing * 0.866)),
        Place("crankcase.main_shell_proud", "Shell,\nproud", (0, -housing + wall / 2)),
        Place(
            "crankcase.main_shell_alloy",
            "Shells,\nmaterial",
            ((housing - wall / 2) * 0.819, (housing - wall / 2) * 0.574),
        ),
        Place(
            "crankcase.shell_running_temperature",
            "Shells,\nrunning",
            ((housing - wall / 2) * 0.985, (housing - wall / 2) * 0.174),
        ),
        Place("crankcase.main_clearance", "Main\nclearance", (journal * 0.5, journal * 0.866)),
    )


def view(s: Sizes) -> View:
    """Cut through a main bearing."""
    bore, seat, low = s("cylinder.bore"), s("crankcase.seat_height"), to_cam(s)
    housing, wall, journal = (
        s("crankcase.main_housing") / 2,
        s("crankcase.main_shell_wall"),
        s("crank.main_journal") / 2,
    )
    cam, turn = s("crankcase.cam_bore") / 2, lean(s)
    x = s("lifter.reach") + 0.02 * bore
    y = -low + x * math.tan(turn)
    return View(
        "case",
        "Crankcase, cut through a main bearing",
        through_a_main(s),
        (
            *_bearing_places(housing, wall, journal),
            Place(
                "crankcase.seat_height",
                "Crank to\nseat",
                (0, 0.74 * bore),
                (seat, 0.74 * bore),
                edges=(0.74 * bore, 0.66 * bore),
            ),
            Place(
                "torque.case_nut",
                "Case nut,\ntorque",
                (0.72 * seat * 0.8 + 0.05 * bore, -housing - 0.16 * bore),
            ),
            Place("saddles", "Joint and\nsaddles", (0, 0.5 * (housing + room(s)))),
            Place("seats", "Cylinder\nseats", (-0.98 * seat, -0.2 * bore)),
            Place("lifter", "Lifter\nbores", (x, y)),
            Place("cam", "Cam\nbearing", (cam * 0.7, -low - cam * 0.7)),
            Place("crankcase.alloy", "Alloy", (-0.75 * seat, 0.62 * bore)),
            Place("crankcase.running_temperature", "Case,\nrunning", (-0.8 * seat, -0.66 * bore)),
            Place("crankcase.idle_oil_pressure", "Oil, idling\npressure", (0.16 * bore, -low - 0.56 * bore)),
            Place("crankcase.pump_idle_flow", "Pump,\nidling", (0.3 * bore, -low - 0.6 * bore)),
            Place("crankcase.oil_temperature", "Oil,\nrunning", (-0.2 * bore, -low - 0.6 * bore)),
        ),
        (
            centre((-1.06 * seat, 0), (1.06 * seat, 0)),
            centre((0, room(s) + 0.16 * bore), (0, foot(s) - 0.06 * bore)),
            Line(((-0.59 * seat, -low - 0.48 * bore), (0.59 * seat, -low - 0.48 * bore)), "thin"),
        ),
    )
