"""The bore cut along its axis, its lifter in it, the gap drawn wide."""

from calc.core.drawing import Area, Circle, Dimension, Drawing, Line
from calc.core.result import say
from calc.stations.crankcase.lifter_gallery.asked import In
from calc.stations.crankcase.lifter_gallery.leak import Leak
from calc.stations.shared.drawings import on_both_sides

WIDE = 60  # times: how much wider than it is the gap is drawn


def section(i: In, found: Leak) -> Drawing:
    """Cam's end below, pushrod's end above, the gallery's hole at height 0."""
    r, down, up = float(i.lifter) / 2, float(i.cam_length), float(i.tube_length)
    gaps = [WIDE * (float(bore) - float(i.lifter)) / 2 for bore in (i.cam_end, i.gallery, i.tube_end)]
    wall = r + max(gaps) + 0.6 * r
    bore = ((r + gaps[0], -down), (r + gaps[1], 0.0), (r + gaps[2], up))
    return Drawing(
        "Lifter bore, cut",
        say(
            "Bore of {g} at the gallery, {a} at the cam's end below and {b} at the pushrod's end above,"
            " round a lifter"
            " of {d}.",
            g=i.gallery,
            a=i.cam_end,
            b=i.tube_end,
            d=i.lifter,
        ),
        (
            *on_both_sides(((*bore, (wall, up), (wall, -down)), "a")),
            Circle((r + gaps[1] + 0.25 * r, 0.0), 0.16 * r),
            Area(((-r, -1.2 * down), (r, -1.2 * down), (r, 0.85 * up), (-r, 0.85 * up)), "b"),
            Line(((0, -1.4 * down), (0, 1.2 * up)), "centre"),
            Dimension((-r, -1.2 * down), (r, -1.2 * down), i.lifter, -0.4 * r, "d"),
            Dimension((wall, -down), (wall, 0), i.cam_length, -0.5 * r, "L_i"),
            Dimension((wall, 0), (wall, up), i.tube_length, -0.5 * r, "L_o"),
        ),
        f"the gap drawn {WIDE} times wider",
    )
