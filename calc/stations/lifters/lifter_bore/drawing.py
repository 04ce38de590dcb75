"""The body with its unit, drawn."""

from calc.core.drawing import Area, Dimension, Drawing, Label, Line, box
from calc.core.result import say
from calc.core.working import Number
from calc.stations.lifters.lifter_bore.asked import In
from calc.stations.shared.drawings import on_both_sides


def section(i: In, wall: Number) -> Drawing:
    """Body with unit and plunger, cut through the axis, cam's end below."""
    o, d, u, inside, p = (float(x) / 2 for x in (i.body, i.bore, i.unit_outside, i.plunger_bore, i.plunger))
    u = min(u, d)
    inside, p = min(inside, 0.97 * u), min(p, 0.97 * u, inside)
    H, foot, bottom = 2.6 * o, 0.35 * o, 0.25 * u
    return Drawing(
        "Body with its plunger unit",
        say(
            "Section of a body of {o} with a bore of {d}, a unit of {u} in it and a plunger of {p}; {w} of"
            " wall is left.",
            o=i.body,
            d=i.bore,
            u=i.unit_outside,
            p=i.plunger,
            w=wall,
        ),
        (
            *on_both_sides((box(d, foot, o, H), "a"), (box(inside, foot + bottom, u, 0.9 * H), "b")),
            Area(box(-o, 0, o, foot), "a"),
            Area(box(-u, foot, u, foot + bottom), "b"),
            Area(box(-p, 0.4 * H, p, 0.86 * H), "c"),
            Line(((0, -0.3 * o), (0, H + 0.3 * o)), "centre"),
            Dimension((-d, H), (d, H), i.bore, 0.35 * o, "D"),
            Dimension((-o, H), (o, H), i.body, 0.85 * o, "D_o"),
            Dimension((-p, 0), (p, 0), i.plunger, -0.4 * o, "D_p"),
            Dimension((-u, 0), (u, 0), i.unit_outside, -0.9 * o, "D_u"),
            Label((1.2 * o, 0.5 * H), say("w {w}", w=wall), "start", ((d + o) / 2, 0.5 * H)),
        ),
    )
