"""Hole and insert cut through the axis, the nearest edge to the right."""

from typing import NamedTuple

from calc.core.drawing import Area, Dimension, Drawing, Label, Line
from calc.core.result import say
from calc.stations.threads.insert_install.asked import BLIND, In
from calc.stations.threads.insert_install.depths import Depths
from calc.stations.threads.insert_install.hole import Hole


class Cut(NamedTuple):
    """Where the cut's lines lie: radii of hole, tapped thread and stud, depths under the face, and the ends
    of the metal that is shown, left and right of the axis. A far edge is drawn broken off: nothing happens
    there."""

    r: float
    R: float
    stud: float
    top: float
    bottom: float
    tapped: float
    drilled: float
    tip: float  # of the drill's point
    metal: float
    left: float
    right: float
    blind: bool


def section(i: In, hole: Hole, depths: Depths) -> Drawing:
    cut = _cut(i, hole, depths)
    return Drawing(
        "Insert in its hole",
        say(
            "Section: hole drilled {d} and {td} deep, tapped to {t}; an insert of {L} stands {s} under the"
            " face, {e} from the edge, in {m} of metal.",
            d=hole.drill,
            s=depths.setting,
            L=depths.body,
            t=depths.tapped,
            td=depths.drilled,
            m=i.metal,
            e=i.edge,
        ),
        (
            *_parent(cut),
            *_insert(cut),
            Line(((0, _high(cut)), (0, -cut.metal - _high(cut) * 0.5)), "centre"),
            *_sizes(cut, i, hole, depths),
        ),
    )


def _cut(i: In, hole: Hole, depths: Depths) -> Cut:
    major, edge, drill = float(hole.major), float(i.edge), float(hole.drill)
    drilled, setting = float(depths.drilled), float(depths.setting)
    return Cut(
        drill / 2,
        major / 2,
        float(hole.nominal) / 2,
        -setting,
        -setting - float(depths.body),
        float(depths.tapped),
        drilled,
        drilled + drill / 2 / 1.6643,  # tan 59°
        float(i.metal),
        -max(1.3 * major, min(edge, 2 * major)),
        min(edge, 3 * major),
        i.way == BLIND,
    )


def _parent(cut: Cut) -> tuple[Area, ...]:
    """The metal round the hole: in one where both halves meet under the drill's point."""
    if not cut.blind or cut.tip > cut.metal:
        return _half(cut, cut.left), _half(cut, cut.right)
    outline = (
        (-cut.r, 0),
        (cut.left, 0),
        (cut.left, -cut.metal),
        (cut.right, -cut.metal),
        (cut.right, 0),
        (cut.r, 0),
        (cut.r, -cut.drilled),
        (0, -cut.tip),
        (-cut.r, -cut.drilled),
    )
    return (Area(outline, "a"),)


def _half(cut: Cut, end: float) -> Area:
    """The metal on one side, out to that end; the point's cone where it breaks through."""
    r = -cut.r if end < 0 else cut.r
    foot: tuple = ((r, -cut.metal),)
    if cut.blind and cut.drilled < cut.metal:
        point = cut.tip - cut.drilled
        foot = ((r * (cut.tip - cut.metal) / point, -cut.metal), (r, -cut.drilled))
    return Area(((r, 0), (end, 0), (end, -cut.metal), *foot), "a")


def _insert(cut: Cut) -> list[Area | Line]:
    """The insert's wall on both sides, and the line of the tapped thread."""
    shapes: list[Area | Line] = []
    end = -min(cut.tapped, cut.metal)
    for side in (-1, 1):
        stud, R, r = side * cut.stud, side * cut.R, side * cut.r
        shapes += [
            Area(((stud, cut.top), (R, cut.top), (R, cut.bottom), (stud, cut.bottom)), "b"),
            Line(((R, 0), (R, end), (r, end)), "thin"),
        ]
    return shapes


def _sizes(cut: Cut, i: In, hole: Hole, depths: Depths) -> list[Dimension | Label]:
    high, major = _high(cut), 2 * cut.R
    if cut.right == float(i.edge):
        edge: Dimension | Label = Dimension((0, 0), (cut.right, 0), i.edge, high * 0.7, "e")
    else:
        edge = Label((cut.right, high * 0.5), say("edge at {e}", e=i.edge), "end")
    deep = (
        [
            Dimension((cut.left, -cut.tapped), (cut.left, 0), depths.tapped, 0.25 * major, "t_t"),
            Dimension((cut.left, -cut.drilled), (cut.left, 0), depths.drilled, 0.75 * major, "t_d"),
        ]
        if cut.blind
        else []
    )
    return [
        edge,
        *deep,
        Label(
            (cut.left, high * 0.6),
            say("s {s}", s=depths.setting),
            "start",
            (-(cut.stud + cut.R) / 2, cut.top),
        ),
        Dimension((cut.right, cut.bottom), (cut.right, cut.top), depths.body, -0.35 * major, "L"),
        Dimension((-cut.r, -cut.metal), (cut.r, -cut.metal), hole.drill, -high, "D_d"),
    ]


def _high(cut: Cut) -> float:
    """Height over the face for words and lines."""
    return 0.22 * cut.metal
