"""A rod journal between its cheeks, cut along the crank; and the throws, seen from its end."""

import math

from calc.core.drawing import Area, Circle, Line, Point, Points, arc, placed
from calc.page.engine.shapes import centre, plate
from calc.page.engine.sizes import Sizes
from calc.page.engine.view import Place, Solids, View


def view(s: Sizes) -> View:
    """Its own frame: the journal's axis along x, its middle at 0."""
    r, half, fillet = s("crank.rod_journal") / 2, s("crank.rod_journal_length") / 2, s("crank.fillet")
    out = half + 0.35 * r
    deep = min(s("crank.hard_depth"), 0.5 * r)
    hole = 0.12 * r
    edge = s("crank.oil_hole_edge")
    return View(
        "journal",
        "Rod journal between its cheeks, cut",
        (
            Area(_cut(r, half, fillet, out), "a"),
            *(
                plate(
                    -half, way * r - (deep if way > 0 else 0), half, way * r + (0 if way > 0 else deep), "c"
                )
                for way in (1, -1)
            ),
            Area(
                (
                    (-hole, -r),
                    (hole, -r),
                    (hole, r - edge),
                    (hole + edge, r),
                    (-hole - edge, r),
                    (-hole, r - edge),
                ),
                "",
            ),
        ),
        (
            Place("crank.fillet", "Fillet", _in_the_corner(half, r, fillet)),
            Place("crank.journal_round", "Out of\nround", (-0.55 * half, r)),
            Place("crank.journal_roughness", "Rough-\nness, Rz", (-0.3 * half, -r)),
            Place("crank.journal_taper", "Taper", (0.72 * half, r)),
            Place("crank.hardness", "Hardness,\nRockwell C", (0.5 * half, -r)),
            Place("crank.hard_depth", "Hardened\nlayer", (0.85 * half, -r + deep / 2)),
            Place("crank.hard_left", "Layer to\nbe left", (-0.85 * half, -r + deep / 2)),
            Place("crank.oil_hole_edge", "Oil-hole\nedge", (-hole - edge / 2, r - edge / 2)),
        ),
        (centre((-out - 0.2 * r, 0), (out + 0.2 * r, 0)),),
    )


def _cut(r: float, half: float, fillet: float, out: float) -> Points:
    """Journal and both cheeks in one, the fillets in the corners."""
    high = 1.5 * r

    def corner(way: int, side: int) -> Points:
        """Along the cheek down to the journal, on one side above or below the axis."""
        points = arc((side * (half - fillet), way * (r + fillet)), fillet, 0.0, math.pi / 2, 8)
        x0, y0 = side * (half - fillet), way * (r + fillet)
        turned = tuple((x0 + side * (x - x0) * side, y0 - way * abs(y - y0)) for x, y in points)
        return tuple((x0 + side * abs(x - x0), y) for x, y in turned)

    right_top, right_low = corner(1, 1), corner(-1, 1)
    left_top, left_low = corner(1, -1), corner(-1, -1)
    return (
        (out, -high),
        (out, high),
        (half, high),
        *right_top,
        *reversed(left_top),
        (-half, high),
        (-out, high),
        (-out, -high),
        (-half, -high),
        *left_low,
        *reversed(right_low),
        (half, -high),
    )


def _in_the_corner(half: float, r: float, fillet: float) -> Point:
    off = fillet * (1 - math.sqrt(0.5))
    return half - off, r + off


def throws_view(s: Sizes) -> View:
    """From the end: two throws across from each other, and how much room the rods have."""
    r, pin, main = s("crank.throw"), s("crank.rod_journal") / 2, s("crank.main_journal") / 2
    cheek = placed(_cheek(r, pin, main))
    far = r + 1.5 * pin
    room = min(s("crank.rod_room"), pin)
    return View(
        "throws",
        "Throws, seen along the crank",
        (
            *cheek,
            *placed(cheek, turn=math.pi),
            Circle((0, 0), main, "a"),
            Circle((0, r), pin, style="hidden"),
            Circle((0, -r), pin, style="hidden"),
            Line(arc((0, 0), far + room, 0.35, math.pi - 0.35), "thin"),
        ),
        (
            Place("crank.throw", "Throw", (0, 0), (0, r)),
            Place("crank.index_error", "Out of\nits angle", (0.12 * r, -r)),
            Place("crank.rod_room", "Rods,\nroom", (-0.3 * far, 0.98 * far)),
            Place("crank.mass", "Crank,\nmass", (-0.6 * main, -0.4 * main)),
        ),
        (centre((0, -far), (0, far + room)), centre((-1.4 * main, 0), (1.4 * main, 0))),
    )


def _cheek(r: float, pin: float, main: float) -> Solids:
    """The web from the main journal up round its pin."""
    return (
        Area(
            ((-1.2 * main, 0.0), *reversed(arc((0, r), 1.3 * pin, 0.0, math.pi, 24)), (1.2 * main, 0.0)), ""
        ),
    )
