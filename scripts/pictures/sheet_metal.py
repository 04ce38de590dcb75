"""Nuts in thin sheet, and fins: what the air and the hole decide."""

from __future__ import annotations

from calc.core.drawing import Area, Drawing
from scripts.pictures.pen import (
    Shapes,
    arrow,
    both_sides,
    centre,
    note,
    placed,
    rect,
    right,
    sketch,
    turning,
    words,
    wrong,
)
from scripts.pictures.sheet import Sheet


def rivet_nut(sheet: Sheet) -> Drawing:
    """A rivet nut drawn tight in its hole, and one in a hole that is too large."""

    def nut(bulge: float, low: float) -> Shapes:
        """The nut cut: its flange on the sheet, its upset below, that wide and that low."""
        return both_sides(
            (16, 8),
            (34, 8),
            (34, 2),
            (24, 0),
            (24, -10),
            (24 + bulge, low),
            (24, low - 10),
            (24, -64),
            (14, -64),
            (14, low - 14),
            (19, low - 6),
            (19, 0),
            hatch="b",
        )

    def sheet_(hole: float) -> Shapes:
        return both_sides((hole, 0), (78, 0), (78, -10), (hole, -10))

    return sketch(
        "The upset holds: tight on the sheet, in a hole that the body fills",
        "A rivet nut in sheet metal, cut, twice. Right: the body fills the hole, and the upset below bears"
        " tight on the sheet all round. Wrong: the hole is too large, the upset stands off the sheet, and"
        " the nut turns with the screw.",
        placed((sheet_(24), nut(14, -15), centre((0, -72), (0, 20))), 90, 136),
        note(16, 94, (60, 122), "upset"),
        right(8, 42, "fills its hole,", "upset is tight"),
        placed((sheet_(33), nut(7, -26), centre((0, -72), (0, 20))), 268, 136),
        turning((268, 156), 24, 150, 30),
        wrong(188, 42, "hole too large,", "the nut spins"),
    )


def collar_side(sheet: Sheet) -> Drawing:
    """A collar drawn up from the sheet, tapped from the side that it was pierced from."""

    def collar(high: float) -> Shapes:
        return both_sides((18, 0), (22, -3), (22, -high), (30, -high), (32, -14), (40, -9), (78, -9), (78, 0))

    tap = (
        rect(-9, 44, 9, 66),
        Area(((-14, 44), (14, 44), (16, -6), (6, -22), (-6, -22), (-16, -6)), "c"),
        centre((0, -40), (0, 76)),
    )
    return sketch(
        "Pierce, draw the collar up, and tap it from the side that it was pierced from",
        "Sheet metal with a drawn collar, cut, twice. Left: the pilot hole is pierced and the collar drawn"
        " down by a punch from above. Right: the tap comes from the same side, from above.",
        placed(
            (
                collar(36),
                Area(((-18, 56), (18, 56), (18, -14), (8, -34), (-8, -34), (-18, -14)), ""),
                centre((0, -44), (0, 76)),
                arrow((34, 52), (34, 20)),
            ),
            90,
            116,
        ),
        words(12, 40, "1 the punch draws", "the collar"),
        placed((collar(36), *tap, arrow((34, 52), (34, 20)), turning((0, 60), 22, 330, 210)), 268, 116),
        words(190, 40, "2 the tap comes from", "the same side"),
    )


def fins_measured(sheet: Sheet) -> Drawing:
    """Thickness and gap half way up, length from root to tip, and the baffle close to the tips."""

    def casting() -> Shapes:
        fins = []
        for n in range(4):
            x = 24 + n * 44
            fins += [(x - 8, 20), (x - 5, 110), (x + 5, 110), (x + 8, 20)]
        return (Area(((0, 0), (0, 20), *fins, (180, 20), (180, 0)), "a"),)

    def inward(a: tuple[float, float], b: tuple[float, float]) -> Shapes:
        """Two arrows from outside onto a thickness."""
        return (*arrow((a[0] - 18, a[1]), (a[0] - 4, a[1])), *arrow((b[0] + 18, b[1]), (b[0] + 4, b[1])))

    return sketch(
        "Cast fins taper: read thickness and gap half way up",
        "Four fins of a casting, cut. Arrows mark 1 the thickness of a fin half way up, 2 the gap between two"
        " fins half way up, 3 the length from root to tip. A baffle lies above the tips, close to them.",
        placed(
            (
                casting(),
                rect(-6, 116, 186, 120, "solid"),
                inward((17.5, 65), (30.5, 65)),
                arrow((77, 65), (103, 65), double=True),
                arrow((178, 26), (178, 106), double=True),
            ),
            20,
            40,
        ),
        words(20, 20, "1 thickness"),
        words(126, 20, "2 gap", anchor="middle"),
        note(222, 108, (198, 106), "3 length,", "root to tip"),
        note(222, 168, (196, 158), "baffle"),
    )
