"""A cylinder stud in what it clamps, cut along it: the face of its thread in the case at 0, y to the nut."""

from calc.core.drawing import Area, Line
from calc.page.engine.shapes import centre, halves, plate
from calc.page.engine.sizes import Sizes
from calc.page.engine.view import Place, Solids, View


def levels(s: Sizes) -> tuple[float, float, float]:
    """Seat of the cylinder, its face to the head, and the nut's face."""
    seat = s("crankcase.clamped_length")
    face = seat + s("cylinder.length")
    return seat, face, face + s("head.clamped_length")


def clamped(s: Sizes) -> Solids:
    seat, face, nut = levels(s)
    r = s("stud.shank") / 2
    out = s("crankcase.clamped_length") + s("stud.standing_out")
    hole, wide = 1.25 * r, 5 * r
    deep = min(out - s("stud.length"), -r)

    def ring(low: float, high: float, half: float, hatch: str) -> Solids:
        return halves(((hole, low), (half, low), (half, high), (hole, high)), hatch)

    return (
        *ring(deep - 2 * r, seat, 1.3 * wide, "a"),
        plate(-hole, deep - 2 * r, hole, deep, "a"),
        *ring(seat, face, 0.8 * wide, "b"),
        *ring(face, nut, wide, "a"),
        Area(((-r, deep), (r, deep), (r, out), (-r, out)), ""),
        plate(-2 * r, nut, 2 * r, nut + 2 * r),
    )


def view(s: Sizes) -> View:
    seat, face, nut = levels(s)
    r, out, thread = s("stud.shank") / 2, seat + s("stud.standing_out"), s("stud.free_thread")
    wide, deep = 5 * r, seat + s("stud.standing_out") - s("stud.length")
    middle = (seat + face) / 2
    left, far = -1.7 * wide, -2.3 * wide
    return View(
        "stud",
        "Cylinder stud and what it clamps, cut",
        clamped(s),
        (
            Place("stud.length", "Stud,\nlength", (far, deep), (far, out), edges=(-r, -r)),
            Place("stud.standing_out", "Standing\nout", (left, seat), (left, out), edges=(-1.3 * wide, -r)),
            Place("stud.shank", "Shank", (-r, middle), (r, middle)),
            Place(
                "stud.free_thread",
                "Free\nthread",
                (1.3 * wide, nut - thread),
                (1.3 * wide, nut),
                edges=(r, r),
            ),
            Place(
                "head.clamped_length",
                "Head,\nclamped",
                (1.9 * wide, face),
                (1.9 * wide, nut),
                edges=(wide, wide),
            ),
            Place(
                "crankcase.clamped_length",
                "Case,\nclamped",
                (1.7 * wide, 0),
                (1.7 * wide, seat),
                edges=(r, 1.3 * wide),
            ),
            Place("cylinder.clamped_section", "Cylinder,\nsection", (0.5 * wide, 0.8 * middle)),
            Place("head.clamped_section", "Head,\nsection", (0.6 * wide, face + 0.3 * (nut - face))),
            Place("crankcase.clamped_section", "Case,\nsection", (0.9 * wide, 0.5 * seat)),
            Place("stud.gas_load", "Gas pulls", (r, out)),
            Place("stud.alloy", "Material", (0, 1.4 * middle)),
            Place("stud.running_temperature", "Stud,\nrunning", (0, 1.2 * middle)),
            Place("stud.warming_temperature", "Stud,\nfirst hot", (0, 0.7 * middle)),
        ),
        (
            centre((0, deep - 3 * r), (0, out + 2 * r)),
            Line(((-r, nut - thread), (r, nut - thread)), "thin"),
            Line(((-r, 0), (r, 0)), "thin"),
        ),
    )
