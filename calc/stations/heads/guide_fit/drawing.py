"""The guide in the head, and how far its valve rocks."""

from calc.core.drawing import Area, Dimension, Drawing, Line, box
from calc.core.result import say
from calc.stations.heads.guide_fit.asked import In
from calc.stations.heads.guide_fit.clearance import Clearance
from calc.stations.heads.guide_fit.sizes import Sizes
from calc.stations.shared.drawings import Points, on_both_sides


def section(i: In, sizes: Sizes) -> Drawing:
    """Guide in the head with its stem, cut through the axis; port below."""
    hole, outside, inside, radius = (
        float(diameter) / 2 for diameter in (sizes.hole, sizes.around, sizes.bore, i.stem)
    )
    length, edge = float(i.guide_length), hole + float(i.head_wall)
    return Drawing(
        "Guide in the head",
        say(
            "Section through head, guide and stem: hole {h}, guide outside {o}, bore {D}, stem {d}, guide {L}"
            " long.",
            h=sizes.hole,
            o=sizes.around,
            D=sizes.bore,
            d=i.stem,
            L=i.guide_length,
        ),
        (
            Area(box(-radius, -0.25 * length, radius, 1.3 * length), ""),
            *on_both_sides(
                (box(hole, 0.12 * length, edge, 0.82 * length), "a"), (box(inside, 0, hole, length), "b")
            ),
            Line(((0, -0.35 * length), (0, 1.4 * length)), "centre"),
            Dimension((-inside, length), (inside, length), sizes.bore, 0.12 * length, "D"),
            Dimension((-outside, length), (outside, length), sizes.around, 0.36 * length, "D_g"),
            Dimension((-radius, -0.25 * length), (radius, -0.25 * length), i.stem, -0.1 * length, "d"),
            Dimension((-hole, 0.12 * length), (hole, 0.12 * length), sizes.hole, -0.62 * length, "D_h"),
            Dimension((edge, 0), (edge, length), i.guide_length, -0.12 * length, "L"),
        ),
    )


def lean(i: In, stem: Clearance) -> Drawing:
    """The stem leaning to both sides in its guide: where the dial's reading comes from."""
    d, length, height = float(i.stem), float(i.guide_length), float(i.dial_height)
    wide, top = length / 10, length + height  # clearance as drawn; the dial
    times = max(1, round(wide / max(float(stem.cold), 1e-9)))
    wall, outside = (d + wide) / 2, (d + wide) / 2 + 0.12 * length
    right, left = (_axis(top, side, length, wide) + d / 2 for side in (1, -1))
    away = _leaning(d, length, top, wide, side=-1)
    dial = Dimension((-outside, length), (-outside, top), i.dial_height, 0.1 * length, "h_d")
    return Drawing(
        "How far the valve rocks",
        say(
            "A stem with {c} of clearance leans to both sides in a guide of {L}; {a} beyond its end the dial"
            " shows {r}.",
            c=stem.cold,
            L=i.guide_length,
            a=i.dial_height,
            r=stem.rocking,
        ),
        (
            *on_both_sides((box(wall, 0, outside, length), "b")),
            Area(_leaning(d, length, top, wide, side=1), ""),
            Line((*away, away[0]), "hidden"),
            Line(((0, -0.1 * length), (0, top + 0.2 * length)), "centre"),
            Dimension((left, top), (right, top), stem.rocking, 0.2 * length, "r"),
            Dimension((-outside, 0), (-outside, length), i.guide_length, 0.1 * length, "L"),
            *((dial,) if height else ()),
        ),
        say("lengths to scale, clearance drawn {n} times as wide", n=str(times)),
    )


def _axis(y: float, side: int, length: float, wide: float) -> float:
    """Where the axis of a stem that leans to a side (1 or −1) stands at a height, m."""
    return side * wide * (y / length - 0.5)


def _leaning(d: float, length: float, top: float, wide: float, side: int) -> Points:
    """Outline of the stem leaning to a side, m."""
    end = top + 0.08 * length
    return tuple(
        (_axis(y, side, length, wide) + edge * d / 2, y)
        for edge, y in ((-1, 0.0), (1, 0.0), (1, end), (-1, end))
    )
