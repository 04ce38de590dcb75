"""The rim and its ring gear, cut, to scale; above it how much the gear is opened by heat, drawn larger."""

from calc.core.drawing import Area, Dimension, Drawing, Label, Line, Points
from calc.core.result import say
from calc.stations.flywheel.ring_gear_shrink.asked import PINION, In
from calc.stations.flywheel.ring_gear_shrink.joint import Joint


def rim(i: In, joint: Joint) -> Drawing:
    """Engine's side left. The ring gear lies on its seat; its chamfer is on the side that was told."""
    seat, root, top, wide = (float(x) for x in (i.seat / 2, i.root / 2, i.outside / 2, i.width))
    deep = 0.35 * (top - seat) + 1e-4
    low, chamfer = seat - 1.6 * (top - seat) - 2e-3, 0.6 * (top - root)
    teeth: Points = ((0, seat), (wide, seat), (wide, top), (chamfer, top), (0, top - chamfer))
    if i.chamfer != PINION:
        teeth = tuple((wide - x, y) for x, y in teeth)
    body: Points = ((0, low), (2.2 * wide, low), (2.2 * wide, seat + deep))
    return Drawing(
        "Ring gear on its seat",
        say(
            "The rim of the flywheel, cut, with its ring gear of {b}. The pinion comes from the left;"
            " the teeth are"
            " chamfered on the {side} side.",
            b=i.width,
            side="left" if i.chamfer == PINION else "right",
        ),
        (
            Area((*body, (wide, seat + deep), (wide, seat), (0, seat)), "a"),
            Area(teeth, "b"),
            Line(((0, root), (wide, root)), "hidden"),
            Dimension((0, top), (wide, top), i.width, 0.35 * wide, "b"),
            Label((-0.15 * wide, (root + top) / 2), "pinion", "end", target=(0, (root + top) / 2)),
            Label((1.1 * wide, top), say("{t}", t=joint.heat), "start"),
        ),
    )
