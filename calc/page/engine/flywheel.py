"""The flywheel on the crank's flange. Its own frame: the crank's axis along x, the flange's face at 0."""

from calc.core.drawing import Points
from calc.page.engine.shapes import centre, plate
from calc.page.engine.sizes import Sizes
from calc.page.engine.view import Area, Place, Solids, View


def radius(s: Sizes) -> float:
    """As heavy as the sheet says: an iron disc of the width drawn has about this radius."""
    return 1.5 * s("cylinder.bore")


def _half(s: Sizes) -> Points:
    bore, r = s("cylinder.bore"), radius(s)
    hub, wide = 1.3 * s("crank.main_journal") / 2, 0.32 * bore
    return (
        (0, 0.12 * bore),
        (0, hub * 1.15),
        (0.04 * bore, hub * 1.3),
        (0.04 * bore, 0.93 * r),
        (0, 0.93 * r),
        (0, r),
        (0.14 * bore, r),
        (0.14 * bore, 0.95 * r),
        (wide, 0.95 * r),
        (wide, 0.62 * r),
        (0.17 * bore, 0.58 * r),
        (0.15 * bore, 0.12 * bore),
    )


def flywheel(s: Sizes) -> Solids:
    """Cut through its axis; the bolt that holds it."""
    up, bore = _half(s), s("cylinder.bore")
    return (
        Area(up, "a"),
        Area(tuple((x, -y) for x, y in up), "a"),
        plate(0.15 * bore, -0.22 * bore, 0.3 * bore, 0.22 * bore),
        plate(-0.1 * bore, -0.12 * bore, 0.15 * bore, 0.12 * bore),
    )


def view(s: Sizes) -> View:
    bore, r = s("cylinder.bore"), radius(s)
    wide, journal = 0.32 * bore, 1.3 * s("crank.main_journal") / 2
    return View(
        "flywheel",
        "Flywheel on the crank, cut",
        (plate(-0.35 * bore, -journal, 0, journal), *flywheel(s)),
        (
            Place("flywheel.mass", "Mass", (0.09 * bore, -0.75 * r)),
            Place("flywheel.runout", "Face,\nrunout", (wide, 0.8 * r)),
            Place("crank.top_speed", "Highest\nspeed", (-0.35 * bore, 0.3 * journal)),
            Place("crank.idle_speed", "Idling\nspeed", (-0.35 * bore, -0.3 * journal)),
        ),
        (centre((-0.45 * bore, 0), (0.42 * bore, 0)),),
    )
