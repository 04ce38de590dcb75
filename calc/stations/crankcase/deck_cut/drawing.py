"""The seat before and after the cut, and the deck that is left over the piston."""

from calc.core.drawing import Area, Dimension, Drawing, Label, Line, box
from calc.core.result import say
from calc.core.working import Number
from calc.stations.crankcase.deck_cut.asked import In
from calc.stations.shared.drawings import on_both_sides


def section(i: In, deck: Number) -> Drawing:
    """The cylinder on its seat, cut through its axis, with what was cut and what is left drawn larger."""
    r, cut, shim, left = (float(x) for x in (i.bore / 2, i.cut, i.shim_more, deck))
    thickest = max(cut, abs(shim), abs(left), 1e-6)
    times = max(1, min(int(0.22 * r / thickest), 1000))
    c, s, t = cut * times, max(shim, 0.0) * times, left * times
    wall, tall = 0.12 * r, 1.5 * r
    top = s + tall
    return Drawing(
        "The cylinder on its seat",
        say(
            "Cylinder on the case's seat, from which {c} came off, shown hidden; its piston at the top, {t}"
            " below the sealing face.",
            c=i.cut,
            t=deck,
        ),
        (
            *on_both_sides((box(1.02 * r, -0.5 * r, 1.6 * r, 0), "b"), (box(r, s, r + wall, top), "a")),
            *on_both_sides((box(r + wall, s, r + 2.6 * wall, s + 0.8 * wall), "a")),
            *((on_both_sides((box(r, 0, 1.3 * r, s), "solid"))) if s > 0 else ()),
            Area(box(-0.98 * r, top - t - 0.7 * r, 0.98 * r, top - t), "c"),
            Line(((-1.6 * r, c), (-1.02 * r, c)), "hidden"),
            Line(((1.02 * r, c), (1.6 * r, c)), "hidden"),
            Line(((0, -0.6 * r), (0, top + 0.25 * r)), "centre"),
            Dimension((-0.5 * r, top - t), (-0.5 * r, top), deck, 0.0, "t'"),
            Label((0.0, -0.8 * r), say("{c} off each seat", c=i.cut), target=(1.3 * r, c / 2)),
        ),
        say("cut, shim and deck drawn {n} times as thick", n=str(times)),
    )
