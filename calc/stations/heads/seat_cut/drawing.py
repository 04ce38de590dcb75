"""The valve on its new seat, and one side of it, larger."""

import math

from calc.core.drawing import Area, Dimension, Drawing, Label, Line, clip
from calc.core.result import say
from calc.core.working import Number
from calc.stations.heads.seat_cut.asked import In
from calc.stations.heads.seat_cut.section import Section
from calc.stations.shared.drawings import Points


def valve_on_seat(s: Section, outer: Number, inner: Number) -> Drawing:
    """Both sides, with the diameters to cut to."""

    def both(points: Points) -> tuple[Points, Points]:
        return points, tuple((-x, y) for x, y in points)

    right, left = both(s.valve_half())
    top = max(s.margin - s.valve_depth, 0)
    return Drawing(
        "Valve on its seat",
        say(
            "Section through head, ring and valve: the contact band reaches from {i} to {o} across.",
            i=inner,
            o=outer,
        ),
        (
            *(Area(p, "a") for p in both(s.head_half(s.ring * 0.09))),
            *(Area(p, "b") for p in both(s.ring_half())),
            Area((*right, *left[::-1]), ""),
            *(Line(p, "band") for p in both(s.band)),
            Line(((0, top + s.height * 0.3), (0, right[-1][1] - s.height * 0.3)), "centre"),
            Dimension(
                (-s.outer / 2, -s.depth),
                (s.outer / 2, -s.depth),
                outer,
                top + s.depth + s.height * 0.5,
                "D_o",
            ),
            Dimension(
                (-s.inner / 2, -s.inner_depth),
                (s.inner / 2, -s.inner_depth),
                inner,
                right[-1][1] * 0.9 + s.inner_depth,
                "D_i",
            ),
        ),
    )


def three_cuts(s: Section, i: In, room_inside: Number) -> Drawing:
    """One side, larger, with the place of the band on the valve's face and the three angles."""
    margin = 0.04 * s.ring
    left, right = min(s.valve_inner, s.bore, s.inner) / 2 - margin, s.ring / 2 + margin / 2
    deep = min(s.height, s.inner_depth + (s.inner - s.bore) / 2 * math.tan(s.throat_angle) + margin / 2)
    top = max(s.margin - s.valve_depth, 0) + margin / 4
    edge = (s.valve / 2, -s.valve_depth)
    low = (s.valve_inner / 2, -s.valve_depth - (s.valve - s.valve_inner) / 2 * math.tan(s.valve_angle))
    window = left, -deep, right, top
    near, far = 0.35 * margin, 0.85 * margin
    return Drawing(
        "The three cuts, one side",
        say(
            "Upper, seat and throat cut in section; the band of {w} begins {e} in from the valve's edge,"
            " {i} of the valve's face are left inside it.",
            w=i.band_width,
            e=i.from_edge,
            i=room_inside,
        ),
        (
            Area(clip(s.head_half(margin), *window), "a"),
            Area(clip(s.ring_half(), *window), "b"),
            Area(clip(s.valve_half(), *window), ""),
            Line(s.band, "band"),
            Dimension(s.band[0], s.band[1], i.band_width, near, "w"),
            *((Dimension(s.band[1], edge, i.from_edge, far, "e_o"),) if i.from_edge > 0 else ()),
            *((Dimension(low, s.band[0], room_inside, far, "e_i"),) if room_inside > 0 else ()),
            *(
                Label(at, angle, "start")
                for at, angle in zip(s.beside_cuts(margin), (i.upper_angle, i.seat_angle, i.throat_angle))
            ),
        ),
    )
