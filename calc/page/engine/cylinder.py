"""The cylinder on its seat, with the piston at the top of its stroke. The barrel's own frame: y up from its
seat."""

from calc.core.drawing import Line, Points, placed
from calc.page.engine.piston import piston_cut
from calc.page.engine.shapes import centre, combed, halves
from calc.page.engine.sizes import Sizes
from calc.page.engine.view import Place, Solids, View


def fin_reach(s: Sizes) -> float:
    """From the axis to the fins' ends."""
    return 0.67 * s("cylinder.bore")


def spigot(s: Sizes) -> float:
    """How far the barrel goes into the case."""
    return 0.24 * s("cylinder.bore")


def register(s: Sizes) -> float:
    """Radius of the barrel where it goes into the case."""
    return max(s("cylinder.register") / 2, 0.52 * s("cylinder.bore"))


def barrel_half(s: Sizes) -> Points:
    """The cut wall right of the axis, with its fins."""
    bore, length = s("cylinder.bore"), s("cylinder.length")
    r, out = bore / 2, register(s)
    return (
        (r, -spigot(s)),
        (out, -spigot(s)),
        (out, 0),
        (0.62 * bore, 0),
        (0.62 * bore, 0.07 * bore),
        *combed(1.02 * out, fin_reach(s), 0.1 * bore, length - 0.16 * bore, 0.085 * bore),
        (1.02 * out, length - 0.12 * bore),
        (out, length - 0.12 * bore),
        (out, length),
        (r, length),
    )


def barrel(s: Sizes) -> Solids:
    return halves(barrel_half(s), "a")


def view(s: Sizes) -> View:
    bore, length, out = s("cylinder.bore"), s("cylinder.length"), register(s)
    r = bore / 2
    wide = 0.8 * bore
    hole = max(s("crankcase.spigot_bore") / 2, out)
    shim = s("cylinder.shim")
    deep = shim + s("crankcase.spigot_depth")
    case = ((out, -shim), (wide, -shim), (wide, -deep), (hole, -deep))
    crown = length - max(s("crankcase.deck_height"), 0.0)
    piston = placed(piston_cut(s), (0, crown - s("piston.compression_height")))
    ring = Line(((out, -shim / 2), (0.66 * bore, -shim / 2)), "band")
    return View(
        "cylinder",
        "Cylinder and its seat in the case, cut through the axis",
        (
            *halves(case, "b"),
            *piston,
            *barrel(s),
            ring,
            Line(((-ring.points[0][0], -shim / 2), (-0.66 * bore, -shim / 2)), "band"),
        ),
        (
            Place("cylinder.bore", "Bore", (-r, 0.12 * bore), (r, 0.12 * bore)),
            Place(
                "cylinder.length", "Length", (0.75 * bore, 0), (0.75 * bore, length), edges=(0.62 * bore, out)
            ),
            Place("stud", "Its studs", (-0.62 * bore, 0.9 * length)),
            Place("cylinder.shim", "Shim", (0.64 * bore, -shim / 2)),
            Place("cylinder.register", "Register", (-out, -0.8 * spigot(s)), (out, -0.8 * spigot(s))),
            Place("cylinder.register_clearance", "Clearance\nin the case", (-out, -0.35 * spigot(s))),
            Place(
                "crankcase.spigot_bore",
                "Hole in\nthe case",
                (-hole, -1.3 * spigot(s)),
                (hole, -1.3 * spigot(s)),
            ),
            Place("crankcase.spigot_depth", "Hole,\ndepth", (0.76 * bore, -deep), (0.76 * bore, -shim)),
            Place(
                "cylinder.foot_running_temperature",
                "Foot,\nrunning",
                (-r - 0.5 * (out - r), -0.6 * spigot(s)),
            ),
            Place("crankcase.deck_height", "Deck\nheight", (0.3 * bore, crown), (0.3 * bore, length)),
            Place("cylinder.leak_down", "Leak-down", (0.45 * bore, length)),
            Place("cylinder.leak_down_supply", "Its supply", (0.2 * bore, length)),
            Place("cylinder.leak_down_orifice", "Its orifice", (-0.48 * bore, length)),
            Place("crankcase.deck_slope", "Crown's\nslope", (-0.4 * bore, crown)),
            Place("cylinder.compression_ratio", "Ratio", (-0.2 * bore, length)),
            Place("cylinder.wall", "Wall in\nthe case", (r, -0.5 * spigot(s)), (out, -0.5 * spigot(s))),
            Place("cylinder.round", "Out of\nround", (r, 0.9 * length)),
            Place("cylinder.taper", "Taper", (-r, 0.86 * length)),
            Place("cylinder.cross_hatch", "Cross-\nhatch", (-r, 0.3 * length)),
            Place("cylinder.expansion", "Expansion", (-r - 0.5 * (out - r), 0.5 * length)),
            Place("cylinder.alloy", "Material", (-r - 0.5 * (out - r), 0.7 * length)),
            Place("cylinder.running_temperature", "Running\nheat", (r + 0.5 * (out - r), 0.55 * length)),
        ),
        (centre((0, -1.7 * spigot(s)), (0, length + 0.1 * bore)),),
    )
