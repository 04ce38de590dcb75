"""The valve spring: by itself, and on its bed with retainer and stem."""

from calc.core.drawing import Area, coils
from calc.page.engine.shapes import centre, plate, turned
from calc.page.engine.sizes import Sizes
from calc.page.engine.view import Place, Solid, Solids, View


def on_its_bed(s: Sizes, bed: float, *within: Solid) -> Solids:
    """The spring at its fitted height, what stands in it, and its retainer."""
    wire, wide, high = s("spring.wire"), s("spring.mean_diameter"), s("spring.installed_height")
    shim, top = s("spring.shim"), bed + high
    r = (wide + wire) / 2
    retainer = turned(
        (
            (0.2 * r, top - 0.16 * r),
            (0.5 * r, top - 0.16 * r),
            (0.55 * r, top),
            (1.04 * r, top),
            (1.04 * r, top + 0.1 * r),
            (0.6 * r, top + 0.16 * r),
            (0.2 * r, top + 0.16 * r),
        )
    )
    return (
        *coils(0, bed + shim, high - shim, wire, wide, s("spring.active_turns"), s("spring.total_turns")),
        *within,
        plate(-1.02 * r, bed, -0.45 * r, bed + max(shim, 0.02 * r), "solid"),
        plate(0.45 * r, bed, 1.02 * r, bed + max(shim, 0.02 * r), "solid"),
        Area(retainer[:7], "c"),
        Area(retainer[7:], "c"),
    )


def view(s: Sizes) -> View:
    """By itself, at its free length."""
    wire, wide, free = s("spring.wire"), s("spring.mean_diameter"), s("spring.free_length")
    r = wide / 2
    out = r + wire / 2
    return View(
        "spring",
        "Valve spring by itself, cut",
        coils(0, 0, free, wire, wide, s("spring.active_turns"), s("spring.total_turns")),
        (
            Place("spring.free_length", "Free\nlength", (out * 1.2, 0), (out * 1.2, free), edges=(r, out)),
            Place(
                "spring.mean_diameter",
                "Mean\ndiameter",
                (-r, -0.6 * wire),
                (r, -0.6 * wire),
                edges=(wire / 2, wire / 2),
            ),
            Place("spring.wire", "Wire", (-r, wire / 2)),
            Place("spring.active_turns", "Turns\nthat move", (r, free / 2)),
            Place("spring.total_turns", "All turns", (-r * 0.3, free - 0.3 * wire)),
        ),
        (centre((0, -wire), (0, free + wire)),),
    )


def stem_view(s: Sizes) -> View:
    """Spring, retainer and stem tip over the spring's bed: how high the stem stands, how far the spring is
    pressed."""
    wire, wide, high = s("spring.wire"), s("spring.mean_diameter"), s("spring.installed_height")
    tip, stem, lift = s("head.stem_height"), s("valve.stem_intake") / 2, s("valve.lift")
    out, hole = (wide + wire) / 2, s("guide.outside") / 2
    deep = 0.35 * out
    side = 1.5 * out
    bed = (plate(-side, -deep, -hole, 0, "b"), plate(hole, -deep, side, 0, "b"))
    guide = (plate(-hole, -deep, -stem, 0.25 * out, "c"), plate(stem, -deep, hole, 0.25 * out, "c"))
    valve = plate(-stem, -deep, stem, tip)
    open_ = high - lift
    return View(
        "stem",
        "Stem tip and spring over the spring's bed",
        (*bed, *guide, *on_its_bed(s, 0.0, valve)),
        (
            Place(
                "head.stem_height",
                "Stem\nheight",
                (-1.65 * out, 0),
                (-1.65 * out, tip),
                edges=(-1.5 * out, -stem),
            ),
            Place("head.stem_rise", "Rise since\nnew", (-0.5 * stem, tip)),
            Place(
                "valve.tip_to_retainer",
                "Tip over\nretainer",
                (-1.2 * out, high),
                (-1.2 * out, tip),
                edges=(-1.04 * out, -stem),
            ),
            Place("valve.lift", "Valve\nlift", (0.5 * stem, tip)),
            Place(
                "spring.installed_height",
                "Fitted\nheight",
                (1.45 * out, 0),
                (1.45 * out, high),
                edges=(1.45 * out, 1.04 * out),
            ),
            Place("spring.open_height", "Height at\nfull lift", (1.25 * out, 0), (1.25 * out, open_)),
            Place("spring.mass", "Spring,\nmass", (-0.9 * wide / 2, 0.6 * high)),
            Place("spring.retainer_mass", "Retainer,\nmass", (0.5 * out, high + 0.1 * out)),
            Place("spring.shim", "Shim", (-0.95 * out, 0.5 * s("spring.shim"))),
            Place("spring.seat_load", "Load,\nfitted", (0.95 * out, high + 0.04 * out)),
            Place("spring.open_load", "Load at\nfull lift", (1.02 * wide / 2, 0.42 * high)),
            Place("spring.most_seat_load", "Most load,\nshut", (-0.75 * out, high + 0.08 * out)),
            Place("spring", "Spring\nby itself", (-wide / 2, 0.4 * high)),
        ),
        (centre((0, -1.2 * deep), (0, tip + 0.15 * out)),),
    )
