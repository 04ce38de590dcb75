"""The flywheel on the crank's flange, and its rim with the ring gear. Their own frame: the crank's axis
along x,
the flange's face at 0."""

from calc.core.drawing import Points
from calc.page.engine.shapes import centre, plate
from calc.page.engine.sizes import Sizes
from calc.page.engine.view import Area, Line, Place, Solids, View


def radius(s: Sizes) -> float:
    return s("flywheel.outside") / 2


def _shoulder(s: Sizes) -> float:
    """Radius of the rim beside the ring gear, which sits against it."""
    return 0.35 * s("flywheel.gear_seat") / 2 + 0.65 * s("flywheel.gear_root") / 2


def _recess(s: Sizes) -> float:
    """Radius from which the cover's face stands over the friction face."""
    return s("flywheel.lining_outside") / 2 + 0.02 * s("flywheel.outside")


def _half(s: Sizes) -> Points:
    face, root = s("flywheel.face_thickness"), s("flywheel.root_thickness")
    seat, gear, wide = s("flywheel.gear_seat") / 2, s("flywheel.gear_width"), face + s("flywheel.step")
    inner = s("flywheel.lining_inside") / 2 - 0.02 * s("flywheel.outside")
    return (
        (0, s("flywheel.register") / 2),
        (0, seat),
        (gear, seat),
        (gear, _shoulder(s)),
        (wide, _shoulder(s)),
        (wide, _recess(s)),
        (face, _recess(s)),
        (face, inner),
        (root, inner),
        (root, s("flywheel.register") / 2),
    )


def _gear(s: Sizes) -> Points:
    seat, wide = s("flywheel.gear_seat") / 2, s("flywheel.gear_width")
    chamfer = 0.5 * (radius(s) - s("flywheel.gear_root") / 2)
    return ((0, seat), (wide, seat), (wide, radius(s)), (chamfer, radius(s)), (0, radius(s) - chamfer))


def flywheel(s: Sizes) -> Solids:
    """Cut through its axis; the bolt that holds it."""
    bore, root, boss = s("cylinder.bore"), s("flywheel.root_thickness"), s("flywheel.register") / 2
    return (
        *(Area(tuple((x, way * y) for x, y in _half(s)), "a") for way in (1, -1)),
        *(Area(tuple((x, way * y) for x, y in _gear(s)), "b") for way in (1, -1)),
        plate(-0.1 * bore, -boss, 0.8 * root, boss),
        plate(root, -0.25 * bore, root + 0.12 * bore, 0.25 * bore),
        plate(-0.1 * bore, -0.12 * bore, root, 0.12 * bore),
    )


def view(s: Sizes) -> View:
    bore, r = s("cylinder.bore"), radius(s)
    journal, boss = 1.3 * s("crank.main_journal") / 2, s("flywheel.register") / 2
    face, root, step = s("flywheel.face_thickness"), s("flywheel.root_thickness"), s("flywheel.step")
    outer, inner = s("flywheel.lining_outside") / 2, s("flywheel.lining_inside") / 2
    return View(
        "flywheel",
        "Flywheel on the crank, cut",
        (plate(-0.35 * bore, -journal, 0, journal), *flywheel(s)),
        (
            Place("flywheel.mass", "Mass", (0.5 * face, -0.55 * r)),
            Place("flywheel.inertia", "Moment of\ninertia", (0.5 * face, -0.75 * r)),
            Place("flywheel.alloy", "Material", (0.4 * face, -0.65 * r)),
            Place("flywheel.top_speed", "Maker\u2019s\nspeed", (0.3 * face, -0.88 * r)),
            Place("flywheel.runout", "Face,\nrunout", (face, -0.6 * r)),
            Place("flywheel.balance_grade", "Balance,\ngrade", (0.5 * face, 0.78 * r)),
            Place("flywheel.register", "Register", (0.2 * root, -boss), (0.2 * root, boss)),
            Place("flywheel.face_thickness", "Behind the\nface", (0, 0.6 * r), (face, 0.6 * r)),
            Place("flywheel.root_thickness", "At the\nroot", (0, 0.32 * r), (root, 0.32 * r)),
            Place("flywheel.step", "Clutch\nstep", (face, 0.87 * r), (face + step, 0.87 * r)),
            Place("flywheel.clamp_load", "Clamp\nload", (face, 0.68 * r)),
            Place("flywheel.lining_outside", "Lining,\noutside", (face, outer)),
            Place("flywheel.lining_inside", "Lining,\ninside", (face, inner)),
            Place("ring-gear", "Ring gear", (0.5 * s("flywheel.gear_width"), 0.97 * r)),
            Place("crank.top_speed", "Highest\nspeed", (-0.35 * bore, 0.3 * journal)),
            Place("crank.idle_speed", "Idling\nspeed", (-0.35 * bore, -0.3 * journal)),
        ),
        (centre((-0.45 * bore, 0), (0.42 * bore, 0)),),
    )


def gear_view(s: Sizes) -> View:
    """The rim, cut above the axis, from the friction face outwards."""
    r, wide, low = radius(s), s("flywheel.gear_width"), 0.82 * radius(s)
    seat, root = s("flywheel.gear_seat") / 2, s("flywheel.gear_root") / 2
    rim = tuple((x, max(y, low)) for x, y in _half(s))
    middle = (seat + root) / 2
    return View(
        "ring-gear",
        "Ring gear on the flywheel's rim, cut",
        (Area(rim, "a"), Area(_gear(s), "b"), Line(((0, root), (wide, root)), "hidden")),
        (
            Place("flywheel.gear_seat", "Seat", (0.85 * wide, seat)),
            Place("flywheel.gear_bore", "Bore", (0.15 * wide, seat)),
            Place("flywheel.gear_interference", "Inter-\nference", (0.5 * wide, seat)),
            Place("flywheel.gear_root", "Under the\nteeth", (0.7 * wide, root)),
            Place("flywheel.gear_width", "Width", (0, 0.4 * root + 0.6 * r), (wide, 0.4 * root + 0.6 * r)),
            Place("flywheel.outside", "Over the\nteeth", (0.75 * wide, r)),
            Place("flywheel.gear_alloy", "Material", (0.25 * wide, middle)),
            Place("flywheel.gear_heat", "Hottest\nfor fitting", (0.4 * wide, middle)),
        ),
    )
